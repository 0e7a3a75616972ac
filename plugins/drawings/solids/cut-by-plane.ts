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
export function sectionOf({halves}: Convex, turn: 1 | -1, plane: Plane): Section | undefined {
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
