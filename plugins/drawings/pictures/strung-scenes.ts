import {writing} from '../../words/step-writing.ts'
import {cylinder, madeNow} from '../solids/convex.ts'
import {moved, nowOf, solid} from '../solids/solid.ts'
import type {Vec} from '../solids/space.ts'
import {blockPieces} from './box-bodies.ts'
import {bridgePiece, hardwarePieces, stringMarks} from './hardware.ts'
import {type Note, type Piece, scene} from './scene.ts'
import type {SceneOf} from './worked.ts'
import {fromFar, type Moment, pieceReach, workedBox, workedNeck} from './worked.ts'

/** Put neck and box together; the neck lifted off by so much (mm). */
export function together(near: Moment, lift: Vec = [0, 0, 0], isOpen = false): Piece[] {
  const moment = fromFar(near)
  const neck = workedNeck(moment).map((piece) => ({...piece, solid: moved(piece.solid, lift)}))
  const {box: look, done} = moment
  if (!look) return neck
  const inside = isOpen && done.has('fit-blocks') ? blockPieces(look) : []
  return [...neck, ...inside, ...workedBox(moment, isOpen)]
}

export function topOf(pieces: readonly Piece[]): Vec {
  const [low, high] = pieceReach(pieces[0]!)
  return [0, low[1] + 0.55 * (high[1] - low[1]), high[2]]
}

export const fasten: SceneOf = (moment) => {
  const {plan, box: look, step} = moment
  if (!look || !moment.neck || step.facts.of !== 'fasten') return undefined
  const isEnd = moment.neck.neck.joins === 'end'
  const isThrough = moment.neck.neck.joins === 'through'
  const lift: Vec = isEnd ? [0, -70, 0] : [0, 0, 75]
  const pieces = together(moment, lift, isThrough)
  const screws = (plan.fasteners ?? []).map(({stationMm, offMm}): Piece => {
    const x = moment.x(offMm)
    const low = look.topZ + 18
    return {
      of: 'screws',
      grain: 'none',
      solid: solid(madeNow(cylinder([x, stationMm, low], [x, stationMm, low + 34], 5))),
    }
  })
  const from: Vec = [0, (look.atMm + look.tailMm) / 2, 0]
  const push = isEnd
    ? {from: [0, look.atMm - 230, -10] as Vec, to: [0, look.atMm - 150, -10] as Vec}
    : {from: [0, from[1], 75 + 70] as Vec, to: [0, from[1], 75 + 6] as Vec}
  const {screws: set} = step.facts.setting ?? {}
  const notes: Note[] = set
    ? [{at: [0, look.atMm, look.topZ - look.outside.depthMm], text: `${set.count} of No. ${set.size}`}]
    : []
  return scene([...pieces, ...(isThrough || isEnd ? [] : screws)], {pushes: [push], notes})
}

export const hardware: SceneOf = (moment) => {
  const posts = hardwarePieces(moment).map((piece) => ({
    ...piece,
    solid: nowOf(piece.solid),
  }))
  const pieces = workedNeck(fromFar(moment))
  return pieces.length + posts.length > 0 ? scene([...pieces, ...posts]) : undefined
}

/** The whole instrument as it stands by now, with its hardware. */
export const strungWhole = (moment: Moment): Piece[] => [
  ...together(moment),
  ...hardwarePieces(moment),
  ...bridgePiece(moment),
]

export const string: SceneOf = (moment) => {
  const names = (moment.plan.strings ?? []).map(({name}) => name).join(' ')
  const at: Vec = [0, (moment.plan.scale?.lengthMm ?? 400) * 0.45, 5]
  return scene(strungWhole(moment), {
    marks: stringMarks(moment, true),
    notes: names ? [{at, text: names}] : [],
  })
}

export const setUp: SceneOf = (moment) => {
  const {plan, step} = moment
  if (step.facts.of !== 'set-up') return undefined
  const {asWritten} = writing(plan)
  const {nut, octave} = step.facts.setting ?? {}
  const octaveMm = (plan.scale?.lengthMm ?? 0) / 2
  const notes: Note[] = [
    ...(nut ? [{at: [0, 0, 3] as Vec, text: `nut ${asWritten(nut)}`}] : []),
    ...(octave ? [{at: [0, octaveMm, 5] as Vec, text: `octave ${asWritten(octave)}`}] : []),
  ]
  const pieces = strungWhole(moment).map((piece) =>
    piece.of === 'bridge' ? {...piece, solid: nowOf(piece.solid)} : piece,
  )
  return scene(pieces, {marks: stringMarks(moment, false), notes})
}

export const closeTop: SceneOf = (moment) => {
  const {box: look} = moment
  if (!look) return undefined
  const pieces = together(moment).map((piece) =>
    piece.of === 'box.top' ? {...piece, solid: nowOf(piece.solid)} : piece,
  )
  return scene(pieces)
}

export const wire: SceneOf = (moment) => {
  const {plan, box: look} = moment
  if (!look) return undefined
  const jack = (plan.holes ?? []).find(({what}) => what.hole === 'jack')
  const plug: Piece[] = []
  if (jack) {
    const near = moment.x(jack.offMm) > 0 ? 1 : -1
    const z = look.topZ - (jack.downMm ?? look.outside.depthMm / 2)
    const [x, y] = [(near * look.outside.widthMm) / 2, jack.stationMm]
    const body =
      jack.face === 'tail end'
        ? cylinder(
            [moment.x(jack.offMm), look.tailMm, z],
            [moment.x(jack.offMm), look.tailMm + 14, z],
            jack.diameterMm,
          )
        : cylinder([x, y, z], [x + near * 14, y, z], jack.diameterMm)
    plug.push({of: 'pickup.jack', grain: 'none', solid: solid(madeNow(body))})
  }
  return scene([...together(moment), ...plug])
}
