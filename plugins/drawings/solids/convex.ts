import {cross, dot, minus, plus, squareTo, times, unit, type Vec} from './space.ts'

/** Half of space: all points p with normal · p ≤ atMm. Faces of one `curve` stand for one round surface. */
export interface Half {
  normal: Vec
  atMm: number
  curve?: object | undefined
  /** The face is made, or meant, at this moment of the work. */
  isNow?: boolean | undefined
}

/**
 * A body without hollows: what lies in all its halves, and the outline of the face on each, anticlockwise as seen from
 * outside.
 */
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
function clipped(outline: Vec[], {normal, atMm}: Half): Vec[] {
  const kept: Vec[] = []
  let isWhole = true
  for (let i = 0; i < outline.length; i++) {
    const from = outline[i]!
    const to = outline[(i + 1) % outline.length]!
    const a = dot(normal, from) - atMm
    const b = dot(normal, to) - atMm
    if (a <= slackMm) kept.push(from)
    else isWhole = false
    if (Math.min(a, b) < -slackMm && Math.max(a, b) > slackMm)
      kept.push(plus(from, minus(to, from), a / (a - b)))
  }
  return isWhole ? outline : kept
}

/** Bound by a plane through a point, all that lies against its normal. */
export const half = (normal: Vec, through: Vec): Half => {
  const n = unit(normal)
  return {normal: n, atMm: dot(n, through)}
}

/** The box between two opposite corners. */
export function box([x1, y1, z1]: Vec, [x2, y2, z2]: Vec): Convex {
  const [left, right] = [Math.min(x1, x2), Math.max(x1, x2)]
  const [near, far] = [Math.min(y1, y2), Math.max(y1, y2)]
  const [low, high] = [Math.min(z1, z2), Math.max(z1, z2)]
  const base: Vec[] = [
    [left, near, low],
    [right, near, low],
    [right, far, low],
    [left, far, low],
  ]
  return pushed({base, along: [0, 0, high - low], axis: [0, 0, 1]}, boxSides)
}

const boxSides: readonly Vec[] = [
  [0, -1, 0],
  [1, 0, 0],
  [0, 1, 0],
  [-1, 0, 0],
]

/** Push a flat outline without hollows along a direction; its corners in either sense. */
export function prism(outline: readonly Vec[], along: Vec): Convex {
  const side = (i: number, all: readonly Vec[]) => minus(all[(i + 1) % all.length]!, all[i]!)
  const turn = outline.reduce<Vec>((sum, corner, i) => plus(sum, cross(corner, side(i, outline))), [0, 0, 0])
  const base = dot(turn, along) > 0 ? outline : [...outline].reverse()
  const axis = unit(along)
  return pushed(
    {base, along, axis},
    base.map((_, i) => unit(cross(side(i, base), axis))),
  )
}

interface Pushed {
  /** Corners, anticlockwise as seen from where they are pushed to. */
  base: readonly Vec[]
  along: Vec
  axis: Vec
}

/** Push an outline; `outwards` is the way each of its sides looks, from a corner to the next. */
function pushed({base, along, axis}: Pushed, outwards: readonly Vec[], curve?: object): Convex {
  const end = base.map((corner) => plus(corner, along))
  const next = (i: number) => (i + 1) % base.length
  return {
    halves: [
      ...base.map((from, i): Half => ({normal: outwards[i]!, atMm: dot(outwards[i]!, from), curve})),
      {normal: axis, atMm: dot(axis, end[0]!)},
      {normal: times(axis, -1), atMm: -dot(axis, base[0]!)},
    ],
    outlines: [
      ...base.map((from, i) => [from, base[next(i)]!, end[next(i)]!, end[i]!]),
      end,
      [...base].reverse(),
    ],
  }
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
  const facets = facetsOf(diameterMm)
  const round = (turn: number, mm: number): Vec => plus(times(u, Math.cos(turn) * mm), v, Math.sin(turn) * mm)
  const step = (2 * Math.PI) / facets
  // Its corners lie farther out than the circle: so far that the regular polygon has the circle's area.
  const cornerMm = (diameterMm / 2) * Math.sqrt((2 * Math.PI) / facets / Math.sin(step))
  const turns = Array.from({length: facets}, (_, i) => i * step)
  const base = turns.map((turn) => plus(from, round(turn - step / 2, cornerMm)))
  const outwards = turns.map((turn) => round(turn, 1))
  return pushed({base, along, axis}, outwards, {})
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
