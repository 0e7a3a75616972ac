import type {Part} from '../../plan/stock/part.ts'
import {writing} from '../../words/step-writing.ts'
import {box, madeNow} from '../solids/convex.ts'
import {moved, nowOf, solid} from '../solids/solid.ts'
import type {Vec} from '../solids/space.ts'
import {type Mark, type Note, type Piece, type Push, type Scene, scene, upNow} from './scene.ts'
import {between, counted, faceZ, halfAt, type Moment, pieceReach, type SceneOf, workedNeck} from './worked.ts'

/** Lay parts to cut beside each other, with the faces that are cut now in the accent. */
function laidOut(
  parts: readonly Part[],
  isNow: (normal: Vec) => boolean,
  label: (part: Part) => string | undefined,
): Scene | undefined {
  let x = 0
  const shown = parts.slice(0, 6)
  const notes: Note[] = []
  const pieces = shown.map((part): Piece => {
    const size = label === thickness && part.why !== 'listed' ? part.why : part
    const body = box([x, 0, 0], [x + size.widthMm, size.lengthMm, size.thicknessMm])
    const text = label(part)
    if (text) notes.push({at: [x + size.widthMm / 2, size.lengthMm * 0.5, size.thicknessMm], text})
    x += size.widthMm * 1.25 + 6
    return {of: part.id, wood: part.wood, solid: solid(madeNow(body, isNow))}
  })
  return pieces.length > 0 ? scene(pieces, {notes: counted(notes)}) : undefined
}

const thickness = () => undefined

const partsHere = ({plan}: Moment, isSmall: boolean) =>
  (plan.cuts?.parts ?? []).filter((part) => part.isSmall === isSmall)

export const mill: SceneOf = (moment) =>
  laidOut(
    partsHere(moment, false),
    (n) => n[2] > 0.5 || n[0] > 0.5,
    () => undefined,
  )

export const rip =
  (isSmall: boolean): SceneOf =>
  (moment) => {
    const {size} = writing(moment.plan)
    return laidOut(
      partsHere(moment, isSmall),
      (n) => Math.abs(n[0]) > 0.5,
      ({widthMm}) => size(widthMm),
    )
  }

export const trim: SceneOf = (moment) => {
  const {size} = writing(moment.plan)
  return laidOut(
    partsHere(moment, true),
    (n) => Math.abs(n[1]) > 0.5,
    ({lengthMm, why}) => size(why === 'listed' ? lengthMm : why.lengthMm),
  )
}

/** Lift the neck's layers off each other by so much, the lower ones staying. */
function liftedOff(
  pieces: readonly Piece[],
  isLifted: (piece: Piece) => boolean,
  byMm: number,
): {pieces: Piece[]; pushes: Push[]} {
  let lift = 0
  const sorted = [...pieces].sort((a, b) => pieceReach(a)[0][2] - pieceReach(b)[0][2])
  const pushes: Push[] = []
  const all = sorted.map((piece): Piece => {
    if (!isLifted(piece)) return lift ? {...piece, solid: moved(piece.solid, [0, 0, lift])} : piece
    lift += byMm
    const [low, high] = pieceReach(piece)
    for (const part of [0.25, 0.75]) {
      const y = low[1] + part * (high[1] - low[1])
      pushes.push({from: [0, y, high[2] + lift + byMm * 1.2], to: [0, y, high[2] + lift + 2]})
    }
    return {...piece, solid: nowBelow(moved(piece.solid, [0, 0, lift]))}
  })
  return {pieces: all, pushes}
}

const nowBelow = (one: Piece['solid']): Piece['solid'] => nowOf(one, (n) => Math.abs(n[2]) > 0.9)

/** The neck's layers apart, strips of one layer beside each other; `isNow` says which faces are in hand. */
function layersApart(moment: Moment, isNow: (normal: Vec) => boolean): Piece[] {
  const pieces = workedNeck(moment)
  const heights = [...new Set(pieces.map((piece) => pieceReach(piece)[0][2].toFixed(2)))].sort(
    (a, b) => Number(a) - Number(b),
  )
  const middle = (piece: Piece) => (pieceReach(piece)[0][0] + pieceReach(piece)[1][0]) / 2
  return pieces.map((piece) => {
    const level = heights.indexOf(pieceReach(piece)[0][2].toFixed(2))
    const solid = nowOf(piece.solid, isNow)
    return {...piece, solid: moved(solid, [middle(piece) * 0.9, 0, level * 32])}
  })
}

const isSideways = (pieces: readonly Piece[]) =>
  pieces.filter((piece) => Math.abs(pieceReach(piece)[0][0]) > 0.1).length

export const planeFaces: SceneOf = (moment) => {
  const pieces = layersApart(moment, (n) => Math.abs(n[2]) > 0.9 || Math.abs(n[0]) > 0.9)
  return isSideways(pieces) > 0 ? scene(pieces) : undefined
}

export const glueUp: SceneOf = (moment) => {
  const whole = workedNeck(moment)
  const isSide = new Set(whole.map((piece) => pieceReach(piece)[0][0].toFixed(1))).size > 1
  const pieces = layersApart(moment, (n) => Math.abs(n[isSide ? 0 : 2]) > 0.9)
  if (pieces.length === 0) return undefined
  const [lows, highs] = [pieces.map((one) => pieceReach(one)[0]), pieces.map((one) => pieceReach(one)[1])]
  const [near, high] = [Math.max(...highs.map((one) => one[0])), Math.max(...highs.map((one) => one[2]))]
  const [from, to] = [Math.min(...lows.map((one) => one[1])), Math.max(...highs.map((one) => one[1]))]
  const pushes = [0.25, 0.6].map((part): Push => {
    const y = from + part * (to - from)
    return isSide
      ? {from: [near + 70, y, high / 2], to: [near + 4, y, high / 2]}
      : {from: [0, y, high + 60], to: [0, y, high + 3]}
  })
  return scene(pieces, {pushes})
}

export const plane: SceneOf = (moment) => {
  const {neck, plan, step} = moment
  const pieces = workedNeck(moment).map(upNow)
  if (!neck || pieces.length === 0 || step.facts.of !== 'plane') return undefined
  const {size} = writing(plan)
  const {stickMm} = step.facts.setting ?? {}
  const [low, high] = pieceReach(pieces[0]!)
  return scene(pieces, {
    notes: stickMm
      ? [{at: [high[0], low[1] + 0.3 * (high[1] - low[1]), (low[2] + high[2]) / 2], text: size(stickMm)}]
      : [],
  })
}

/** Strike the nut line round the stick, and the centre line along it. */
export const strike: SceneOf = (moment) => {
  const {neck} = moment
  const pieces = workedNeck(moment)
  if (!neck || pieces.length === 0) return undefined
  const z = faceZ(moment)
  const face = pieces.filter((piece) => Math.abs(pieceReach(piece)[1][2] - z) < 0.01)
  const [from, to] = [
    Math.min(...face.map((one) => pieceReach(one)[0][1])),
    Math.max(...face.map((one) => pieceReach(one)[1][1])),
  ]
  const side = halfAt(moment, 0)
  const marks: Mark[] = [
    {of: 'nut', a: [-side, 0, z], b: [side, 0, z], isNow: true},
    {of: 'nut side', a: [side, 0, z], b: [side, 0, z - (neck.neck.thicknessMm + z)], isNow: true},
    {of: 'centre', a: [0, Math.max(from, -(neck.head?.ledgeMm ?? -from)), z], b: [0, to, z], isNow: true},
  ]
  return scene(pieces, {
    marks,
    notes: [
      {at: [side, 0, z], text: 'nut line'},
      {at: [0, to * 0.6, z], text: 'centre line'},
    ],
  })
}

/** A part that is glued on, lifted over its place, with arrows that press it down. */
export const gluedOn = (moment: Moment): Scene | undefined => {
  const parts = new Set(
    (moment.plan.cuts?.parts ?? []).flatMap(({id, of}) => (moment.step.parts?.includes(id) ? [of] : [])),
  )
  const is = (of: string) => parts.has(of)
  const pieces = workedNeck(moment)
  const lifted = liftedOff(pieces, ({of}) => is(of), 40)
  if (lifted.pushes.length === 0) return undefined
  const part = lifted.pieces.find(({of}) => is(of))!
  const [low, high] = pieceReach(part)
  const isShort = high[1] - low[1] < 250
  const here = isShort ? between(lifted.pieces, low[1] - 30, high[1] + 120) : lifted.pieces
  return scene(here, {pushes: lifted.pushes})
}
