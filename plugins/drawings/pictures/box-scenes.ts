import {writing} from '../../words/step-writing.ts'
import {box, cylinder, madeNow} from '../solids/convex.ts'
import {moved, nowOf, solid} from '../solids/solid.ts'
import type {Vec} from '../solids/space.ts'
import {blockPieces} from './box-bodies.ts'
import {bitNotes} from './head-scenes.ts'
import {type Mark, type Note, type Piece, scene, upNow} from './scene.ts'
import {closeTop, fasten, hardware, setUp, string, together, topOf, wire} from './strung-scenes.ts'
import {pieceReach, type SceneOf, workedBox} from './worked.ts'

const prepare: SceneOf = (moment) => {
  const {box: look, plan, step} = moment
  if (!look || step.facts.of !== 'box-prepare') return undefined
  const {asWritten} = writing(plan)
  const {atMm, tailMm, topZ, outside} = look
  const marks: Mark[] = step.facts.isStripped
    ? []
    : [
        {of: 'centre', a: [0, atMm, topZ], b: [0, tailMm, topZ], isNow: true},
        {of: 'centre end', a: [0, atMm, topZ], b: [0, atMm, topZ - outside.depthMm], isNow: true},
      ]
  const [long, wide, deep] = step.facts.sizes.map(asWritten)
  const half = outside.widthMm / 2
  const notes: Note[] = [
    ...(long ? [{at: [half, (atMm + tailMm) / 2, topZ - outside.depthMm] as Vec, text: long}] : []),
    ...(wide ? [{at: [0, tailMm, topZ] as Vec, text: wide}] : []),
    ...(deep ? [{at: [half, tailMm, topZ - outside.depthMm / 2] as Vec, text: deep}] : []),
  ]
  return scene(workedBox(moment), {marks, notes})
}

const strip: SceneOf = (moment) =>
  scene(workedBox(moment).map((piece) => (piece.of === 'box.top' ? upNow(piece) : piece)))

const blocks: SceneOf = (moment) => {
  const {box: look, plan} = moment
  if (!look) return undefined
  const {size} = writing(plan)
  const lift = 34
  const blocks = blockPieces(look).map(
    (piece): Piece => ({
      ...piece,
      solid: moved(nowOf(piece.solid), [0, 0, lift]),
    }),
  )
  if (blocks.length === 0) return undefined
  const middle = (piece: Piece): Vec => {
    const [low, high] = pieceReach(piece)
    return [(low[0] + high[0]) / 2, (low[1] + high[1]) / 2, high[2]]
  }
  return scene([...workedBox(moment, true), ...blocks], {
    pushes: blocks.map((piece) => {
      const at = middle(piece)
      return {from: [at[0], at[1], at[2] + 45], to: [at[0], at[1], at[2] + 3]}
    }),
    notes: blocks.map((piece) => ({at: middle(piece), text: size(middle(piece)[1] - look.atMm)})),
  })
}

const drill =
  (id: string): SceneOf =>
  (moment) => {
    if (!moment.box) return undefined
    return scene(workedBox(moment), {notes: bitNotes(moment, id)})
  }

const notch: SceneOf = (moment) => {
  const {box: look, plan, step} = moment
  if (!look || step.facts.of !== 'notch-box') return undefined
  const {asWritten} = writing(plan)
  const {width, depth} = step.facts.setting
  const at: Vec = [0, look.atMm, look.topZ - look.outside.topMm]
  return scene(workedBox(moment, true), {
    notes: [{at, text: `${asWritten(width)} wide, ${asWritten(depth)} deep`}],
  })
}

const sand: SceneOf = (moment) => {
  const pieces = together(moment, [0, 0, moment.box ? 60 : 0]).map(upNow)
  return pieces.length > 0 ? scene(pieces, {notes: [{at: topOf(pieces), text: '120, 180, 220'}]}) : undefined
}

const finish: SceneOf = (moment) => {
  const {step} = moment
  if (step.facts.of !== 'finish') return undefined
  const pieces = together(moment, [0, 0, moment.box ? 60 : 0])
  const coats = step.facts.coats === 1 ? '1 coat' : `${step.facts.coats} coats`
  return pieces.length > 0 ? scene(pieces.map(upNow), {notes: [{at: topOf(pieces), text: coats}]}) : undefined
}

const rod: SceneOf = ({plan, step, neck}) => {
  if (step.facts.of !== 'cut-rod') return undefined
  const {asWritten} = writing(plan)
  const {thick, long} = step.facts.setting ?? {}
  const length = long?.mm ?? neck?.neck.nutWidthMm ?? 40
  const body = cylinder([0, 0, 0], [0, length, 0], thick?.mm ?? 5)
  return scene(
    [{of: step.facts.for, grain: 'none', solid: solid(madeNow(body, (n) => Math.abs(n[1]) > 0.9))}],
    {
      notes: [
        ...(long ? [{at: [0, length, 0] as Vec, text: `${asWritten(long)} long`}] : []),
        ...(thick ? [{at: [0, 0, 0] as Vec, text: `${asWritten(thick)} thick`}] : []),
      ],
    },
  )
}

const further: SceneOf = ({plan, step}) => {
  const parts = (plan.cuts?.parts ?? []).filter(({id}) => step.parts?.includes(id)).slice(0, 6)
  let x = 0
  const pieces = parts.map((part): Piece => {
    const body = box([x, 0, 0], [x + part.widthMm, part.lengthMm, part.thicknessMm])
    x += part.widthMm * 1.3 + 6
    return {of: part.id, wood: part.wood, solid: solid(madeNow(body))}
  })
  return pieces.length > 0 ? scene(pieces) : undefined
}

export const boxScenes: Readonly<Record<string, SceneOf>> = {
  'box-prepare': prepare,
  'box-strip': strip,
  'fit-blocks': blocks,
  'drill-top': drill('drill-top'),
  'drill-box': drill('drill-box'),
  'notch-box': notch,
  sand,
  finish,
  'cut-rod': rod,
  'fit-parts': further,
  'fasten-hardware': hardware,
  fasten,
  wire,
  'fasten-top': closeTop,
  string,
  'set-up': setUp,
}
