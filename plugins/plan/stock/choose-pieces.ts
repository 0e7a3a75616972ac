import type {Effort} from './effort.ts'

/** What any choice of pieces must hold: with so many of each kind, Σ count·worth is at least `needed`. */
export interface Cover {
  worths: number[]
  needed: number
}

/**
 * Find the choice of pieces (how many of each kind) of least volume that satisfies all covers, that `not` refuses,
 * nor a part of one of `never`. Among equal volumes the fewest pieces, then the earlier kinds. Undefined where there is
 * none below `under`; `cut short` where the effort ran out.
 */
export function choosePieces(
  volumes: readonly number[],
  counts: readonly number[],
  covers: readonly Cover[],
  {
    not,
    never,
    under,
  }: {not: (chosen: readonly number[]) => boolean; never: readonly number[][]; under: number},
  effort: Effort,
): number[] | 'cut short' | undefined {
  const n = volumes.length
  const order = volumes.map((_, p) => p).sort((a, b) => volumes[b]! - volumes[a]! || a - b)
  const slack = (cover: Cover) => 1e-9 * Math.max(Math.abs(cover.needed), 1e-30)
  // What the kinds from a rank on could still add to a cover, and the best worth a volume they offer.
  const reach = covers.map((cover) => suffix(order, (sum, p) => sum + cover.worths[p]! * counts[p]!))
  const ratio = covers.map((cover) =>
    suffix(order, (best, p) => Math.max(best, cover.worths[p]! / volumes[p]!)),
  )
  const chosen = new Array<number>(n).fill(0)
  let best: number[] | undefined
  let least = under
  let fewest = Infinity
  let over = false
  const visit = (rank: number, volume: number, pieces: number, needs: number[]): void => {
    if (over) return
    effort.spend(0.2 * (1 + covers.length))
    if (effort.over) over = true
    let atLeast = 0
    for (let c = 0; c < covers.length; c++) {
      if (needs[c]! <= slack(covers[c]!)) continue
      if (needs[c]! > reach[c]![rank]! + slack(covers[c]!)) return
      atLeast = Math.max(atLeast, (needs[c]! - slack(covers[c]!)) / ratio[c]![rank]!)
    }
    const bound = (volume + atLeast) * (1 - 1e-12)
    if (bound > least || (bound >= least * (1 - 1e-9) && pieces >= fewest)) return
    if (atLeast === 0) {
      if (!allowed(chosen, not, never)) {
        if (rank === n) return
      } else {
        const better = volume < least * (1 - 1e-9) || (volume <= least * (1 + 1e-9) && pieces < fewest)
        if (!better) return
        best = [...chosen]
        least = volume
        fewest = pieces
        return
      }
    }
    if (rank === n) return
    const p = order[rank]!
    for (let count = counts[p]!; count >= 0; count--) {
      chosen[p] = count
      visit(
        rank + 1,
        volume + count * volumes[p]!,
        pieces + count,
        needs.map((need, c) => need - count * covers[c]!.worths[p]!),
      )
    }
    chosen[p] = 0
  }
  visit(
    0,
    0,
    0,
    covers.map((cover) => cover.needed),
  )
  return over ? 'cut short' : best
}

function suffix(order: readonly number[], join: (sum: number, p: number) => number): number[] {
  const out = new Array<number>(order.length + 1).fill(0)
  for (let rank = order.length - 1; rank >= 0; rank--) out[rank] = join(out[rank + 1]!, order[rank]!)
  return out
}

function allowed(
  chosen: readonly number[],
  not: (chosen: readonly number[]) => boolean,
  never: readonly number[][],
): boolean {
  if (not(chosen)) return false
  return !never.some((bad) => chosen.every((count, p) => count <= bad[p]!))
}
