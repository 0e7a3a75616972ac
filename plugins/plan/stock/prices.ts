import type {Effort} from './effort.ts'
import {entryAt, knapsackFront} from './knapsack-front.ts'
import type {Relaxed} from './relax.ts'
import type {Bin, Task} from './task.ts'

/** Worths that bound what bins can hold: of each kind, of a rest of some width by lane, of a volume left out. */
export interface Prices {
  worths: ArrayLike<number>
  atWidth: (lane: number, width: number) => number
  leftWorth: number
}

/** Take the prices of a relaxed cutting. */
export const relaxedPrices = ({worths, lanes, leftWorth}: Relaxed): Prices => ({
  worths,
  leftWorth,
  atWidth: (lane, width) => lanes[lane]?.atWidth(width) ?? 0,
})

/** Price parts by their area, kerfs counted in: the plainest bound, and sharp where pieces are to be filled. */
export function areaPrices(
  task: Task,
  counts: ArrayLike<number>,
  bins: readonly Bin[],
  effort: Effort,
): Prices {
  const fronts = task.lanes.map(({length, takes}, lane) => {
    const room = Math.max(0, ...bins.filter((bin) => bin.lane === lane).map((bin) => bin.width))
    const widths = new Set<number>()
    task.parts.forEach((part, at) => {
      if (takes[at] && counts[at]! > 0 && part.width <= room) widths.add(part.width)
    })
    const strips = [...widths].map((width) => ({
      size: width,
      worth: width * length,
      count: Math.floor(room / width),
    }))
    return knapsackFront(strips, room, effort)
  })
  const worths = task.parts.map((part) => part.length * part.width)
  return {
    worths,
    leftWorth: Math.max(...task.parts.map((part, at) => worths[at]! / part.volume)),
    atWidth: (lane, width) => fronts[lane]!.worths[entryAt(fronts[lane]!.sizes, width)]!,
  }
}

/** What the bins are worth beyond what must be in them; negative where they cannot hold the parts. */
export function spareWorth(
  {worths, atWidth, leftWorth}: Prices,
  counts: ArrayLike<number>,
  bins: readonly Bin[],
  mayLeave: number,
): {spare: number; held: number} {
  let held = 0
  for (const bin of bins) held += bin.count * atWidth(bin.lane, bin.width)
  let needed = -leftWorth * mayLeave
  for (let at = 0; at < counts.length; at++) needed += counts[at]! * worths[at]!
  return {spare: held - needed, held}
}

/** Mix prices, both reckoned so that the bins are worth one, with so much of the second. */
export function mixedPrices(first: Prices, second: Prices, share: number, bins: readonly Bin[]): Prices {
  const none: number[] = []
  const a = (1 - share) / spareWorth(first, none, bins, 0).held
  const b = share / spareWorth(second, none, bins, 0).held
  return {
    worths: Array.from(first.worths, (worth, at) => a * worth + b * second.worths[at]!),
    atWidth: (lane, width) => a * first.atWidth(lane, width) + b * second.atWidth(lane, width),
    leftWorth: a * first.leftWorth + b * second.leftWorth,
  }
}
