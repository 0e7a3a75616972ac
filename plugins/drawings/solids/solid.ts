import {type Convex, type Half, madeNow, shifted} from './convex.ts'
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

/** Say that faces of a piece are made at this moment of the work: all, or those that look a way. */
export const nowOf = ({of, less}: Solid, which?: (normal: Vec) => boolean): Solid => ({
  of: of.map((body) => madeNow(body, which)),
  less,
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

/** Planes that lie so near each other count as one (mm). */
const levelMm = 1e-5

/**
 * So far before and behind a face it is asked whether there is matter (mm): a side that tapers by less than a part in
 * ten thousand still parts from its neighbour at their edge.
 */
const skinMm = 1e-8

/**
 * Find the faces of a piece, all or those that look a way that is asked for: those of bodies that touch level become
 * one, and what lies within the piece is none.
 */
export function facesOf(piece: Solid, isAsked: (normal: Vec) => boolean = () => true): Face[] {
  const turned = (turn: 1 | -1) => (body: Convex) => ({body, turn, reach: reachOf(body.outlines)})
  const bodies: Turned[] = [...piece.of.map(turned(1)), ...piece.less.map(turned(-1))]
  const sides = bodies.flatMap((body) => sidesOf(body).filter(({normal}) => isAsked(normal)))
  return grouped(sides).flatMap((group) => {
    const here = reachOf(group.map(({outline}) => outline))
    const near = bodies.filter(({reach}) => meet(reach, here))
    // What is cut out leaves a face only in what it is cut out of.
    const face = near[0]!.turn > 0 && faceOf(near, group)
    return face && face.edges.length > 0 ? [face] : []
  })
}

interface Turned {
  body: Convex
  turn: 1 | -1
  reach: Reach
}

const sidesOf = ({body: {halves, outlines}, turn}: Turned): Side[] =>
  halves.map(({normal, atMm, curve, isNow}, i) => ({
    normal: turn > 0 ? normal : times(normal, -1),
    atMm: atMm * turn,
    curve,
    isNow,
    outline: outlines[i]!,
    turn,
  }))

/** Gather sides that lie on one plane and face one way. */
function grouped(sides: readonly Side[]): [Side, ...Side[]][] {
  const groups: [Side, ...Side[]][] = []
  for (const side of sides) {
    const group = groups.find(
      ([{normal, atMm}]) => Math.abs(atMm - side.atMm) < levelMm && dot(normal, side.normal) > 1 - 1e-10,
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
  const plane = {normal, u, v, middle, frame: frameAround(sides, u, v)}
  const sections = near.flatMap(({body, turn}) => sectionOf(body, turn, plane) ?? [])
  const lines = sections.flatMap(linesOf)
  // A body by itself has its own outline.
  const around = sections.length === 1 && sections[0]!.turn > 0 ? lines : boundary(lines, isFaceOf(sections))
  const inSpace = ([x, y]: Flat): Vec => plus(plus(middle, u, x), v, y)
  const isNow = sides.some((side) => side.isNow === true)
  const edges = around.map(({a, b, from: {half, turn}}) => ({
    a: inSpace(a),
    b: inSpace(b),
    beyond: turn > 0 ? half.normal : times(half.normal, -1),
    isSmooth: half.curve !== undefined && sides.some(({curve}) => curve === half.curve),
    isNow: isNow || half.isNow === true,
  }))
  return {normal, atMm, edges, isNow}
}

type Frame = readonly [left: number, low: number, right: number, high: number]

function frameAround(sides: readonly Side[], u: Vec, v: Vec): Frame {
  let [left, low, right, high] = [Infinity, Infinity, -Infinity, -Infinity]
  for (const {outline} of sides)
    for (const point of outline) {
      const [x, y] = [dot(u, point), dot(v, point)]
      left = Math.min(left, x)
      right = Math.max(right, x)
      low = Math.min(low, y)
      high = Math.max(high, y)
    }
  return [left - 1, low - 1, right + 1, high + 1]
}

/** How far some points reach: lowest and highest corner. */
type Reach = readonly [low: Vec, high: Vec]

function reachOf(outlines: readonly (readonly Vec[])[]): Reach {
  const low: [number, number, number] = [Infinity, Infinity, Infinity]
  const high: [number, number, number] = [-Infinity, -Infinity, -Infinity]
  for (const outline of outlines)
    for (const point of outline)
      for (let axis = 0 as 0 | 1 | 2; axis < 3; axis++) {
        if (point[axis] < low[axis]) low[axis] = point[axis]
        if (point[axis] > high[axis]) high[axis] = point[axis]
      }
  return [low, high]
}

const near = 0.01
const meet = ([a, b]: Reach, [c, d]: Reach) =>
  c[0] <= b[0] + near &&
  c[1] <= b[1] + near &&
  c[2] <= b[2] + near &&
  d[0] >= a[0] - near &&
  d[1] >= a[1] - near &&
  d[2] >= a[2] - near

interface Plane {
  normal: Vec
  u: Vec
  v: Vec
  middle: Vec
  frame: Frame
}

/** Where a body's half of space comes from. */
interface From {
  half: Half
  turn: 1 | -1
}

/** A body cut by a plane: its halves there, x · a + y · b + c ≤ 0, how these change over the plane, and its outline. */
interface Section {
  turn: 1 | -1
  halves: readonly Half[]
  /** Four numbers a half: a, b, c, and how c grows with each mm over the plane. */
  bounds: Float64Array
  /** Corners in turn: x, y, and which half the side after it comes from; −1 is the frame. */
  xs: number[]
  ys: number[]
  froms: number[]
}

/** Cut a body by a plane, within the frame there; undefined where they do not meet. */
function sectionOf({halves}: Convex, turn: 1 | -1, plane: Plane): Section | undefined {
  const {normal, u, v, middle, frame} = plane
  const [left, low, right, high] = frame
  const bounds = new Float64Array(halves.length * 4)
  let [xs, ys, froms] = [
    [left, right, right, left],
    [low, low, high, high],
    [-1, -1, -1, -1],
  ]
  for (let i = 0; i < halves.length; i++) {
    const {normal: n, atMm} = halves[i]!
    const [a, b, c, over] = [dot(n, u), dot(n, v), dot(n, middle) - atMm, dot(n, normal)]
    bounds.set([a, b, c, over], i * 4)
    if (Math.abs(over) > 1 - 1e-10) {
      if (c > 2 * levelMm) return undefined
      continue
    }
    const offs = xs.map((x, k) => a * x + b * ys[k]! + c)
    if (!offs.some((off) => off > 0)) continue
    const [nextXs, nextYs, nextFroms]: [number[], number[], number[]] = [[], [], []]
    for (let k = 0; k < offs.length; k++) {
      const next = (k + 1) % offs.length
      const [off, offNext] = [offs[k]!, offs[next]!]
      if (off <= 0) {
        nextXs.push(xs[k]!)
        nextYs.push(ys[k]!)
        nextFroms.push(froms[k]!)
      }
      if (off <= 0 === offNext <= 0) continue
      const t = off / (off - offNext)
      nextXs.push(xs[k]! + t * (xs[next]! - xs[k]!))
      nextYs.push(ys[k]! + t * (ys[next]! - ys[k]!))
      nextFroms.push(off <= 0 ? i : froms[k]!)
    }
    if (nextXs.length < 3) return undefined
    ;[xs, ys, froms] = [nextXs, nextYs, nextFroms]
  }
  return {turn, halves, bounds, xs, ys, froms}
}

/** The lines that a body's faces leave on a plane. */
function linesOf({turn, halves, xs, ys, froms}: Section): Line<From>[] {
  const lines: Line<From>[] = []
  for (let i = 0; i < xs.length; i++) {
    if (froms[i]! < 0) continue
    const next = (i + 1) % xs.length
    lines.push({a: [xs[i]!, ys[i]!], b: [xs[next]!, ys[next]!], from: {half: halves[froms[i]!]!, turn}})
  }
  return lines
}

/** Say where a plane has a piece's matter right under it and none over it; what is cut out comes last. */
function isFaceOf(sections: readonly Section[]): (x: number, y: number) => boolean {
  return (x, y) => {
    let [under, over] = [false, false]
    for (let i = 0; i < sections.length; i++) {
      const {turn, bounds} = sections[i]!
      if (turn < 0 && !under) return false
      let [isUnder, isOver] = [true, true]
      for (let k = 0; k < bounds.length && (isUnder || isOver); k += 4) {
        const off = bounds[k]! * x + bounds[k + 1]! * y + bounds[k + 2]!
        const skin = bounds[k + 3]! * skinMm
        if (off - skin > 0) isUnder = false
        if (off + skin > 0) isOver = false
      }
      if (isUnder) under = turn > 0
      if (isOver) over = turn > 0
    }
    return under && !over
  }
}

/** Give a face's area in mm². */
export const areaOf = ({normal, edges}: Face): number => {
  const [u, v] = squareTo(normal)
  return edges.reduce((sum, {a, b}) => sum + dot(u, a) * dot(v, b) - dot(u, b) * dot(v, a), 0) / 2
}

/** Give a piece's volume in mm³, from its faces. Source: the divergence theorem. */
export const volumeOf = (piece: Solid): number =>
  facesOf(piece).reduce((sum, face) => sum + face.atMm * areaOf(face), 0) / 3
