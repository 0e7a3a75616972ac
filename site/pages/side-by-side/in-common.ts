import type {SiteBuild} from '../../site-data.ts'
import {type Dimension, dimensions, type Has} from './dimensions.ts'

/** What a dimension is among several builds: always the same words, or between two of them. */
export interface Shared {
  dimension: Dimension
  low: NonNullable<Has>
  high: NonNullable<Has>
}

/** Find what all these builds have: the same words, or lengths and numbers from the least to the most. */
export function inCommon(builds: readonly SiteBuild[]): Shared[] {
  return dimensions.flatMap((dimension) => {
    const all = builds.map((one) => dimension.of(one))
    if (all.some((has) => has === undefined)) return []
    const sorted = (all as NonNullable<Has>[]).sort((a, b) => sizeOf(a) - sizeOf(b))
    const [low, high] = [sorted[0]!, sorted.at(-1)!]
    const isWords = sorted.some((has) => 'words' in has)
    if (isWords && new Set(sorted.map((has) => JSON.stringify(has))).size > 1) return []
    return [{dimension, low, high}]
  })
}

function sizeOf(has: NonNullable<Has>): number {
  return 'mm' in has ? has.mm : 'number' in has ? has.number : 0
}
