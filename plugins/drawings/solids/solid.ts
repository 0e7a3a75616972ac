import {type Convex, type Half, holds, shifted} from './convex.ts'
import {boundary, type Flat, type Line} from './region.ts'
import {dot, plus, squareTo, times, type Vec} from './space.ts'

/** A piece of wood or metal: some bodies together, less what is cut out of them. */
export interface Solid {
  of: readonly Convex[]
  less: readonly Convex[]
}

export const solid = (...of: Convex[]): Solid => ({of, less: []})

/** Shift a piece. */
export const moved = ({of, less}: Solid, by: Vec): Solid => ({
  of: of.map((body) => shifted(body, by)),
  less: less.map((body) => shifted(body, by)),
})

/** Cut bodies out of a piece. */
export const cut = (from: Solid, ...away: Convex[]): Solid => ({...from, less: [...from.less, ...away]})

/** One flat face of a piece: its edges, with the piece's matter at the left of each as seen from outside. */
export interface Face {
  normal: Vec
  /** normal · p of its points. */
  atMm: number
  edges: Edge[]
  /** It is made, or meant, at this moment of the work. */
  isNow: boolean
}

export interface Edge {
  a: Vec
  b: Vec
  /** The normal of the face beyond it. */
  beyond: Vec
  /** It parts two faces of one round surface. */
  isSmooth: boolean
  /** One of its two faces is made at this moment of the work. */
  isNow: boolean
}

/** A face of one of the bodies, turned outwards from the piece's matter. */
interface Side extends Half {
  outline: readonly Vec[]
  turn: 1 | -1
}

/** So far before and behind a face it is asked whether there is matter (mm). */
const skinMm = 1e-5

/** Find the faces of a piece: those of bodies that touch level become one, and what lies within the piece is none. */
export function facesOf(piece: Solid): Face[] {
  const bodies = [
    ...piece.of.map((body) => ({body, turn: 1 as const, reach: reachOf(body.outlines)})),
    ...piece.less.map((body) => ({body, turn: -1 as const, reach: reachOf(body.outlines)})),
  ]
  return grouped(bodies.flatMap(({body, turn}) => sidesOf(body, turn)))
    .map((sides) => {
      const here = reachOf(sides.map(({outline}) => outline))
      return faceOf(
        bodies.filter(({reach}) => meet(reach, here)),
        sides,
      )
    })
    .filter(({edges}) => edges.length > 0)
}

interface Turned {
  body: Convex
  turn: 1 | -1
}

function sidesOf({halves, outlines}: Convex, turn: 1 | -1): Side[] {
  return halves.map(({normal, atMm, curve, isNow}, i) => ({
    normal: times(normal, turn),
    atMm: atMm * turn,
    curve,
    isNow,
    outline: outlines[i]!,
    turn,
  }))
}

/** Gather sides that lie on one plane and face one way. */
function grouped(sides: readonly Side[]): [Side, ...Side[]][] {
  const groups: [Side, ...Side[]][] = []
  for (const side of sides) {
    const group = groups.find(
      ([{normal, atMm}]) => Math.abs(atMm - side.atMm) < skinMm && dot(normal, side.normal) > 1 - 1e-10,
    )
    if (group) group.push(side)
    else groups.push([side])
  }
  return groups
}

function faceOf(near: readonly Turned[], sides: readonly [Side, ...Side[]]): Face {
  const [{normal, atMm}] = sides
  const [u, v] = squareTo(normal)
  const middle = times(normal, atMm)
  const flat = (point: Vec): Flat => [dot(u, point), dot(v, point)]
  const inSpace = ([x, y]: Flat, upMm = 0): Vec => plus(plus(plus(middle, u, x), v, y), normal, upMm)
  const corners = sides.flatMap(({outline}) => outline.map(flat))
  const frame = frameAround(corners)
  const lines = near.flatMap(({body, turn}) => sectionOf(body, {turn, normal, frame, flat, inSpace}))
  const matter = (point: Vec) =>
    near.some(({body, turn}) => turn > 0 && holds(body, point)) &&
    !near.some(({body, turn}) => turn < 0 && holds(body, point))
  const isFace = (point: Flat) => matter(inSpace(point, -skinMm)) && !matter(inSpace(point, skinMm))
  const isNow = sides.some((side) => side.isNow === true)
  const edges = boundary(lines, isFace).map(({a, b, from}) => ({
    a: inSpace(a),
    b: inSpace(b),
    beyond: from.normal,
    isSmooth: from.curve !== undefined && sides.some(({curve}) => curve === from.curve),
    isNow: isNow || from.isNow === true,
  }))
  return {normal, atMm, edges, isNow}
}

type Frame = readonly [left: number, low: number, right: number, high: number]

const frameAround = (points: readonly Flat[]): Frame => {
  const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)]
  return [Math.min(...xs) - 1, Math.min(...ys) - 1, Math.max(...xs) + 1, Math.max(...ys) + 1]
}

/** How far some points reach: lowest and highest corner. */
type Reach = readonly [low: Vec, high: Vec]

function reachOf(outlines: readonly (readonly Vec[])[]): Reach {
  const low = [0, 1, 2].map(() => Number.POSITIVE_INFINITY) as [number, number, number]
  const high = [0, 1, 2].map(() => Number.NEGATIVE_INFINITY) as [number, number, number]
  for (const outline of outlines)
    for (const point of outline)
      for (const axis of [0, 1, 2] as const) {
        if (point[axis] < low[axis]) low[axis] = point[axis]
        if (point[axis] > high[axis]) high[axis] = point[axis]
      }
  return [low, high]
}

const meet = ([low, high]: Reach, [from, to]: Reach) =>
  ([0, 1, 2] as const).every((axis) => from[axis] <= high[axis] + 0.01 && to[axis] >= low[axis] - 0.01)

interface Plane {
  turn: number
  normal: Vec
  frame: Frame
  flat: (point: Vec) => Flat
  inSpace: (point: Flat) => Vec
}

/** A side of an outline on a plane, and the half of space that it comes from; none is the frame's. */
interface Bound {
  point: Flat
  from: Half | undefined
}

/** Cut a body by a plane, within the frame there: the lines that its other faces leave on it. */
function sectionOf({halves}: Convex, plane: Plane): Line<Half>[] {
  const {turn, normal, frame, inSpace} = plane
  const [left, low, right, high] = frame
  const corners: Flat[] = [
    [left, low],
    [right, low],
    [right, high],
    [left, high],
  ]
  let outline: Bound[] = corners.map((point) => ({point, from: undefined}))
  for (const half of halves) {
    if (Math.abs(dot(half.normal, normal)) > 1 - 1e-10) continue
    const off = (point: Flat) => dot(half.normal, inSpace(point)) - half.atMm
    outline = bounded(outline, off, half)
    if (outline.length < 3) return []
  }
  return outline.flatMap(({point, from}, i): Line<Half>[] => {
    const b = outline[(i + 1) % outline.length]!.point
    return from ? [{a: point, b, from: {...from, normal: times(from.normal, turn)}}] : []
  })
}

/** Keep the part of an outline where `off` is not above 0; each corner carries where the side after it comes from. */
function bounded(outline: readonly Bound[], off: (point: Flat) => number, from: Half): Bound[] {
  const offs = outline.map(({point}) => off(point))
  return outline.flatMap((one, i): Bound[] => {
    const next = outline[(i + 1) % outline.length]!
    const [a, b] = [offs[i]!, offs[(i + 1) % outline.length]!]
    const at = (): Flat => {
      const t = a / (a - b)
      return [
        one.point[0] + t * (next.point[0] - one.point[0]),
        one.point[1] + t * (next.point[1] - one.point[1]),
      ]
    }
    if (a <= 0 && b <= 0) return [one]
    if (a <= 0) return [one, {point: at(), from}]
    return b <= 0 ? [{point: at(), from: one.from}] : []
  })
}

/** Give a face's area in mm². */
export const areaOf = ({normal, edges}: Face): number => {
  const [u, v] = squareTo(normal)
  return edges.reduce((sum, {a, b}) => sum + dot(u, a) * dot(v, b) - dot(u, b) * dot(v, a), 0) / 2
}

/** Give a piece's volume in mm³, from its faces. Source: the divergence theorem. */
export const volumeOf = (piece: Solid): number =>
  facesOf(piece).reduce((sum, face) => sum + face.atMm * areaOf(face), 0) / 3
