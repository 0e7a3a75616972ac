import type {Plan} from '../../plugins/plan/plan.ts'
import type {SiteBuild} from '../kit/site-data.ts'
import {kindFacts, said} from './build-facts.ts'

/** What a build has for one dimension: a length, a number of some unit, or words. */
export type Has = {mm: number} | {number: number; unit: string; digits: number} | {words: string} | undefined

/** One thing that builds are compared by. */
export interface Dimension {
  name: string
  of: (one: SiteBuild) => Has
}

const lengthOf = (mm: number | undefined): Has => (mm === undefined ? undefined : {mm})
const words = (text: string | undefined): Has => (text ? {words: text} : undefined)
const some = (number: number | undefined, unit: string, digits = 0): Has =>
  number === undefined ? undefined : {number, unit, digits}

const fromPlan = (name: string, find: (plan: Plan) => Has): Dimension => ({name, of: ({plan}) => find(plan)})

/** What the instruments of a journal are compared by, in working order. */
export const dimensions: readonly Dimension[] = [
  fromPlan('Scale length', ({scale}) => lengthOf(scale?.lengthMm)),
  {name: 'Strings', of: (one) => words(kindFacts(one).tuning)},
  {name: 'Frets', of: (one) => words(kindFacts(one).frets)},
  {name: 'Played with', of: (one) => words(kindFacts(one).play)},
  fromPlan('All strings pull', ({tensionTotalN}) => some(tensionTotalN, 'N')),
  fromPlan('Neck width at the nut', ({outline}) => lengthOf(outline?.neck?.nutWidthMm)),
  fromPlan('Neck thickness', ({outline}) => lengthOf(outline?.neck?.thicknessMm)),
  {name: 'Neck joins', of: (one) => words(said(one, 'neck.joins'))},
  fromPlan('Head length', ({outline}) => lengthOf(outline?.head?.lengthMm)),
  {name: 'Box', of: (one) => words(said(one, 'box.wood'))},
  fromPlan('Box length', ({box}) => lengthOf(box?.outside?.lengthMm)),
  fromPlan('Box width', ({box}) => lengthOf(box?.outside?.widthMm)),
  fromPlan('Box depth', ({box}) => lengthOf(box?.outside?.depthMm)),
  fromPlan('Bridge from the box’s head side', ({bridge}) => lengthOf(bridge?.alongMm)),
  fromPlan('String height at the nut', ({action}) => lengthOf(action?.nutMm)),
  fromPlan('String height at the octave', ({action}) => lengthOf(action?.octaveMm)),
  fromPlan('Air in the box', ({box}) => some(box?.volumeL, 'l', 1)),
  fromPlan('The box’s own pitch', ({box}) => some(box?.resonanceLowHz, 'Hz')),
]

/** What a dimension is among several builds: always the same words, or between two of them. */
interface Shared {
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
