import type {Hole} from '../../plan/kit/hole.ts'
import {box, type Convex, convex, cylinder, half} from '../solids/convex.ts'
import {plus, type Vec} from '../solids/space.ts'
import type {BoxLook} from './box-bodies.ts'
import {bentFrom} from './neck-bodies.ts'
import {type Done, headFrame, type NeckLook, onHead} from './neck-look.ts'

/** Past the face that a bit enters or leaves (mm). */
const pastMm = 2

/** Where a bit goes in, the way it goes, and how deep (mm). */
export interface Bore {
  at: Vec
  way: Vec
  deepMm: number
}

/** Say how a hole of the plan is bored into neck or box; undefined where its face is not there. */
export function boreOf(
  hole: Hole,
  neck: NeckLook | undefined,
  box: BoxLook | undefined,
  x: (off: number) => number,
): Bore | undefined {
  const {face, stationMm, offMm, depthMm, downMm = 0} = hole
  if (face === 'head' && neck?.head && stationMm < 0)
    return {
      at: onHead(neck.head, -stationMm, [x(offMm), 0]),
      way: downOf(neck),
      deepMm: depthMm ?? neck.head.thicknessMm + neck.sawnMm,
    }
  if (neck && (face === 'neck back' || face === 'playing face' || face === 'head')) {
    const up = face === 'neck back'
    const at: Vec = [x(offMm), stationMm, up ? -neck.neck.thicknessMm : 0]
    return {at, way: [0, 0, up ? 1 : -1], deepMm: depthMm ?? neck.neck.thicknessMm}
  }
  if (neck && face === 'neck end')
    return {at: [x(offMm), stationMm, -downMm], way: [0, -1, 0], deepMm: depthMm ?? 30}
  return box && boreInBox(hole, box)
}

function downOf({head}: NeckLook): Vec {
  const {up} = headFrame(head!)
  return [-up[0], -up[1], -up[2]]
}

function boreInBox(
  {face, stationMm, offMm, depthMm, downMm = 0}: Hole,
  {x, topZ, outside, atMm, tailMm}: BoxLook,
): Bore | undefined {
  const {topMm, sidesMm, depthMm: boxMm, widthMm} = outside
  if (face === 'top') return {at: [x(offMm), stationMm, topZ], way: [0, 0, -1], deepMm: depthMm ?? topMm}
  if (face === 'top inside')
    return {at: [x(offMm), stationMm, topZ - topMm - 25], way: [0, 0, 1], deepMm: (depthMm ?? topMm) + 25}
  if (face === 'back')
    return {at: [x(offMm), stationMm, topZ - boxMm], way: [0, 0, 1], deepMm: depthMm ?? outside.backMm}
  const z = topZ - (downMm || boxMm / 2)
  if (face === 'head end') return {at: [x(offMm), atMm, z], way: [0, 1, 0], deepMm: depthMm ?? sidesMm}
  if (face === 'tail end') return {at: [x(offMm), tailMm, z], way: [0, -1, 0], deepMm: depthMm ?? sidesMm}
  const near = x(offMm) > 0
  return {
    at: [((near ? 1 : -1) * widthMm) / 2, stationMm, z],
    way: [near ? -1 : 1, 0, 0],
    deepMm: depthMm ?? sidesMm,
  }
}

/** What a bit takes away. */
export const bored = ({at, way, deepMm}: Bore, diameterMm: number): Convex =>
  cylinder(plus(at, way, -pastMm), plus(at, way, deepMm + (deepMm > 0 ? 0.5 : 0)), diameterMm)

/** How many flat faces stand for a rounded edge, its flats left out. */
const roundFaces = 5

/** What rounding takes off the two back edges, between its ends. */
export function roundedOff({neck}: NeckLook): Convex[] {
  const {radiusMm, fromMm, toMm} = neck.roundOver ?? {}
  if (radiusMm === undefined || fromMm === undefined || toMm === undefined || toMm <= fromMm) return []
  const lean = (neck.tailWidthMm - neck.nutWidthMm) / 2 / neck.tailMm
  const curve = {}
  return [1, -1].flatMap((side) =>
    Array.from({length: roundFaces}, (_, i) => {
      const turn = ((i + 1) * Math.PI) / 2 / (roundFaces + 1)
      const [out, down] = [Math.cos(turn), Math.sin(turn)]
      const corner: Vec = [side * (neck.nutWidthMm / 2), 0, -neck.thicknessMm]
      const centre: Vec = [corner[0] - side * radiusMm, 0, corner[2] + radiusMm]
      const normal: Vec = [side * out, -lean * out, -down]
      const touch = plus(centre, [side * out, 0, -down], radiusMm)
      const beyond = half([-normal[0], -normal[1], -normal[2]], touch)
      return convex([
        {...beyond, curve},
        half([0, -1, 0], [0, fromMm, 0]),
        half([0, 1, 0], [0, toMm, 0]),
        half([side, -lean, 0], plus(corner, [side * pastMm, 0, 0])),
        half([0, 0, -1], plus(corner, [0, 0, -pastMm])),
        half([-side, lean, 0], plus(centre, [0, 0, 0])),
        half([0, 0, 1], centre),
      ])
    }),
  )
}

/** What is cut off a neck's face inside a box that it runs through. */
export const cutDown = ({neck, roughMm}: NeckLook): Convex[] =>
  (neck.cutDown ?? [])
    .filter(({fromMm, toMm, deepMm}) => deepMm > 0 && toMm > fromMm)
    .map(({fromMm, toMm, deepMm}) =>
      box([-roughMm - pastMm, fromMm, -deepMm], [roughMm + pastMm, Math.min(toMm, neck.tailMm + pastMm), 50]),
    )

/** The groove that a nut's rod lies in. */
export function nutGroove({plan, roughMm}: NeckLook): Convex[] {
  const {alongMm = 0, grooveMm = 0} = plan.outline?.nut ?? {}
  if (alongMm <= 0 || grooveMm <= 0) return []
  const z = alongMm / 2 - grooveMm
  return [cylinder([-roughMm - pastMm, 0, z], [roughMm + pastMm, 0, z], alongMm)]
}

/** What is cut off a straight head's face, and what shaping takes off its back. */
export function headCuts(look: NeckLook, done: Done): Convex[] {
  const {neck, head, roughMm} = look
  if (head?.joint !== 'straight' || !done.has('shape-head') || bentFrom(look, done) === false) return []
  const [x, end] = [roughMm + pastMm, -head.lengthMm - 400]
  const back = head.stepMm + head.thicknessMm
  return [
    ...(head.stepMm > 0 ? [box([-x, end, -head.stepMm], [x, -head.ledgeMm, 50])] : []),
    ...(back < neck.thicknessMm ? [box([-x, end, -neck.thicknessMm - 50], [x, -head.ledgeMm, -back])] : []),
  ]
}
