import type {Convex, Half} from './convex.ts'
import type {Line} from './region.ts'
import {dot, type Vec} from './space.ts'

/** Planes that lie so near each other count as one (mm). */
export const levelMm = 1e-5

/**
 * So far before and behind a face it is asked whether there is matter (mm): a side that tapers by less than a part in
 * ten thousand still parts from its neighbour at their edge.
 */
const skinMm = 1e-8

export type Frame = readonly [left: number, low: number, right: number, high: number]

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

/** Corners in turn: x, y, and which half the side after it comes from; −1 is the frame. */
interface Outline {
  xs: number[]
  ys: number[]
  froms: number[]
}

/** A body cut by a plane: its halves there, x · a + y · b + c ≤ 0, how these change over the plane, and its outline. */
interface Section extends Outline {
  turn: 1 | -1
  halves: readonly Half[]
  /** Four numbers a half: a, b, c, and how c grows with each mm over the plane. */
  bounds: Float64Array
}

/** Cut a body by a plane, within the frame there; undefined where they do not meet. */
export function sectionOf({halves}: Convex, turn: 1 | -1, plane: Plane): Section | undefined {
  const {normal, u, v, middle, frame} = plane
  const [left, low, right, high] = frame
  const bounds = new Float64Array(halves.length * 4)
  let outline: Outline = {xs: [left, right, right, left], ys: [low, low, high, high], froms: [-1, -1, -1, -1]}
  for (let i = 0; i < halves.length; i++) {
    const {normal: n, atMm} = halves[i]!
    const a = dot(n, u)
    const b = dot(n, v)
    const c = dot(n, middle) - atMm
    const over = dot(n, normal)
    bounds[i * 4] = a
    bounds[i * 4 + 1] = b
    bounds[i * 4 + 2] = c
    bounds[i * 4 + 3] = over
    if (Math.abs(over) > 1 - 1e-10) {
      if (c > 2 * levelMm) return undefined
      continue
    }
    const {xs, ys} = outline
    const offs: number[] = []
    let isCut = false
    for (let k = 0; k < xs.length; k++) {
      const off = a * xs[k]! + b * ys[k]! + c
      offs.push(off)
      if (off > 0) isCut = true
    }
    if (!isCut) continue
    outline = clipped(outline, offs, i)
    if (outline.xs.length < 3) return undefined
  }
  return {turn, halves, bounds, ...outline}
}

/** Keep of an outline what lies in a half of space: each corner lies so far outside it. */
function clipped({xs, ys, froms}: Outline, offs: readonly number[], half: number): Outline {
  const kept: Outline = {xs: [], ys: [], froms: []}
  for (let k = 0; k < offs.length; k++) {
    const next = k + 1 < offs.length ? k + 1 : 0
    const off = offs[k]!
    const offNext = offs[next]!
    if (off <= 0) {
      kept.xs.push(xs[k]!)
      kept.ys.push(ys[k]!)
      kept.froms.push(froms[k]!)
    }
    if (off <= 0 === offNext <= 0) continue
    const t = off / (off - offNext)
    kept.xs.push(xs[k]! + t * (xs[next]! - xs[k]!))
    kept.ys.push(ys[k]! + t * (ys[next]! - ys[k]!))
    kept.froms.push(off <= 0 ? half : froms[k]!)
  }
  return kept
}

/** The lines that a body's faces leave on a plane. */
export function linesOf({turn, halves, xs, ys, froms}: Section): Line<From>[] {
  const lines: Line<From>[] = []
  for (let i = 0; i < xs.length; i++) {
    if (froms[i]! < 0) continue
    const next = (i + 1) % xs.length
    lines.push({a: [xs[i]!, ys[i]!], b: [xs[next]!, ys[next]!], from: {half: halves[froms[i]!]!, turn}})
  }
  return lines
}

/** Say where a plane has a piece's matter right under it and none over it; what is cut out comes last. */
export function isFaceOf(sections: readonly Section[]): (x: number, y: number) => boolean {
  return (x, y) => {
    let under = false
    let over = false
    for (let i = 0; i < sections.length; i++) {
      const {turn, bounds} = sections[i]!
      if (turn < 0 && !under) return false
      let isUnder = true
      let isOver = true
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
