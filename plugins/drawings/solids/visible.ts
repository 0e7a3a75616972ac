import type {Projection} from './projection.ts'
import {boundary, encloses, type Flat, type Line} from './region.ts'
import type {Edge, Face} from './solid.ts'
import {dot, type Vec} from './space.ts'

/** A face turned towards who looks, on the page. */
export interface SeenFace<Of> {
  of: Of
  face: Face
  lines: Line<Edge>[]
  /** Left, top, right and bottom of it (mm). */
  frame: readonly [number, number, number, number]
  /** How near its plane is at a place of the page. */
  nearAt: (point: Flat) => number
}

/** Nearer than this counts as level (mm). */
const levelMm = 1e-6
const slack = 1e-9

/** Put the faces that are turned towards who looks on the page; `of` says what each belongs to. */
export function turnedHere<Of>(
  pieces: readonly {of: Of; faces: readonly Face[]}[],
  view: Projection,
): SeenFace<Of>[] {
  return pieces.flatMap(({of, faces}) =>
    faces.flatMap((face): SeenFace<Of>[] => {
      const lean = dot(face.normal, view.towards)
      if (lean < 1e-6) return []
      const lines = face.edges.map((edge) => ({a: view.page(edge.a), b: view.page(edge.b), from: edge}))
      const [xs, ys] = [lines.map(({a}) => a[0]), lines.map(({a}) => a[1])]
      return [
        {
          of,
          face,
          lines,
          frame: [Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)],
          nearAt: nearnessOn(face, view),
        },
      ]
    }),
  )
}

/** Say how near a plane is at each place of the page, from three of its points. */
function nearnessOn({normal, atMm}: Face, {page, nearness, towards}: Projection): (point: Flat) => number {
  const lean = dot(normal, towards)
  // How near the plane is over a place is linear in the place; the page's two directions are found by their images.
  const over = (point: Vec): number => nearness(point) + (atMm - dot(normal, point)) / lean
  const [o, x, y] = [[0, 0, 0] as const, [1, 0, 0] as const, [0, 1, 0] as const]
  const [po, px, py] = [page(o), page(x), page(y)]
  const [no, nx, ny] = [over(o), over(x), over(y)]
  const [ax, ay, bx, by] = [px[0] - po[0], px[1] - po[1], py[0] - po[0], py[1] - po[1]]
  const turn = ax * by - ay * bx
  const alongX = ((nx - no) * by - (ny - no) * ay) / turn
  const alongY = ((ny - no) * ax - (nx - no) * bx) / turn
  return ([at, down]) => no + (at - po[0]) * alongX + (down - po[1]) * alongY
}

const meet = ([a, b, c, d]: SeenFace<unknown>['frame'], [e, f, g, h]: SeenFace<unknown>['frame']) =>
  a < g - slack && e < c - slack && b < h - slack && f < d - slack

/** Does a face come before another at a place of the page? Of two that lie level the first does. */
const comesBefore = <Of>(other: Ranked<Of>, one: Ranked<Of>, point: Flat) => {
  const byMm = other.seen.nearAt(point) - one.seen.nearAt(point)
  return byMm > levelMm || (byMm > -levelMm && other.rank < one.rank)
}

interface Ranked<Of> {
  seen: SeenFace<Of>
  rank: number
}

/** What is seen of a face: the lines around that, in no order. */
export interface SeenRegion<Of> {
  seen: SeenFace<Of>
  region: Line<Edge>[]
}

/** Find what is seen of each face. */
export function seenRegions<Of>(faces: readonly SeenFace<Of>[]): SeenRegion<Of>[] {
  const ranked = faces.map((seen, rank) => ({seen, rank}))
  return ranked.flatMap((one) => {
    const {seen} = one
    const hiding = ranked.filter(
      (other) =>
        other !== one &&
        meet(seen.frame, other.seen.frame) &&
        other.seen.lines.some(({a}) => comesBefore(other, one, a)),
    )
    const isSeen = (point: Flat) =>
      encloses(seen.lines, point) &&
      !hiding.some((other) => comesBefore(other, one, point) && encloses(other.seen.lines, point))
    const [left, top, right, bottom] = seen.frame
    const near = ({a, b}: Line<Edge>) =>
      Math.min(a[0], b[0]) <= right &&
      Math.max(a[0], b[0]) >= left &&
      Math.min(a[1], b[1]) <= bottom &&
      Math.max(a[1], b[1]) >= top
    const around = hiding.flatMap((other) => other.seen.lines.filter(near))
    const through = hiding.flatMap((other) => crossing(seen, other.seen))
    const region = hiding.length === 0 ? seen.lines : boundary([...seen.lines, ...around, ...through], isSeen)
    return region.length > 0 ? [{seen, region}] : []
  })
}

/** The line on the page where two faces' planes cross, where they do within both: pieces may stand in each other. */
function crossing<Of>(one: SeenFace<Of>, other: SeenFace<Of>): Line<Edge>[] {
  const off = (point: Flat) => other.nearAt(point) - one.nearAt(point)
  const [left, top] = [Math.max(one.frame[0], other.frame[0]), Math.max(one.frame[1], other.frame[1])]
  const [right, bottom] = [Math.min(one.frame[2], other.frame[2]), Math.min(one.frame[3], other.frame[3])]
  const corners: Flat[] = [
    [left, top],
    [right, top],
    [right, bottom],
    [left, bottom],
  ]
  const ends = corners.flatMap((from, i): Flat[] => {
    const to = corners[(i + 1) % 4]!
    const [a, b] = [off(from), off(to)]
    return a < 0 !== b < 0 ? [along(from, to, a / (a - b))] : []
  })
  return ends.length === 2 ? [{a: ends[0]!, b: ends[1]!, from: one.lines[0]!.from}] : []
}

/** A stretch of an edge that nothing hides. */
export interface SeenLine<Of> {
  of: Of
  a: Flat
  b: Flat
  isNow: boolean
}

/**
 * Find the edges that are seen, without what other faces hide of them. Edges within a round surface are drawn where it
 * turns away only; each edge once.
 */
export function seenLines<Of>(faces: readonly SeenFace<Of>[], view: Projection): SeenLine<Of>[] {
  const known = new Set<string>()
  return faces.flatMap((seen) => {
    const hiding = faces.filter((other) => other !== seen && meet(grown(seen.frame), other.frame))
    return seen.lines.flatMap(({a, b, from}) => {
      if (from.isSmooth && dot(from.beyond, view.towards) > 1e-6) return []
      const key = [spot(from.a), spot(from.b)].sort().join(' ')
      if (known.has(key)) return []
      known.add(key)
      const line = {a, b, near: [view.nearness(from.a), view.nearness(from.b)] as const}
      return seenParts(line, hiding).map(([s, t]) => ({
        of: seen.of,
        a: along(a, b, s),
        b: along(a, b, t),
        isNow: from.isNow,
      }))
    })
  })
}

/** An edge of a level face has no height of its own. */
const grown = ([a, b, c, d]: SeenFace<unknown>['frame']) => [a - 1e-6, b - 1e-6, c + 1e-6, d + 1e-6] as const

const spot = (point: Vec) => point.map((mm) => Math.round(mm * 1e3)).join()
const along = (a: Flat, b: Flat, t: number): Flat => [a[0] + t * (b[0] - a[0]), a[1] + t * (b[1] - a[1])]

type Stretch = readonly [from: number, to: number]

/** Say which parts of a line, from 0 to 1, are hidden by no face. */
export function seenParts<Of>(
  line: {a: Flat; b: Flat; near: readonly [number, number]},
  faces: readonly SeenFace<Of>[],
): Stretch[] {
  let seen: Stretch[] = [[0, 1]]
  for (const face of faces) {
    for (const hidden of hiddenParts(line, face)) seen = seen.flatMap((one) => without(one, hidden))
    if (seen.length === 0) return seen
  }
  const length = Math.hypot(line.b[0] - line.a[0], line.b[1] - line.a[1])
  return seen.filter(([from, to]) => (to - from) * length > 1e-3)
}

const without = ([a, b]: Stretch, [c, d]: Stretch): Stretch[] => {
  if (d <= a || c >= b) return [[a, b]]
  return [...(c > a ? [[a, c] as const] : []), ...(d < b ? [[d, b] as const] : [])]
}

function hiddenParts<Of>(
  {a, b, near}: {a: Flat; b: Flat; near: readonly [number, number]},
  {lines, nearAt, frame}: SeenFace<Of>,
): Stretch[] {
  if (
    Math.max(a[0], b[0]) < frame[0] ||
    Math.min(a[0], b[0]) > frame[2] ||
    Math.max(a[1], b[1]) < frame[1] ||
    Math.min(a[1], b[1]) > frame[3]
  )
    return []
  // The face comes before the line where this is above 0; it changes evenly along the line.
  const [start, end] = [nearAt(a) - near[0] - levelMm, nearAt(b) - near[1] - levelMm]
  if (start <= 0 && end <= 0) return []
  const turn = start / (start - end)
  const [from, to] = start > 0 ? (end > 0 ? [0, 1] : [0, turn]) : [turn, 1]
  const [dx, dy] = [b[0] - a[0], b[1] - a[1]]
  const places = lines.flatMap(({a: c, b: d}) => {
    const [sx, sy] = [d[0] - c[0], d[1] - c[1]]
    const cross = dx * sy - dy * sx
    if (Math.abs(cross) < 1e-12) return []
    const [qx, qy] = [c[0] - a[0], c[1] - a[1]]
    const u = (qx * dy - qy * dx) / cross
    return u >= -1e-9 && u <= 1 + 1e-9 ? [(qx * sy - qy * sx) / cross] : []
  })
  const cuts = [from, ...places.filter((t) => t > from && t < to), to].sort((s, t) => s - t)
  return cuts.slice(1).flatMap((t, i): Stretch[] => {
    const s = cuts[i]!
    return t - s > 1e-12 && encloses(lines, along(a, b, (s + t) / 2)) ? [[s, t]] : []
  })
}
