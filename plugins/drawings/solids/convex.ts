import {cross, dot, minus, plus, squareTo, times, unit, type Vec} from './space.ts'

/** Half of space: all points p with normal · p ≤ atMm. Faces of one `curve` stand for one round surface. */
export interface Half {
  normal: Vec
  atMm: number
  curve?: object | undefined
  /** The face is made, or meant, at this moment of the work. */
  isNow?: boolean | undefined
}

/** A body without hollows: what lies in all its halves, and the outline of the face on each. */
export interface Convex {
  halves: readonly Half[]
  outlines: readonly (readonly Vec[])[]
}

/** Larger than any instrument (mm). */
const farMm = 20_000
const slackMm = 1e-7

/** Take what lies in all of some halves of space; a half that bounds nothing is left out. */
export function convex(halves: readonly Half[]): Convex {
  const bounded = halves.flatMap((half, at) => {
    const [u, v] = squareTo(half.normal)
    const middle = times(half.normal, half.atMm)
    const corner = (a: number, b: number) => plus(plus(middle, u, a * farMm), v, b * farMm)
    let outline: Vec[] = [corner(-1, -1), corner(1, -1), corner(1, 1), corner(-1, 1)]
    for (const [i, other] of halves.entries()) if (i !== at) outline = clipped(outline, other)
    return outline.length >= 3 ? [{half, outline}] : []
  })
  return {halves: bounded.map(({half}) => half), outlines: bounded.map(({outline}) => outline)}
}

/** Keep the part of a flat outline that lies in a half of space. */
function clipped(outline: readonly Vec[], {normal, atMm}: Half): Vec[] {
  return outline.flatMap((from, i) => {
    const to = outline[(i + 1) % outline.length]!
    const [a, b] = [dot(normal, from) - atMm, dot(normal, to) - atMm]
    const crosses = Math.min(a, b) < -slackMm && Math.max(a, b) > slackMm
    return [...(a <= slackMm ? [from] : []), ...(crosses ? [plus(from, minus(to, from), a / (a - b))] : [])]
  })
}

/** Bound by a plane through a point, all that lies against its normal. */
export const half = (normal: Vec, through: Vec): Half => {
  const n = unit(normal)
  return {normal: n, atMm: dot(n, through)}
}

/** The box between two opposite corners. */
export function box([x1, y1, z1]: Vec, [x2, y2, z2]: Vec): Convex {
  const between = (axis: Vec, a: number, b: number): Half[] => [
    {normal: axis, atMm: Math.max(a, b)},
    {normal: times(axis, -1), atMm: -Math.min(a, b)},
  ]
  return convex([...between([1, 0, 0], x1, x2), ...between([0, 1, 0], y1, y2), ...between([0, 0, 1], z1, z2)])
}

/** Push a flat outline without hollows along a direction; its corners in either sense. */
export function prism(outline: readonly Vec[], along: Vec): Convex {
  const axis = unit(along)
  const middle = times(
    outline.reduce((sum, corner) => plus(sum, corner)),
    1 / outline.length,
  )
  const sides = outline.map((from, i) => {
    const out = unit(cross(minus(outline[(i + 1) % outline.length]!, from), axis))
    return half(dot(out, minus(from, middle)) < 0 ? times(out, -1) : out, from)
  })
  return convex([...sides, half(axis, plus(outline[0]!, along)), half(times(axis, -1), outline[0]!)])
}

/** How many flat faces stand for a whole turn: a small hole is as round with fewer. */
const facetsOf = (diameterMm: number) => (diameterMm < 12 ? 12 : 24)

/**
 * A round rod from the middle of its one end to the other's: flat faces with the area of the circle, so that what is
 * computed from it is exact.
 */
export function cylinder(from: Vec, to: Vec, diameterMm: number): Convex {
  const along = minus(to, from)
  const axis = unit(along)
  const [u, v] = squareTo(axis)
  const curve = {}
  const facets = facetsOf(diameterMm)
  // The apothem of the regular polygon that has the circle's area.
  const reachMm = (diameterMm / 2) * Math.sqrt(Math.PI / facets / Math.tan(Math.PI / facets))
  const sides = Array.from({length: facets}, (_, i): Half => {
    const turn = (2 * Math.PI * i) / facets
    const normal = plus(times(u, Math.cos(turn)), v, Math.sin(turn))
    return {...half(normal, plus(from, normal, reachMm)), curve}
  })
  return convex([...sides, half(axis, to), half(times(axis, -1), from)])
}

/** Shift a body. */
export const shifted = ({halves, outlines}: Convex, by: Vec): Convex => ({
  halves: halves.map((one) => ({...one, atMm: one.atMm + dot(one.normal, by)})),
  outlines: outlines.map((outline) => outline.map((point) => plus(point, by))),
})

/** Say of a body's faces that they are made at this moment of the work; of all, or of those that one asks for. */
export const madeNow = (body: Convex, which: (normal: Vec) => boolean = () => true): Convex => ({
  ...body,
  halves: body.halves.map((one) => (which(one.normal) ? {...one, isNow: true} : one)),
})

/** Does a point lie in a body? */
export const holds = ({halves}: Convex, point: Vec): boolean =>
  halves.every(({normal, atMm}) => dot(normal, point) <= atMm)
