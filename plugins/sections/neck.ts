import {paragraph} from './kit.ts'
import {bowInWords} from './neck/bow-in-words.ts'
import {fretting} from './neck/fretting.ts'
import {layerTable} from './neck/layer-table.ts'
import {lengthTable} from './neck/length-table.ts'
import {movementInWords} from './neck/movement-in-words.ts'
import {neckFigures} from './neck/neck-figures.ts'
import {shapeInWords} from './neck/shape-in-words.ts'
import type {Section} from './section.ts'

/** The stick to start from, what it is glued up of, how it is shaped and fretted, and what the strings do to it. */
export const neck: Section = {
  name: 'neck',
  title: 'Neck',
  needs: ({plan}) => (plan.neck?.layup ? [] : ['scale.length', 'neck']),
  content: ({plan}) => [
    ...lengthTable(plan),
    ...layerTable(plan),
    ...shapeInWords(plan).map((said) => paragraph(...said)),
    ...bowInWords(plan).map((said) => paragraph(...said)),
    ...movementInWords(plan).map((said) => paragraph(...said)),
    ...fretting(plan),
    ...neckFigures(plan),
  ],
}
