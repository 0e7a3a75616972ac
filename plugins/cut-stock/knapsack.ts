import type {Effort} from './context.ts'

/** Something to pack: its size with a kerf counted in, what it is worth, and how many there are. */
export interface Packable {
  size: number
  worth: number
  count: number
}

/** How large a packing may be, and the effort to find it. */
interface Within {
  capacity: number
  effort: Effort
}

/** What makes up an entry: copies of one thing on top of another entry. */
interface Trail {
  item: number
  copies: number
  before: Trail | undefined
}

/** For every size up to a capacity the most that fits is worth: both lists rise together, the first entry is nothing. */
export interface Front {
  sizes: readonly number[]
  worths: readonly number[]
  trails: readonly (Trail | undefined)[]
}

export const emptyFront: Front = {sizes: [0], worths: [0], trails: [undefined]}

/** More entries than this are thinned out. */
const mostEntries = 6000

/**
 * List the packings of a bounded knapsack that no smaller packing equals in worth.
 * Exact for any sizes; past some thousand entries the nearest sizes are merged, so that `worths` stay a bound from above
 * and what is in an entry a packing that fits.
 */
export function knapsackFront(items: readonly Packable[], within: Within): Front {
  return items.reduce((front, item, index) => withPackable(front, index, item, within), emptyFront)
}

/** Add one more kind of thing to a front, named by an index. */
export function withPackable(
  start: Front,
  item: number,
  {size, worth, count}: Packable,
  {capacity, effort}: Within,
): Front {
  let front = start
  if (worth <= 0) return front
  let left = Math.min(count, Math.floor(capacity / size))
  // Powers of two make up every count.
  for (let copies = 1; left > 0; copies *= 2) {
    const taken = Math.min(copies, left)
    left -= taken
    effort.spend(front.sizes.length / 3)
    front = merged(front, {item, copies: taken, size: size * taken, worth: worth * taken}, capacity)
    if (front.sizes.length > mostEntries) front = thinned(front, capacity / mostEntries)
  }
  return front
}

/** How many of each thing make up an entry. */
export function contentsOf(front: Front, entry: number): Map<number, number> {
  const found = new Map<number, number>()
  for (let at = front.trails[entry]; at; at = at.before)
    found.set(at.item, (found.get(at.item) ?? 0) + at.copies)
  return found
}

/** The last entry that is no larger than `size`. */
export function entryAt(sizes: readonly number[], size: number): number {
  let low = 0
  let high = sizes.length - 1
  while (low < high) {
    const middle = (low + high + 1) >> 1
    if (sizes[middle]! <= size) low = middle
    else high = middle - 1
  }
  return low
}

interface More {
  item: number
  copies: number
  size: number
  worth: number
}

/** Merge a front with itself plus so many copies of one thing, and drop what a smaller entry equals. */
function merged({sizes, worths, trails}: Front, more: More, capacity: number): Front {
  const out: {sizes: number[]; worths: number[]; trails: (Trail | undefined)[]} = {
    sizes: [],
    worths: [],
    trails: [],
  }
  const n = sizes.length
  let a = 0
  let b = 0
  let last = -1
  while (a < n || b < n) {
    const sizeB = b < n ? sizes[b]! + more.size : Infinity
    if (sizeB > capacity && a >= n) break
    const takesA =
      a < n && (sizes[a]! < sizeB || (sizes[a] === sizeB && worths[a]! >= worths[b]! + more.worth))
    const worth = takesA ? worths[a]! : worths[b]! + more.worth
    if (worth > last) {
      out.sizes.push(takesA ? sizes[a]! : sizeB)
      out.worths.push(worth)
      out.trails.push(takesA ? trails[a] : {item: more.item, copies: more.copies, before: trails[b]})
      last = worth
    }
    if (takesA) a++
    else b++
  }
  return out
}

/** Keep one entry a cell: the smallest size, with the greatest worth that the cell holds. */
function thinned({sizes, worths, trails}: Front, cell: number): Front {
  const out = {sizes: [0], worths: [0], trails: [undefined as Trail | undefined]}
  for (let i = 1; i < sizes.length; i++) {
    const last = out.sizes.length - 1
    if (last > 0 && Math.floor(sizes[i]! / cell) === Math.floor(out.sizes[last]! / cell))
      out.worths[last] = worths[i]!
    else {
      out.sizes.push(sizes[i]!)
      out.worths.push(worths[i]!)
      out.trails.push(trails[i])
    }
  }
  return out
}
