interface Wish {
  /** Where its middle would best be. */
  target: number
  size: number
}

/**
 * Place things along a line so that none overlaps its neighbour and each is as near its wish as that allows
 * (least squares; blocks of touching things pool at their mean). Order is that of the wishes, which rise.
 * Where `range` has room for all of them they stay within it. Returns the middles.
 * Example: two labels 10 high that both wish to be at 0 are placed at −5 and 5.
 */
export function spread(wishes: readonly Wish[], range?: readonly [number, number]): number[] {
  const before: number[] = []
  let total = 0
  for (const {size} of wishes) {
    before.push(total + size / 2)
    total += size
  }
  const blocks: {mean: number; count: number}[] = []
  wishes.forEach(({target}, i) => {
    let block = {mean: target - before[i]!, count: 1}
    for (let last = blocks.at(-1); last && last.mean > block.mean; last = blocks.at(-1)) {
      blocks.pop()
      const count = last.count + block.count
      block = {mean: (last.mean * last.count + block.mean * block.count) / count, count}
    }
    blocks.push(block)
  })
  const fits = range && range[1] - range[0] >= total
  const held = (mean: number) => (fits ? Math.min(Math.max(mean, range[0]), range[1] - total) : mean)
  return blocks
    .flatMap(({mean, count}) => Array<number>(count).fill(held(mean)))
    .map((m, i) => m + before[i]!)
}
