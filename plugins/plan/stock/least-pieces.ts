import {binsOf} from './bins-of.ts'
import {type Cover, choosePieces} from './choose-pieces.ts'
import {coverOf} from './cover-of.ts'
import type {Effort} from './effort.ts'
import {firstCovers} from './first-covers.ts'
import {type Packing, packInto} from './pack-into.ts'
import {packQuickly} from './pack-quickly.ts'
import type {Pattern} from './patterns.ts'
import {relax} from './relax.ts'
import type {Task} from './task.ts'

export interface Least {
  packing: Packing
  chosen: number[]
  /** No choice of less volume holds as much. */
  proven: boolean
  /** Below this volume there is none. */
  bound: number
  covers: Cover[]
}

/** So many choices are left open before larger ones are tried. */
const mostOpen = 60

/** What conditions are raised by to find a choice that holds the parts with ease. */
const margins = [0.01, 0.02, 0.04, 0.07, 0.1, 0.15, 0.2, 0.3]

/**
 * Find the pieces of least volume that hold all parts but `mayLeave` of volume, from a first choice that does.
 * Choices are tried by rising volume; each that is shown to hold too little gives a condition that rules out others
 * (a cut, after Benders 1962). A choice that neither holds the parts nor is shown not to leaves the answer unproven.
 */
export function leastPieces(
  task: Task,
  counts: Int32Array,
  start: {packing: Packing; chosen: number[]},
  mayLeave: number,
  pool: Pattern[],
  effort: Effort,
): Least {
  const volumes = task.pieces.map(({volume}) => volume)
  const all = task.pieces.map(({pieces}) => pieces.length)
  const volumeOf = (chosen: readonly number[]) => chosen.reduce((sum, n, p) => sum + n * volumes[p]!, 0)
  const covers = firstCovers(task, counts, mayLeave, effort)
  const never: number[][] = []
  let best = start
  let least = volumeOf(start.chosen)
  let isRelaxed = false
  const open: {chosen: number[]; volume: number}[] = []
  const isOpen = (chosen: readonly number[]) =>
    open.some((one) => one.chosen.every((n, p) => n === chosen[p]))
  const result = (proven: boolean): Least => {
    const lowest = Math.min(least, ...open.map(({volume}) => volume))
    return {...best, proven, bound: proven ? least : Math.max(lowest, 0), covers}
  }

  // By rising volume: what holds the parts at once, what cannot, and what stays open.
  for (let level = 0; ; ) {
    const chosen = choosePieces(
      volumes,
      all,
      covers,
      {not: (one) => isOpen(one), never, under: least},
      effort,
    )
    if (chosen === 'cut short') return {...result(false), bound: Math.min(level, result(false).bound)}
    if (!chosen) break
    const volume = volumeOf(chosen)
    const isLess = volume < least * (1 - 1e-9)
    level = volume
    const bins = binsOf(task, chosen)
    const quick = packQuickly(task, counts, bins, mayLeave, effort)
    if (quick.leftVolume <= mayLeave) {
      best = {packing: quick, chosen}
      least = volume
      break
    }
    // What is as large as what was found already is only worth a quick look.
    if (!isLess) break
    if (!isRelaxed) {
      isRelaxed = true
      const relaxed = relax(task, counts, binsOf(task, all), mayLeave, pool, effort, volumes)
      covers.push(coverOf(task, counts, relaxed, mayLeave, effort))
      continue
    }
    const packed = packInto(task, counts, bins, mayLeave, pool, effort.part(effort.limit / 400))
    if (packed.packing) {
      best = {packing: packed.packing, chosen}
      least = volume
      break
    }
    if (packed.ended) {
      never.push(chosen)
      if (packed.cover) covers.push(packed.cover)
    } else {
      open.push({chosen, volume})
      if (open.length >= mostOpen) break
    }
    if (effort.over) return result(false)
  }
  if (open.length > 0) findLarger()
  return closeOpen()

  /** Try choices with room to spare, so that the answer is not far off where nothing smaller can be settled. */
  function findLarger(): void {
    for (const margin of margins) {
      const eased = covers.map((cover) => ({...cover, needed: cover.needed * (1 + margin)}))
      const more = {not: () => false, never, under: least * (1 - 1e-9)}
      const chosen = choosePieces(volumes, all, eased, more, effort.part(effort.limit / 100))
      if (!Array.isArray(chosen)) return
      const bins = binsOf(task, chosen)
      const {packing} = packInto(task, counts, bins, mayLeave, pool, effort.part(effort.limit / 100))
      if (!packing) continue
      best = {packing, chosen}
      least = volumeOf(chosen)
      return
    }
  }

  /** Spend what effort is left on the choices that stay open, the smallest and the roomiest first. */
  function closeOpen(): Least {
    for (let allowance = effort.limit / 10; !effort.over; allowance *= 2) {
      const rest = open.filter(({volume}) => volume < least * (1 - 1e-9))
      open.splice(0, open.length, ...rest)
      if (open.length === 0) return result(true)
      open.sort((a, b) => a.volume - b.volume || roomOf(b.chosen) - roomOf(a.chosen))
      for (const one of [...open]) {
        if (one.volume >= least * (1 - 1e-9) || effort.over) break
        const packed = packInto(
          task,
          counts,
          binsOf(task, one.chosen),
          mayLeave,
          pool,
          effort.part(allowance),
        )
        if (!packed.packing && !packed.ended) continue
        open.splice(open.indexOf(one), 1)
        if (packed.packing) {
          best = {packing: packed.packing, chosen: one.chosen}
          least = one.volume
        }
      }
    }
    const lower = open.filter(({volume}) => volume < least * (1 - 1e-9))
    open.splice(0, open.length, ...lower)
    return result(open.length === 0)
  }

  function roomOf(chosen: readonly number[]): number {
    return chosen.reduce((sum, n, p) => sum + n * covers[0]!.worths[p]!, 0)
  }
}
