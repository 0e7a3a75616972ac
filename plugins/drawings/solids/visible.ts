import type {Edge, Face} from './faces.ts'
import {boundary, encloses, type Flat, type Line} from './region.ts'
import {dot, type Projection, type Vec} from './space.ts'

/** A face turned towards who looks, on the page. */
export interface SeenFace<Of> {
  of: Of
  face: Face
  lines: Line<Edge>[]
  /** Left, top, right and bottom of it (mm). */
  frame: Frame
  /** How near its plane is at a place of the page, in mm: at 0, and by each mm to the right and down. */
  near: readonly [at: number, right: number, down: number]
  /** Its lines follow each other round a shape without hollows. */
  isConvex: boolean
  /** Of faces that lie level the first hides the others. */
  rank: number
  /** Faces that may hide some of it. */
  before: SeenFace<Of>[]
}

type Frame = readonly [left: number, top: number, right: number, bottom: number]

/** Nearer than this counts as level (mm). */
export const levelMm = 1e-6

const slack = 1e-9

/** Is a face of this direction turned towards who looks? */
export const isTowards =
  ({towards}: Projection) =>
  (normal: Vec): boolean =>
    dot(normal, towards) >= 1e-6

/** Put the faces that are turned towards who looks on the page; `of` says what each belongs to. */
export function turnedHere<Of>(
  pieces: readonly {of: Of; faces: readonly Face[]}[],
  view: Projection,
): SeenFace<Of>[] {
  const isSeen = isTowards(view)
  let rank = 0
  const seen = pieces.flatMap(({of, faces}) =>
    faces
      .filter(({normal}) => isSeen(normal))
      .map((face): SeenFace<Of> => {
        const lines = face.edges.map((edge) => ({a: view.page(edge.a), b: view.page(edge.b), from: edge}))
        const near = nearnessOn(face, view)
        rank += 1
        return {of, face, lines, frame: frameOf(lines), near, isConvex: isConvex(lines), rank, before: []}
      }),
  )
  for (const one of seen) one.before = seen.filter((other) => other !== one && mayHide(other, one))
  return seen
}

function frameOf(lines: readonly Line<Edge>[]): Frame {
  let left = Infinity
  let top = Infinity
  let right = -Infinity
  let bottom = -Infinity
  for (const {a} of lines) {
    if (a[0] < left) left = a[0]
    if (a[0] > right) right = a[0]
    if (a[1] < top) top = a[1]
    if (a[1] > bottom) bottom = a[1]
  }
  return [left, top, right, bottom]
}

/** Say how near a plane is at each place of the page, from three of its points. */
function nearnessOn({normal, atMm}: Face, {page, nearness, towards}: Projection): SeenFace<unknown>['near'] {
  const lean = dot(normal, towards)
  // How near the plane is over a place is linear in the place; the page's two directions are found by their images.
  const over = (point: Vec): number => nearness(point) + (atMm - dot(normal, point)) / lean
  const [o, x, y] = [[0, 0, 0] as const, [1, 0, 0] as const, [0, 1, 0] as const]
  const [po, px, py] = [page(o), page(x), page(y)]
  const [no, nx, ny] = [over(o), over(x), over(y)]
  const [ax, ay, bx, by] = [px[0] - po[0], px[1] - po[1], py[0] - po[0], py[1] - po[1]]
  const turn = ax * by - ay * bx
  const right = ((nx - no) * by - (ny - no) * ay) / turn
  const down = ((ny - no) * ax - (nx - no) * bx) / turn
  return [no - po[0] * right - po[1] * down, right, down]
}

/** Do lines follow each other, turning one way only? */
function isConvex(lines: readonly Line<Edge>[]): boolean {
  let way = 0
  for (let i = 0; i < lines.length; i++) {
    const {a, b} = lines[i]!
    const {a: c, b: d} = lines[(i + 1) % lines.length]!
    if (Math.abs(b[0] - c[0]) > slack || Math.abs(b[1] - c[1]) > slack) return false
    const turn = (b[0] - a[0]) * (d[1] - c[1]) - (b[1] - a[1]) * (d[0] - c[0])
    if (turn * way < 0) return false
    if (Math.abs(turn) > slack) way = turn
  }
  return true
}

/** How much nearer one plane is than another at a place of the page (mm). */
const nearer = ({near: a}: SeenFace<unknown>, {near: b}: SeenFace<unknown>, x: number, y: number): number =>
  a[0] - b[0] + (a[1] - b[1]) * x + (a[2] - b[2]) * y

/** May a face hide some of another? Where it lies before it somewhere, or all of it level: then the first does. */
function mayHide(other: SeenFace<unknown>, one: SeenFace<unknown>): boolean {
  const [a, b] = [one.frame, other.frame]
  const left = Math.max(a[0], b[0])
  const right = Math.min(a[2], b[2])
  if (left >= right - slack) return false
  const top = Math.max(a[1], b[1])
  const bottom = Math.min(a[3], b[3])
  if (top >= bottom - slack) return false
  // Where both frames are, the other is nearest at a corner.
  const nearest = Math.max(
    nearer(other, one, left, top),
    nearer(other, one, right, top),
    nearer(other, one, left, bottom),
    nearer(other, one, right, bottom),
  )
  if (nearest < -levelMm) return false
  let isBefore = false
  let isLevel = other.rank < one.rank
  for (let i = 0; i < other.lines.length && !isBefore; i++) {
    const at = other.lines[i]!.a
    const byMm = nearer(other, one, at[0], at[1])
    if (byMm > levelMm) isBefore = true
    if (byMm < -levelMm) isLevel = false
  }
  return (isBefore || isLevel) && !parts(one, other) && !parts(other, one)
}

/** How far outside a side of a face a point of the page lies, times the side's length; matter is at the left. */
const outside = ({a, b}: Line<Edge>, at: Flat): number =>
  (b[0] - a[0]) * (at[1] - a[1]) - (b[1] - a[1]) * (at[0] - a[0])

/** Does a side of a face without hollows part it from another? */
const parts = ({lines, isConvex}: SeenFace<unknown>, other: SeenFace<unknown>): boolean =>
  isConvex && lines.some((side) => other.lines.every(({a}) => outside(side, a) > -levelMm))

/** Does a face without hollows hide all of another? */
function covers(other: SeenFace<unknown>, seen: SeenFace<unknown>): boolean {
  if (!other.isConvex) return false
  let isBefore = other.rank < seen.rank
  for (const {a} of seen.lines) {
    const byMm = nearer(other, seen, a[0], a[1])
    if (byMm < -levelMm || other.lines.some((side) => outside(side, a) > levelMm)) return false
    if (byMm > levelMm) isBefore = true
  }
  return isBefore
}

/** What is seen of a face: the lines around that, in no order. */
export interface SeenRegion<Of> {
  seen: SeenFace<Of>
  region: Line<Edge>[]
}

/** Find what is seen of each face. */
export function seenRegions<Of>(faces: readonly SeenFace<Of>[]): SeenRegion<Of>[] {
  return faces.flatMap((seen) => {
    if (seen.before.length === 0) return [{seen, region: seen.lines}]
    if (seen.before.some((other) => covers(other, seen))) return []
    const region = boundary(linesAround(seen), isSeenOf(seen))
    return region.length > 0 ? [{seen, region}] : []
  })
}

/** The lines where what is seen of a face may change: its own, of those before it, and where their planes cross. */
function linesAround<Of>(seen: SeenFace<Of>): Line<Edge>[] {
  const [left, top, right, bottom] = seen.frame
  const lines = [...seen.lines]
  for (const other of seen.before) {
    let isBehind = false
    for (const line of other.lines) {
      const {a, b} = line
      const one = nearer(other, seen, a[0], a[1])
      const two = nearer(other, seen, b[0], b[1])
      if (one < -levelMm) isBehind = true
      if (
        (one >= -levelMm || two >= -levelMm) &&
        Math.min(a[0], b[0]) <= right &&
        Math.max(a[0], b[0]) >= left &&
        Math.min(a[1], b[1]) <= bottom &&
        Math.max(a[1], b[1]) >= top
      )
        lines.push(line)
    }
    if (isBehind) lines.push(...crossing(seen, other))
  }
  return lines
}

/** Say where a face is seen, between those that may hide it. */
function isSeenOf<Of>(seen: SeenFace<Of>): (x: number, y: number) => boolean {
  const {before, lines, rank, frame: own} = seen
  return (x, y) => {
    if (x < own[0] || x > own[2] || y < own[1] || y > own[3] || !encloses(lines, x, y)) return false
    for (let i = 0; i < before.length; i++) {
      const other = before[i]!
      const {frame} = other
      if (x < frame[0] || x > frame[2] || y < frame[1] || y > frame[3]) continue
      const byMm = nearer(other, seen, x, y)
      if (byMm <= -levelMm || (byMm <= levelMm && other.rank > rank)) continue
      if (encloses(other.lines, x, y)) return false
    }
    return true
  }
}

/** The line on the page where two faces' planes cross, where they do within both: pieces may stand in each other. */
function crossing<Of>(one: SeenFace<Of>, other: SeenFace<Of>): Line<Edge>[] {
  const left = Math.max(one.frame[0], other.frame[0])
  const top = Math.max(one.frame[1], other.frame[1])
  const right = Math.min(one.frame[2], other.frame[2])
  const bottom = Math.min(one.frame[3], other.frame[3])
  const corners: Flat[] = [
    [left, top],
    [right, top],
    [right, bottom],
    [left, bottom],
  ]
  const ends: Flat[] = []
  for (let i = 0; i < 4; i++) {
    const from = corners[i]!
    const to = corners[(i + 1) % 4]!
    const a = nearer(other, one, from[0], from[1])
    const b = nearer(other, one, to[0], to[1])
    if (a < 0 !== b < 0) ends.push(along(from, to, a / (a - b)))
  }
  return ends.length === 2 ? [{a: ends[0]!, b: ends[1]!, from: one.lines[0]!.from}] : []
}

export const along = (a: Flat, b: Flat, t: number): Flat => [
  a[0] + t * (b[0] - a[0]),
  a[1] + t * (b[1] - a[1]),
]
