import {type Cover, choosePieces, coverOf} from './choose-pieces.ts'
import {Effort} from './effort.ts'
import {type Packed, type Packing, packInto} from './pack-into.ts'
import type {Pattern} from './patterns.ts'
import {mixedPrices, relaxedPrices} from './prices.ts'
import {packQuickly} from './quick-cut.ts'
import {relax} from './relax.ts'
import {allPieces, binsOf, choiceVolume, type Prices, type Task} from './task.ts'

interface Choice {
  packing: Packing
  /** How many pieces of each kind. */
  chosen: number[]
}

/** Do without pieces, the largest first, as long as the rest meets the covers and `pack` finds that it holds the parts. */
export function dropPieces(
  task: Task,
  start: Choice,
  covers: readonly Cover[],
  pack: (bins: ReturnType<typeof binsOf>) => Packing | undefined,
): Choice {
  let best = start
  const holdsEnough = (chosen: readonly number[]) =>
    covers.every(({worths, needed}) => {
      const held = chosen.reduce((sum, n, p) => sum + n * worths[p]!, 0)
      return held >= needed - 1e-9 * Math.abs(needed)
    })
  const order = task.pieces
    .map((_, p) => p)
    .sort((a, b) => task.pieces[b]!.volume - task.pieces[a]!.volume || b - a)
  for (const p of order)
    for (let step = best.chosen[p]!; step >= 1; ) {
      const chosen = best.chosen.map((n, at) => (at === p ? n - step : n))
      const packing = chosen[p]! >= 0 && holdsEnough(chosen) ? pack(binsOf(task, chosen)) : undefined
      if (packing) best = {packing, chosen}
      else step >>= 1
    }
  return best
}

interface Least extends Choice {
  /** No choice of less volume holds as much. */
  proven: boolean
  /** Below this volume there is none. */
  bound: number
}

/** A choice that is not settled, and what share of it the relaxed cutting takes. */
interface Open {
  chosen: number[]
  volume: number
  share: number
}

/** So many choices are looked into, and so many at all, before the smallest are taken up again. */
const mostOpen = 24
const mostTried = 150

/** Where there are no more choices than this, each is looked into without the relaxed cutting of them all. */
const few = 32

/** What conditions are raised by to find a choice that holds the parts with ease. */
const margins = [0.02, 0.05, 0.1, 0.15, 0.2, 0.3]

/**
 * Find the pieces of least volume that hold all parts but `mayLeave` of volume, from a first choice that does.
 * Choices are tried by rising volume; each that is shown to hold too little gives a condition that rules out others
 * (a cut, after Benders 1962), and joins `covers`. A choice that neither holds the parts nor is shown not to leaves the
 * answer unproven.
 */
export function leastPieces(
  task: Task,
  counts: Int32Array,
  start: Choice,
  covers: Cover[],
  mayLeave: number,
  pool: Pattern[],
  effort: Effort,
): Least {
  const volumes = task.pieces.map(({volume}) => volume)
  const all = allPieces(task)
  const never: number[][] = []
  let best = start
  let least = choiceVolume(task, start.chosen)
  let open: Open[] = []
  const isLess = (volume: number) => volume < least * (1 - 1e-9)
  const take = (choice: Choice) => {
    best = choice
    least = choiceVolume(task, choice.chosen)
    open = open.filter(({volume}) => isLess(volume))
  }
  const pack = (chosen: readonly number[], share: number) =>
    packInto(task, counts, binsOf(task, chosen), mayLeave, pool, effort.part(effort.limit * share))
  const result = (proven: boolean, bound = least): Least => ({
    ...best,
    proven,
    bound: Math.min(bound, ...open.map(({volume}) => volume)),
  })
  const {byArea} = task
  const isFew = all.reduce((product, n) => product * (n + 1), 1) <= few
  let prices: Prices | undefined

  // By rising volume: what holds the parts at once, what cannot, and what stays open.
  let isThrough = false
  let level: number | undefined
  for (let tried = 0; tried < mostTried && effort.spent < 0.5 * effort.limit; tried++) {
    const not = (chosen: readonly number[]) => open.some((one) => one.chosen.every((n, p) => n === chosen[p]))
    const chosen = choosePieces(volumes, all, covers, {not, never, under: least}, effort)
    if (chosen === 'cut short') return result(false, level ?? lowestLevel())
    isThrough = chosen === undefined || chosen.every((n, p) => n === best.chosen[p])
    if (!chosen || isThrough) break
    level = choiceVolume(task, chosen)
    const quick = packAtOnce(chosen)
    if (quick) {
      take({packing: quick, chosen})
      isThrough = true
      break
    }
    // What is as large as what was found already is only worth a quick look.
    isThrough = !isLess(level)
    if (isThrough) break
    if (!prices && !isFew) {
      const relaxed = relax(task, counts, binsOf(task, all), mayLeave, pool, effort, volumes)
      covers.push(coverOf(task, counts, relaxed, mayLeave, effort))
      prices = mixedPrices(relaxedPrices(relaxed), byArea, 0.3, binsOf(task, all))
      continue
    }
    const isLookedInto = open.length < mostOpen && effort.spent < 0.2 * effort.limit
    const {packing, ended, cover, share = 1}: Packed = isLookedInto ? pack(chosen, 1 / 400) : {ended: false}
    if (packing) {
      take({packing, chosen})
      isThrough = true
      break
    }
    if (ended) never.push(chosen)
    else open.push({chosen, volume: level, share})
    if (cover) covers.push(cover)
    if (effort.over) return result(false, level)
  }
  if (open.length === 0 && isThrough) return result(true)
  findLarger()

  // What effort is left goes to the choices that stay open, the smallest and the roomiest first.
  for (let share = 0.1; open.length > 0 && !effort.over; share *= 2) {
    open.sort((a, b) => a.volume - b.volume || a.share - b.share)
    for (const one of [...open]) {
      if (!isLess(one.volume) || effort.over) break
      const {packing, ended} = pack(one.chosen, share)
      if (packing || ended) open = open.filter((other) => other !== one)
      if (packing) take({packing, chosen: one.chosen})
    }
  }
  // Every choice of less volume than the level reached was looked at.
  const reached = level ?? lowestLevel()
  const isLowest = isThrough || least <= reached * (1 + 1e-9)
  return result(open.length === 0 && isLowest, isLowest ? least : reached)

  function lowestLevel(): number {
    const lowest = choosePieces(volumes, all, covers.slice(0, 1), {under: least}, new Effort(50_000))
    return Array.isArray(lowest) ? choiceVolume(task, lowest) : 0
  }

  function packAtOnce(chosen: readonly number[]): Packing | undefined {
    const bins = binsOf(task, chosen)
    return (
      packQuickly(task, counts, bins, mayLeave, effort) ??
      (prices && packQuickly(task, counts, bins, mayLeave, effort, prices))
    )
  }

  /** Find something larger that does hold the parts, so that the answer is not far off where nothing smaller is settled. */
  function findLarger(): void {
    take(
      dropPieces(
        task,
        best,
        covers,
        (bins) =>
          packQuickly(task, counts, bins, mayLeave, effort) ??
          packInto(task, counts, bins, mayLeave, pool, effort.part(effort.limit / 400)).packing,
      ),
    )
    for (const margin of margins) {
      const eased = covers.map((cover) => ({...cover, needed: cover.needed * (1 + margin)}))
      const chosen = choosePieces(
        volumes,
        all,
        eased,
        {never, under: least * (1 - 1e-9)},
        effort.part(effort.limit / 100),
      )
      if (!Array.isArray(chosen)) return
      const packing = packAtOnce(chosen) ?? pack(chosen, 1 / 100).packing
      if (packing) take({packing, chosen})
      if (packing) return
    }
  }
}
