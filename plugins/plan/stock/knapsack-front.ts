import type {Effort} from './effort.ts'

/** Something to pack: its size with a kerf counted in, what it is worth, and how many there are. */
export interface Packable {
  size: number
  worth: number
  count: number
}

/** For every size up to a capacity the most that fits is worth: both lists rise together, the first entry is nothing. */
export interface Front {
  sizes: number[]
  worths: number[]
  /** How many of each packable make up the entry at an index. */
  contents: (entry: number) => Map<number, number>
}

interface Trail {
  item: number
  copies: number
  before: Trail | undefined
}

/**
 * List the packings of a bounded knapsack that no smaller packing equals in worth.
 * Exact for any sizes; past `most` entries the nearest sizes are merged upwards in worth, so that `worths` stay a bound
 * from above and `contents` a packing that fits. Entries that cannot end above `floor` are dropped.
 */
export function knapsackFront(
  items: readonly Packable[],
  capacity: number,
  effort: Effort,
  {floor = -Infinity, most = 6_000} = {},
): Front {
  const order = items
    .map((_, index) => index)
    .filter((index) => items[index]!.count > 0 && items[index]!.worth > 0 && items[index]!.size <= capacity)
    .sort((a, b) => items[b]!.worth / items[b]!.size - items[a]!.worth / items[a]!.size || a - b)
  let sizes = [0]
  let worths = [0]
  let trails: (Trail | undefined)[] = [undefined]
  order.forEach((index, rank) => {
    const {size, worth, count} = items[index]!
    const next = order[rank + 1]
    const ratio = next === undefined ? 0 : items[next]!.worth / items[next]!.size
    let left = Math.min(count, Math.floor(capacity / size))
    for (let copies = 1; left > 0; copies *= 2) {
      const taken = Math.min(copies, left)
      left -= taken
      const rest = left > 0 ? worth / size : ratio
      effort.spend(sizes.length / 4)
      const grown = merged(
        sizes,
        worths,
        trails,
        {item: index, copies: taken, size, worth},
        capacity,
        floor,
        rest,
      )
      ;({sizes, worths, trails} = grown.sizes.length > most ? thinned(grown, capacity / most) : grown)
    }
  })
  return {
    sizes,
    worths,
    contents: (entry) => {
      const found = new Map<number, number>()
      for (let at = trails[entry]; at; at = at.before)
        found.set(at.item, (found.get(at.item) ?? 0) + at.copies)
      return found
    },
  }
}

interface Growing {
  sizes: number[]
  worths: number[]
  trails: (Trail | undefined)[]
}

/** Merge a front with itself plus so many copies of one item. */
function merged(
  sizes: number[],
  worths: number[],
  trails: (Trail | undefined)[],
  add: {item: number; copies: number; size: number; worth: number},
  capacity: number,
  floor: number,
  restRatio: number,
): Growing {
  const out: Growing = {sizes: [], worths: [], trails: []}
  const moreSize = add.size * add.copies
  const moreWorth = add.worth * add.copies
  let a = 0
  let b = 0
  let last = -1
  const n = sizes.length
  while (a < n || b < n) {
    const sizeB = b < n ? sizes[b]! + moreSize : Infinity
    if (sizeB > capacity && a >= n) break
    const takesA =
      a < n && (sizes[a]! < sizeB || (sizes[a] === sizeB && worths[a]! >= worths[b]! + moreWorth))
    const size = takesA ? sizes[a]! : sizeB
    const worth = takesA ? worths[a]! : worths[b]! + moreWorth
    if (worth > last && (worth + (capacity - size) * restRatio > floor || size === 0)) {
      out.sizes.push(size)
      out.worths.push(worth)
      out.trails.push(takesA ? trails[a] : {item: add.item, copies: add.copies, before: trails[b]})
      last = worth
    }
    if (takesA) a++
    else b++
  }
  return out
}

/** Keep one entry a cell: the smallest size, with the greatest worth that the cell holds. */
function thinned({sizes, worths, trails}: Growing, cell: number): Growing {
  const out: Growing = {sizes: [0], worths: [0], trails: [undefined]}
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
