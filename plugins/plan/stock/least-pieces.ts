import {binsOf} from './bins-of.ts'
import {type Cover, choosePieces} from './choose-pieces.ts'
import {coverOf} from './cover-of.ts'
import {type Choice, dropPieces} from './drop-pieces.ts'
import {Effort} from './effort.ts'
import {packInto} from './pack-into.ts'
import {packQuickly} from './pack-quickly.ts'
import type {Pattern} from './patterns.ts'
import {relax} from './relax.ts'
import type {Task} from './task.ts'

export interface Least extends Choice {
  /** No choice of less volume holds as much. */
  proven: boolean
  /** Below this volume there is none. */
  bound: number
}

/** So many choices are left open before larger ones are tried. */
const mostOpen = 60

/** What conditions are raised by to find a choice that holds the parts with ease. */
const margins = [0.01, 0.02, 0.04, 0.07, 0.1, 0.15, 0.2, 0.3]

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
  const all = task.pieces.map(({pieces}) => pieces.length)
  const volumeOf = (chosen: readonly number[]) => chosen.reduce((sum, n, p) => sum + n * volumes[p]!, 0)
  const never: number[][] = []
  let best = start
  let least = volumeOf(start.chosen)
  let open: {chosen: number[]; volume: number}[] = []
  const isLess = (volume: number) => volume < least * (1 - 1e-9)
  const take = (choice: Choice) => {
    best = choice
    least = volumeOf(choice.chosen)
    open = open.filter(({volume}) => isLess(volume))
  }
  const pack = (chosen: readonly number[], share: number) =>
    packInto(task, counts, binsOf(task, chosen), mayLeave, pool, effort.part(effort.limit * share))
  const result = (proven: boolean, bound = least): Least => ({
    ...best,
    proven,
    bound: Math.min(bound, ...open.map(({volume}) => volume)),
  })

  const levelByCovers = (): number => {
    const more = {not: () => false, never: [], under: least}
    const lowest = choosePieces(volumes, all, covers.slice(0, 1), more, new Effort(50_000))
    return Array.isArray(lowest) ? volumeOf(lowest) : 0
  }

  // By rising volume: what holds the parts at once, what cannot, and what stays open.
  let level = levelByCovers()
  for (let isRelaxed = false; open.length < mostOpen; ) {
    const not = (chosen: readonly number[]) => open.some((one) => one.chosen.every((n, p) => n === chosen[p]))
    const chosen = choosePieces(volumes, all, covers, {not, never, under: least}, effort)
    if (chosen === 'cut short') return result(false, level)
    if (!chosen) break
    level = volumeOf(chosen)
    const quick = packQuickly(task, counts, binsOf(task, chosen), mayLeave, effort)
    if (quick.leftVolume <= mayLeave) {
      take({packing: quick, chosen})
      break
    }
    // What is as large as what was found already is only worth a quick look.
    if (!isLess(level)) break
    if (!isRelaxed) {
      isRelaxed = true
      const relaxed = relax(task, counts, binsOf(task, all), mayLeave, pool, effort, volumes)
      covers.push(coverOf(task, counts, relaxed, mayLeave, effort))
      continue
    }
    const {packing, ended, cover} = pack(chosen, 1 / 400)
    if (packing) {
      take({packing, chosen})
      break
    }
    if (ended) never.push(chosen)
    else open.push({chosen, volume: level})
    if (cover) covers.push(cover)
    if (effort.over) return result(false, level)
  }
  if (open.length === 0) return result(true)

  // Something larger that does hold the parts, so that the answer is not far off where nothing smaller is settled.
  take(
    dropPieces(
      task,
      best,
      covers,
      (bins) => packInto(task, counts, bins, mayLeave, pool, effort.part(effort.limit / 400)).packing,
    ),
  )
  for (const margin of margins) {
    const eased = covers.map((cover) => ({...cover, needed: cover.needed * (1 + margin)}))
    const more = {not: () => false, never, under: least * (1 - 1e-9)}
    const chosen = choosePieces(volumes, all, eased, more, effort.part(effort.limit / 100))
    if (!Array.isArray(chosen)) break
    const {packing} = pack(chosen, 1 / 100)
    if (!packing) continue
    take({packing, chosen})
    break
  }

  // What effort is left goes to the choices that stay open, the smallest and the roomiest first.
  const roomOf = (chosen: readonly number[]) =>
    chosen.reduce((sum, n, p) => sum + n * covers[0]!.worths[p]!, 0)
  for (let share = 0.1; open.length > 0 && !effort.over; share *= 2) {
    open.sort((a, b) => a.volume - b.volume || roomOf(b.chosen) - roomOf(a.chosen))
    for (const one of [...open]) {
      if (!isLess(one.volume) || effort.over) break
      const {packing, ended} = pack(one.chosen, share)
      if (packing || ended) open = open.filter((other) => other !== one)
      if (packing) take({packing, chosen: one.chosen})
    }
  }
  return result(open.length === 0)
}
