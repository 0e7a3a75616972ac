import type {Convex, Half} from './convex.ts'
import {type Frame, isFaceOf, levelMm, linesOf, sectionOf} from './cut-by-plane.ts'
import {boundary, type Flat} from './region.ts'
import type {Solid} from './solid.ts'
import {dot, plus, squareTo, times, type Vec} from './space.ts'

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
  const inSpace = (at: Flat): Vec => plus(plus(middle, u, at[0]), v, at[1])
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

function frameAround(sides: readonly Side[], u: Vec, v: Vec): Frame {
  let [left, low, right, high] = [Infinity, Infinity, -Infinity, -Infinity]
  for (const {outline} of sides)
    for (const point of outline) {
      const x = dot(u, point)
      const y = dot(v, point)
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

/** Give a face's area in mm². */
export const areaOf = ({normal, edges}: Face): number => {
  const [u, v] = squareTo(normal)
  return edges.reduce((sum, {a, b}) => sum + dot(u, a) * dot(v, b) - dot(u, b) * dot(v, a), 0) / 2
}

/** Give a piece's volume in mm³, from its faces. Source: the divergence theorem. */
export const volumeOf = (piece: Solid): number =>
  facesOf(piece).reduce((sum, face) => sum + face.atMm * areaOf(face), 0) / 3
