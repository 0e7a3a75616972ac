import type {Element} from 'hast'
import type {BuildValues} from '../../build-file/schema/schema.ts'
import type {Plan} from '../../plan/plan.ts'
import {coverWords, pictureWords} from '../../words/drawings/pictures.ts'
import {type WoodsBeside, woodsBeside} from './box-bodies.ts'
import {boxScenes} from './box-scenes.ts'
import {lined} from './face-scenes.ts'
import {stringMarks} from './hardware.ts'
import {neckScenes} from './neck-scenes.ts'
import {picture} from './picture.ts'
import {type Scene, scene} from './scene.ts'
import {strungWhole} from './strung-scenes.ts'
import {type Moment, momentsOf, type SceneOf} from './worked.ts'

const scenes: Readonly<Record<string, SceneOf>> = {...neckScenes, ...boxScenes}

/** Show what each step of a plan has in hand; nothing where a step has nothing to show. */
export function stepScenes(plan: Plan, woods: WoodsBeside): {moment: Moment; scene: Scene | undefined}[] {
  return momentsOf(plan, woods).map((moment) => ({moment, scene: sceneOf(moment)}))
}

function sceneOf(moment: Moment): Scene | undefined {
  const found = scenes[moment.step.facts.of]?.(moment)
  return found && found.pieces.length > 0 ? found : undefined
}

/** Draw a picture for each step that is still to be done, by its id: SVG in mm. What has nothing to show has none. */
export function stepPictures(plan: Plan, values: BuildValues): ReadonlyMap<string, Element> {
  const pictures = new Map<string, Element>()
  for (const moment of momentsOf(plan, woodsBeside(values))) {
    const scene = moment.step.isDone ? undefined : sceneOf(moment)
    if (!scene) continue
    const {id} = moment.step
    const numbers = scene.notes.map(({text}) => text)
    const told = pictureWords(moment.step, plan, {numbers, isTurned: scene.isTurned})
    pictures.set(id, picture(scene, {id: `picture-${id}`, ...told}))
  }
  return pictures
}

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
