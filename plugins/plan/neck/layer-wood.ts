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
  const known = found.filter((one) => one !== undefined)
  if (known.length < found.length) return name ? {name} : {}
  const mean = (of: (one: (typeof known)[number]) => number) =>
    known.reduce((sum, one) => sum + of(one), 0) / known.length
  const moving = known.every(({moves}) => moves)
  return {
    ...(name && {name}),
    densityKgM3: mean((one) => one.densityKgM3),
    eMpa: mean((one) => one.eMpa),
    eRangeMpa: [mean((one) => one.range?.eMpa[0] ?? one.eMpa), mean((one) => one.range?.eMpa[1] ?? one.eMpa)],
    ...(moving && {moves: [mean((one) => one.moves![0]), mean((one) => one.moves![1])] as const}),
  }
}
