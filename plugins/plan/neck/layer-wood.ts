import type {Words} from '../../build-file/values.ts'
import {woodOf} from '../wood-of.ts'

/** What a layer is made of: as written, and worth to section, weight and movement where the wood is known. */
export interface LayerWood {
  name?: string
  densityKgM3?: number
  eMpa?: number
  /** Where the name leaves a range; else both the same. */
  eRangeMpa?: readonly [low: number, high: number]
  /** Change of width per 1 % of moisture, quarter-sawn and flat-sawn. */
  moves?: readonly [quarter: number, flat: number]
}

interface Written {
  wood?: Words
  woods?: Words[]
  density?: {kgM3: number}
  stiffness?: {mpa: number}
}

/**
 * Say what a layer is worth: strips of different woods side by side, all of one width, count by the mean of their
 * stiffness, density and movement, since they bend and swell together.
 */
export function layerWood({wood, woods, ...own}: Written): LayerWood {
  const strips = woods?.length ? woods : wood ? [wood] : []
  const name = strips.map(({value}) => value).join(', ')
  const found = strips.length ? strips.map(({value}) => woodOf(value, own)) : [woodOf(undefined, own)]
  const sum = {densityKgM3: 0, eMpa: 0, low: 0, high: 0, quarter: 0, flat: 0}
  for (const one of found) {
    if (!one) return name ? {name} : {}
    const {densityKgM3, eMpa, range, moves} = one
    sum.densityKgM3 += densityKgM3
    sum.eMpa += eMpa
    sum.low += range?.eMpa[0] ?? eMpa
    sum.high += range?.eMpa[1] ?? eMpa
    sum.quarter += moves?.[0] ?? Number.NaN
    sum.flat += moves?.[1] ?? Number.NaN
  }
  const count = found.length
  const layer: LayerWood = {
    densityKgM3: sum.densityKgM3 / count,
    eMpa: sum.eMpa / count,
    eRangeMpa: [sum.low / count, sum.high / count],
  }
  if (name) layer.name = name
  if (!Number.isNaN(sum.flat)) layer.moves = [sum.quarter / count, sum.flat / count]
  return layer
}
