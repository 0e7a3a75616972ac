import type {Bin} from './task.ts'

/** Find the bin of a lane that is so wide, or start one. */
export function restOf(bins: Bin[], lane: number, width: number): Bin {
  const known = bins.find((bin) => bin.lane === lane && bin.width === width)
  if (known) return known
  const rest = {lane, width, count: 0}
  bins.push(rest)
  return rest
}

/** Name a state of a search: what is still to cut, and the bins that still hold something. */
export const stateKey = (counts: Int32Array, bins: readonly Bin[], narrowest: number): string =>
  `${String.fromCharCode(...counts)}|${bins
    .filter((bin) => bin.count > 0 && bin.width >= narrowest)
    .map((bin) => `${bin.lane}:${bin.width}x${bin.count}`)
    .sort()
    .join()}`
