import {entryAt} from './best-strips.ts'
import type {Effort} from './effort.ts'
import {knapsackFront} from './knapsack-front.ts'
import type {Step} from './search.ts'
import type {Bin, Task} from './task.ts'

export interface QuickCut {
  steps: Step[]
  /** What found no room, by kind, and its volume. */
  left: Int32Array
  leftVolume: number
}

/**
 * Cut the widest and longest parts first, each strip filled well; a filling that wastes at most `tolerance` of area
 * (whole units squared) is taken at once, so that the longer parts go early.
 */
export function quickCut(
  task: Task,
  startCounts: ArrayLike<number>,
  startBins: readonly Bin[],
  tolerance: number,
  effort: Effort,
): QuickCut {
  const counts = Int32Array.from(startCounts)
  const bins = startBins.map((bin) => ({...bin}))
  const left = new Int32Array(counts.length)
  const steps: Step[] = []
  const fronts = areaFronts(task, counts, bins, effort)
  let leftVolume = 0
  for (let pivot = 0; pivot < counts.length; ) {
    if (counts[pivot] === 0) {
      pivot++
      continue
    }
    const part = task.parts[pivot]!
    let best: {bin: Bin; fill: Filled; loss: number} | undefined
    for (const bin of bins) {
      const lane = task.lanes[bin.lane]!
      if (bin.count === 0 || bin.width < part.width || !lane.takes[pivot] || lane.length < part.length)
        continue
      const front = fronts[bin.lane]!
      const base = front(bin.width) - front(bin.width - part.width)
      const fill = fillWell(task, bin.lane, pivot, counts, base - tolerance, effort)
      const loss = base - fill.area
      if (!best || loss < best.loss) best = {bin, fill, loss}
    }
    if (!best) {
      left[pivot] = counts[pivot]!
      leftVolume += counts[pivot]! * part.volume
      counts[pivot] = 0
      continue
    }
    const {bin, fill} = best
    let times = bin.count
    fill.kinds.forEach((at, k) => {
      times = Math.min(times, Math.floor(counts[at]! / fill.copies[k]!))
    })
    const rest = bins.find((other) => other.lane === bin.lane && other.width === bin.width - part.width)
    if (rest) rest.count += times
    else bins.push({lane: bin.lane, width: bin.width - part.width, count: times})
    bin.count -= times
    fill.kinds.forEach((at, k) => {
      counts[at]! -= times * fill.copies[k]!
    })
    const step = {lane: bin.lane, from: bin.width, width: part.width, kinds: fill.kinds, copies: fill.copies}
    for (let time = 0; time < times; time++) steps.push(step)
  }
  return {steps, left, leftVolume}
}

interface Filled {
  kinds: number[]
  copies: number[]
  area: number
}

/** Fill a strip as wide as the pivot with the most area, longest first; the first filling of `enough` area ends it. */
function fillWell(
  task: Task,
  lane: number,
  pivot: number,
  counts: Int32Array,
  enough: number,
  effort: Effort,
): Filled {
  const {length: capacity, takes} = task.lanes[lane]!
  const kinds: number[] = []
  for (let at = pivot; at < counts.length; at++)
    if (counts[at]! > 0 && takes[at] && task.parts[at]!.length <= capacity) kinds.push(at)
  const copies = new Int32Array(kinds.length)
  let best: Filled = {kinds: [], copies: [], area: -1}
  let nodes = 0
  const widest = task.parts[pivot]!.width
  const visit = (from: number, room: number, area: number): boolean => {
    let k = from
    while (k > 0 && k < kinds.length && task.parts[kinds[k]!]!.length > room) k++
    nodes++
    if (area > best.area) {
      const taken = kinds.map((_, j) => j).filter((j) => copies[j]! > 0)
      best = {kinds: taken.map((j) => kinds[j]!), copies: taken.map((j) => copies[j]!), area}
      if (area >= enough) return true
    }
    if (k === kinds.length || nodes > 400 || area + room * widest <= best.area) return nodes > 400
    const part = task.parts[kinds[k]!]!
    const fits = Math.min(counts[kinds[k]!]!, Math.floor(room / part.length))
    for (let c = fits; c >= (k === 0 ? 1 : 0); c--) {
      copies[k] = c
      if (visit(k + 1, room - c * part.length, area + c * part.length * part.width)) return true
    }
    copies[k] = 0
    return false
  }
  visit(0, capacity, 0)
  effort.spend(nodes)
  return best
}

/** For each lane, the most area that a rest of some width can hold, if strips could be filled whole. */
export function areaFronts(
  task: Task,
  counts: ArrayLike<number>,
  bins: readonly Bin[],
  effort: Effort,
): ((width: number) => number)[] {
  return task.lanes.map(({length, takes}, lane) => {
    const room = Math.max(0, ...bins.filter((bin) => bin.lane === lane).map((bin) => bin.width))
    const widths = new Set<number>()
    task.parts.forEach((part, at) => {
      if (takes[at] && counts[at]! > 0 && part.width <= room) widths.add(part.width)
    })
    const front = knapsackFront(
      [...widths].map((width) => ({size: width, worth: width * length, count: Math.floor(room / width)})),
      room,
      effort,
    )
    return (width) => front.worths[entryAt(front.sizes, width)]!
  })
}
