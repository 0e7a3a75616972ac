import type {Bin, Task} from './task.ts'

/** The kinds of parts that fit in none of the bins, and their volume. */
export function withoutRoom(
  task: Task,
  counts: ArrayLike<number>,
  bins: readonly Bin[],
): {kinds: Set<number>; volume: number} {
  const kinds = new Set<number>()
  let volume = 0
  task.parts.forEach((part, at) => {
    if (counts[at]! === 0) return
    const fits = bins.some(({lane, width, count}) => {
      const {length, takes} = task.lanes[lane]!
      return count > 0 && width >= part.width && takes[at] && length >= part.length
    })
    if (fits) return
    kinds.add(at)
    volume += counts[at]! * part.volume
  })
  return {kinds, volume}
}
