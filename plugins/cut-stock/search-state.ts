import type {Bin, Task} from './task.ts'

/** Find the bin of a lane that is so wide, or start one. */
export function restOf(bins: Bin[], lane: number, width: number): Bin {
  const known = bins.find((bin) => bin.lane === lane && bin.width === width)
  if (known) return known
  const rest = {lane, width, count: 0}
  bins.push(rest)
  return rest
}

/**
 * Name a state of a search: what is still to cut, and the bins that still hold some of it. Bins are named by their
 * place, which they keep as long as the search lasts.
 */
export function stateKey(task: Task, counts: Int32Array, bins: readonly Bin[]): string {
  const codes: number[] = []
  let narrowest = 0
  for (let at = 0; at < counts.length; at++) {
    codes.push(counts[at]!)
    if (counts[at]! > 0) narrowest = task.parts[at]!.width
  }
  for (let b = 0; b < bins.length; b++)
    if (bins[b]!.count > 0 && bins[b]!.width >= narrowest) codes.push(b, bins[b]!.count)
  return String.fromCharCode(...codes)
}
