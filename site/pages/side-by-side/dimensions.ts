import type {Plan} from '../../../plugins/plan/shape/plan.ts'
import {kindFacts} from '../../html/kind-facts.ts'
import {said} from '../../html/said.ts'
import type {SiteBuild} from '../../site-data.ts'

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
  fromPlan('The box’s own pitch', ({box}) => some(box?.resonanceHz, 'Hz')),
]
