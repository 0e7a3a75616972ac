import type {Element} from 'hast'
import type {BuildValues} from '../../build-file/schema.ts'
import type {Plan} from '../../plan/plan.ts'
import {coverWords} from '../../words/drawings/pictures.ts'
import {strungWhole} from './box-scenes.ts'
import {stringMarks} from './hardware.ts'
import {picture} from './picture.ts'
import {scene} from './scene.ts'
import {woodsBeside} from './woods-beside.ts'
import {momentsOf} from './worked.ts'

/**
 * Draw the finished instrument as it will stand, from the same solids as the pictures of the work: a cover for a build
 * that has no photograph. `id` starts the ids of what is in it; undefined where neck or box are not known yet.
 */
export function coverOf(plan: Plan, values: BuildValues, id = 'cover'): Element | undefined {
  const last = momentsOf(plan, woodsBeside(values)).at(-1)
  if (!last?.neck || !last.box) return undefined
  const marks = stringMarks(last, false)
  return picture(scene(strungWhole(last), {marks}), {id, ...coverWords(plan)})
}
