import type {Plan} from '../../plan/plan.ts'
import type {Step} from '../../plan/work/step.ts'
import {instrumentOf} from '../instrument/instrument.ts'
import {box, type Convex, madeNow} from '../solids/convex.ts'
import type {Vec} from '../solids/space.ts'
import {type BoxLook, boxLook, boxPieces, notches, type WoodsBeside} from './box-bodies.ts'
import {type Bore, bored, boreOf, cutDown, headCuts, nutGroove, roundedOff} from './cutters.ts'
import {neckPieces, upperFaceZ} from './neck-bodies.ts'
import {type Done, type NeckLook, neckLook} from './neck-look.ts'
import type {Mark, Note, Piece, Scene} from './scene.ts'

/** One moment of the work: what is done by then, the step in hand among it, and the design. */
export interface Moment {
  plan: Plan
  step: Step
  done: Done
  neck: NeckLook | undefined
  box: BoxLook | undefined
  x: (offMm: number) => number
  /** What a drilling step bores, by its id. */
  bores: (id: string) => readonly BoredHole[]
  /** The whole instrument is seen from so far that small holes and rounded edges are none. */
  isFar?: boolean
}

/** A hole that is seen on a whole instrument, at least (mm). */
const seenFarMm = 10

export const fromFar = (moment: Moment): Moment => ({...moment, isFar: true})

/** Find what each step of a plan has before it: everything earlier in the order, and itself. */
export function momentsOf(plan: Plan, woods: WoodsBeside): Moment[] {
  const instrument = instrumentOf(plan)
  const x = (offMm: number) => -instrument.x(offMm) + 0
  const neck = neckLook(plan, woods.plate)
  const box = boxLook(plan, woods, x)
  const done = new Set<string>()
  const known = new Map<string, readonly BoredHole[]>()
  const bores = (id: string) => {
    const found = known.get(id) ?? boresOf({plan, neck, box, x}, id)
    known.set(id, found)
    return found
  }
  return (plan.work ?? []).map((step) => {
    done.add(step.id)
    return {plan, step, done: new Set(done), neck, box, x, bores}
  })
}

/** Is it this step that is in hand? */
const isInHand = ({step}: Moment, id: string) => step.id === id

/** Draw up the neck with all that is cut and drilled by now; what is cut at this moment is marked so. */
export function workedNeck(moment: Moment): Piece[] {
  const {neck, done} = moment
  if (!neck) return []
  const cutters = [
    ...made(moment, 'shape-head', headCuts(neck, done)),
    ...made(moment, 'cut-down', cutDown(neck)),
    ...made(moment, 'groove-nut', nutGroove(neck)),
    ...(moment.isFar ? [] : made(moment, 'round-over', roundedOff(neck))),
    ...drilled(moment, 'drill-head'),
    ...drilled(moment, 'drill-neck'),
  ]
  return neckPieces(neck, done).map((piece) => withCuts(piece, cutters))
}

/** Draw up the box with all that is cut and drilled by now. */
export function workedBox(moment: Moment, isOpen = false): Piece[] {
  const {box, done, step} = moment
  if (!box) return []
  const isNotched = isInHand(moment, 'notch-box')
  const cutters = [
    ...drilled(moment, 'drill-top'),
    ...drilled(moment, 'drill-box'),
    ...(isNotched ? notches(box).map((body) => madeNow(body)) : []),
  ]
  const before = isNotched ? new Set([...done].filter((id) => id !== step.id)) : done
  return boxPieces(box, before, isOpen).map((piece) =>
    withCuts(
      piece,
      piece.of === 'box.top' ? cutters.filter((one) => !isNotched || !notches(box).includes(one)) : cutters,
    ),
  )
}

const drilled = (moment: Moment, id: string): Convex[] =>
  made(
    moment,
    id,
    moment.bores(id).flatMap(({body, diameterMm}) => (moment.isFar && diameterMm < seenFarMm ? [] : [body])),
  )

function made(moment: Moment, id: string, bodies: readonly Convex[]): Convex[] {
  if (!moment.done.has(id)) return []
  return isInHand(moment, id) ? bodies.map((body) => madeNow(body)) : [...bodies]
}

export interface BoredHole {
  of: string
  bore: Bore
  diameterMm: number
  body: Convex
}

const faces: Readonly<Record<string, readonly string[]>> = {
  'drill-head': ['head'],
  'drill-neck': ['playing face', 'neck back', 'neck end'],
  'drill-top': ['top', 'top inside'],
  'drill-box': ['back', 'side bass', 'side treble', 'head end', 'tail end'],
}

function boresOf({plan, neck, box, x}: Pick<Moment, 'plan' | 'neck' | 'box' | 'x'>, id: string): BoredHole[] {
  return (plan.holes ?? []).flatMap((hole): BoredHole[] => {
    if (!faces[id]?.includes(hole.face)) return []
    const bore = boreOf(hole, neck, box, x)
    return bore ? [{of: hole.of, bore, diameterMm: hole.diameterMm, body: bored(bore, hole.diameterMm)}] : []
  })
}

type Reach = readonly [Vec, Vec]

function reachOf(bodies: readonly Convex[]): Reach {
  const [low, high]: [number[], number[]] = [
    [Infinity, Infinity, Infinity],
    [-Infinity, -Infinity, -Infinity],
  ]
  for (const {outlines} of bodies)
    for (const outline of outlines)
      for (const point of outline)
        for (const axis of [0, 1, 2] as const) {
          low[axis] = Math.min(low[axis]!, point[axis])
          high[axis] = Math.max(high[axis]!, point[axis])
        }
  return [low as unknown as Vec, high as unknown as Vec]
}

/** How far a piece reaches: its lowest and its highest corner. */
export const pieceReach = ({solid}: Piece): Reach => reachOf(solid.of)

/** Cut a piece by those bodies that come near it. */
export function withCuts(piece: Piece, cutters: readonly Convex[]): Piece {
  const [low, high] = pieceReach(piece)
  const near = cutters.filter((body) => {
    const [from, to] = reachOf([body])
    return [0, 1, 2].every((axis) => from[axis as 0] < high[axis as 0] && to[axis as 0] > low[axis as 0])
  })
  return near.length === 0 ? piece : {...piece, solid: {...piece.solid, less: [...piece.solid.less, ...near]}}
}

/** Keep of pieces what lies between two places along the neck: a picture of one end is not as long as the whole. */
export function between(pieces: readonly Piece[], fromMm: number, toMm: number): Piece[] {
  const far = 6000
  const cuts = [box([-far, -far, -far], [far, fromMm, far]), box([-far, toMm, -far], [far, far, far])]
  return pieces
    .filter((piece) => {
      const [low, high] = pieceReach(piece)
      return low[1] < toMm && high[1] > fromMm
    })
    .map((piece) => withCuts(piece, cuts))
}

/** The height of the neck's upper face by now: the lowest is under what is not glued on yet. */
export const faceZ = ({neck, done}: Moment): number => (neck ? upperFaceZ(neck, done) : 0)

/** Half the neck's width at a place, by now (mm). */
export function halfAt({neck, done}: Moment, stationMm: number): number {
  if (!neck) return 0
  if (!done.has('plane-sides')) return neck.roughMm
  const {nutWidthMm, tailWidthMm, tailMm} = neck.neck
  const part = Math.min(1, Math.max(0, stationMm / tailMm))
  return (nutWidthMm + part * (tailWidthMm - nutWidthMm)) / 2
}

/** A line square across the neck's face. */
export function across(moment: Moment, stationMm: number, isNow: boolean): Mark {
  const [half, z] = [halfAt(moment, stationMm), faceZ(moment)]
  return {of: `line ${stationMm}`, a: [-half, stationMm, z], b: [half, stationMm, z], isNow}
}

/** Put one number beside all places that it is true of: `3 × 1/4 in`. */
export function counted(notes: readonly Note[]): Note[] {
  const all = new Map<string, Note[]>()
  for (const note of notes) all.set(note.text, [...(all.get(note.text) ?? []), note])
  return [...all].map(([text, same]) => ({
    at: same[0]!.at,
    text: same.length > 1 ? `${same.length} × ${text}` : text,
  }))
}

/** Show what a step of the neck has in hand; undefined where there is nothing to show. */
export type SceneOf = (moment: Moment) => Scene | undefined
