import {encloses, type Flat, isKnown} from './region.ts'
import {dot, type Projection} from './space.ts'
import {along, levelMm, type SeenFace} from './visible.ts'

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
  const known = new Map<number, number[]>()
  return faces.flatMap((seen) => {
    return seen.lines.flatMap(({a, b, from}) => {
      if (from.isSmooth && dot(from.beyond, view.towards) > 1e-6) return []
      const line = {a, b, near: [view.nearness(from.a), view.nearness(from.b)] as const}
      if (isKnown(known, spot(a, line.near[0]), spot(b, line.near[1]))) return []
      return seenParts(line, seen.before).map(([s, t]) => ({
        of: seen.of,
        a: along(a, b, s),
        b: along(a, b, t),
        isNow: from.isNow,
      }))
    })
  })
}

/** The cube of 0.01 mm that a point of the page lies in, as one number: up to 5 m across, 650 mm up and near. */
const spot = (at: Flat, near: number) =>
  (Math.round(at[0] * 100) * 2 ** 17 + Math.round(at[1] * 100)) * 2 ** 17 + Math.round(near * 100)

type Stretch = readonly [from: number, to: number]

interface Drawn {
  a: Flat
  b: Flat
  /** How near its ends are (mm). */
  near: readonly [number, number]
}

/** Say which parts of a line, from 0 to 1, are hidden by no face. */
export function seenParts<Of>(line: Drawn, faces: readonly SeenFace<Of>[]): Stretch[] {
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

const nothing: readonly Stretch[] = []

function hiddenParts<Of>({a, b, near}: Drawn, {lines, near: plane, frame}: SeenFace<Of>): readonly Stretch[] {
  if (
    Math.max(a[0], b[0]) < frame[0] ||
    Math.min(a[0], b[0]) > frame[2] ||
    Math.max(a[1], b[1]) < frame[1] ||
    Math.min(a[1], b[1]) > frame[3]
  )
    return nothing
  // The face comes before the line where this is above 0; it changes evenly along the line.
  const start = plane[0] + plane[1] * a[0] + plane[2] * a[1] - near[0] - levelMm
  const end = plane[0] + plane[1] * b[0] + plane[2] * b[1] - near[1] - levelMm
  if (start <= 0 && end <= 0) return nothing
  const from = start > 0 ? 0 : start / (start - end)
  const to = end > 0 ? 1 : start / (start - end)
  const dx = b[0] - a[0]
  const dy = b[1] - a[1]
  const cuts = [from, to]
  for (let i = 0; i < lines.length; i++) {
    const {a: c, b: d} = lines[i]!
    const sx = d[0] - c[0]
    const sy = d[1] - c[1]
    const cross = dx * sy - dy * sx
    if (Math.abs(cross) < 1e-12) continue
    const qx = c[0] - a[0]
    const qy = c[1] - a[1]
    const u = (qx * dy - qy * dx) / cross
    if (u < -1e-9 || u > 1 + 1e-9) continue
    const t = (qx * sy - qy * sx) / cross
    if (t > from && t < to) cuts.push(t)
  }
  if (cuts.length > 2) cuts.sort(byNumber)
  const hidden: Stretch[] = []
  for (let i = 1; i < cuts.length; i++) {
    const s = cuts[i - 1]!
    const t = cuts[i]!
    const middle = (s + t) / 2
    if (t - s > 1e-12 && encloses(lines, a[0] + middle * dx, a[1] + middle * dy)) hidden.push([s, t])
  }
  return hidden
}

const byNumber = (a: number, b: number) => a - b
