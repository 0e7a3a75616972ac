import type {Element} from 'hast'
import type {BuildValues} from '../../build-file/schema.ts'
import type {Plan} from '../../plan/plan.ts'
import {coverWords} from '../../words/drawings/pictures.ts'
import {strungWhole} from './box-scenes.ts'
import {stringMarks} from './hardware.ts'
import {lined} from './neck-scenes.ts'
import {picture} from './picture.ts'
import {scene} from './scene.ts'
import {woodsBeside} from './woods-beside.ts'
import {momentsOf} from './worked.ts'

/**
 * Draw the finished instrument as it will stand, from the same solids as the pictures of the work: a cover for a build
 * that has no photograph, as an SVG file of its own. Undefined where neck or box are not known yet.
 */
export function coverOf(plan: Plan, values: BuildValues): Element | undefined {
  const last = momentsOf(plan, woodsBeside(values)).at(-1)
  if (!last?.neck || !last.box) return undefined
  const [, ...lines] = lined(last, false).marks
  const drawn = picture(scene(strungWhole(last), {marks: [...lines, ...stringMarks(last, false)]}), {
    id: 'cover',
    ...coverWords(plan),
  })
  const properties = {...drawn.properties, xmlns: 'http://www.w3.org/2000/svg', color: '#26211d'}
  return {...drawn, properties}
}
