import {Effort} from './effort.ts'
import {entryAt, knapsackFront, type Packable} from './knapsack.ts'
import type {Relaxed} from './relax.ts'
import type {Bin, Prices, Task} from './task.ts'

/** Take the prices of a relaxed cutting. */
export const relaxedPrices = ({worths, lanes, leftWorth}: Relaxed): Prices => ({
  worths,
  leftWorth,
  atWidth: (lane, width) => lanes[lane]?.atWidth(width) ?? 0,
})

/** Price parts by their area. */
export function areaPrices({parts, lanes, pieces}: Omit<Task, 'byArea'>): Prices {
  const fronts = lanes.map(({length, takes}, lane) => {
    let room = 0
    for (const piece of pieces) if (piece.lane === lane) room = Math.max(room, piece.width)
    const strips: Packable[] = []
    let last = 0
    parts.forEach(({width}, at) => {
      if (!takes[at] || width > room || width === last) return
      strips.push({size: width, worth: width * length, count: Math.floor(room / width)})
      last = width
    })
    return knapsackFront(strips, room, new Effort(Infinity))
  })
  const worths = parts.map((part) => part.length * part.width)
  return {
    worths,
    leftWorth: Math.max(...parts.map((part, at) => worths[at]! / part.volume)),
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
