/** Places (mm) nearer than this are one place: what lies between them is no stretch of wood. */
export const samePlaceMm = 1e-6

/** Sort places (mm) and keep one of those that are the same to within a millionth of a millimetre. */
export function distinctPlaces(placesMm: readonly number[]): number[] {
  const distinct: number[] = []
  for (const at of [...placesMm].sort((a, b) => a - b))
    if (!(at - (distinct.at(-1) ?? Number.NEGATIVE_INFINITY) < samePlaceMm)) distinct.push(at)
  return distinct
}

/** Curvature (1/mm) at a station (mm). */
export type Curvature = (stationMm: number) => number

/** A bent neck: how far its face lies under the straight line between the two ends of the stretch. */
export interface Bent {
  /** The deepest hollow, in mm; a hump is negative. */
  reliefMm: number
  hollowAt: (stationMm: number) => number
}

/** Where the far end of the string's line stands, and the two places (mm) that carry what it stands on. */
interface StandsOn {
  atMm: number
  carriedMm: readonly [number, number]
}

/** Steps between two breaks: what the curvature does between them is smooth, so few will do. */
const steps = 6
const halves = 2 * steps

/**
 * Integrate curvature twice from the first break to the last and measure the hollow (mm) under the chord between them;
 * or, where the far end stands on something that two places of the neck carry, up to there and under the chord to it.
 * The breaks rise, and no two are the same place (distinctPlaces).
 * Each stretch between breaks is integrated by Simpson's rule, so curvature may jump at a break. A constant M/EI over
 * L gives M·L²/(8EI): M 1,000 N·mm, L 400 mm, EI 2·10⁸ gives 0.1 mm.
 * Source: Gere & Goodno, Mechanics of Materials, App. G, equal end couples.
 */
export function bend(curvature: Curvature, breaks: readonly number[], standsOn?: StandsOn): Bent {
  const xs = [breaks[0] ?? 0]
  const ys = [0]
  let slope = 0
  let y = 0
  for (let i = 1; i < breaks.length; i++) {
    const from = breaks[i - 1]!
    const h = (breaks[i]! - from) / steps
    const curved = curvedBetween(curvature, from, h)
    for (let k = 0; k < steps; k++) {
      const [k0, km, k1] = [curved[2 * k]!, curved[2 * k + 1]!, curved[2 * k + 2]!]
      y += slope * h + (h * h * (k0 + 2 * km)) / 6
      slope += (h * (k0 + 4 * km + k1)) / 6
      ys.push(y)
      xs.push(from + (k + 1) * h)
    }
  }
  const start = xs[0]!
  const end = standsOn?.atMm ?? xs.at(-1)!
  const endY = standsOn ? carried(xs, ys, standsOn) : y
  const rise = end > start ? endY / (end - start) : 0
  const under = xs.filter((x) => x <= end)
  const hollows = under.map((x, i) => (x - start) * rise - ys[i]!)
  return {
    reliefMm: deepest(under, hollows),
    hollowAt: (stationMm) => between(under, hollows, Math.min(end, Math.max(start, stationMm))),
  }
}

/** How high a place lies on the straight line through two others of the neck. */
function carried(xs: readonly number[], ys: readonly number[], {atMm, carriedMm: [a, b]}: StandsOn): number {
  const [ya, yb] = [between(xs, ys, a), between(xs, ys, b)]
  return ya + ((yb - ya) * (atMm - a)) / (b - a)
}

/**
 * The curvature at every half step of a stretch, at its ends just inside, where it may jump. Where ends, quarters and
 * middle lie on a straight line, as they do where the section stays the same, so does what is between them.
 */
function curvedBetween(curvature: Curvature, from: number, h: number): number[] {
  const curved: number[] = new Array(halves + 1)
  for (let half = 0; half <= halves; half += halves / 4) curved[half] = curvature(inside(from, h, half))
  const [first, middle, last] = [curved[0]!, curved[halves / 2]!, curved[halves]!]
  const isStraight =
    isMean(middle, first, last) &&
    isMean(curved[halves / 4]!, first, middle) &&
    isMean(curved[(3 * halves) / 4]!, middle, last)
  for (let half = 0; half <= halves; half++)
    curved[half] ??= isStraight ? first + ((last - first) * half) / halves : curvature(inside(from, h, half))
  return curved
}

/** Where a half step is, at the ends of its stretch just inside. */
const inside = (from: number, h: number, half: number) =>
  from + h * Math.min(steps - 1e-9, Math.max(1e-9, half / 2))

const isMean = (value: number, a: number, b: number) =>
  Math.abs(value - (a + b) / 2) <= 1e-9 * Math.abs(value)

/** The largest hollow, sharpened by a parabola through it and its neighbours, or the largest hump; not a number where the curvature is none. */
function deepest(xs: readonly number[], hollows: readonly number[]): number {
  const sizes = hollows.map(Math.abs)
  const top = sizes.indexOf(Math.max(...sizes))
  const mid = hollows[top]
  if (mid === undefined) return Number.NaN
  const [before, after] = [hollows[top - 1], hollows[top + 1]]
  if (before === undefined || after === undefined) return mid
  const [h0, h1] = [xs[top]! - xs[top - 1]!, xs[top + 1]! - xs[top]!]
  const [s0, s1] = [(mid - before) / h0, (after - mid) / h1]
  const second = (s1 - s0) / (h0 + h1)
  const first = (s0 * h1 + s1 * h0) / (h0 + h1)
  return second === 0 ? mid : mid - first ** 2 / (4 * second)
}

/** Interpolate by the parabola through the two places around x and the one after them. */
function between(xs: readonly number[], values: readonly number[], x: number): number {
  let next = 0
  while (next < xs.length && xs[next]! < x) next++
  if (next === 0) return values[0] ?? 0
  const mid = Math.min(next, xs.length - 1)
  const [a, b] = [mid - 1, mid]
  const c = mid + 1 < xs.length ? mid + 1 : mid - 2
  const [xa, xb] = [xs[a]!, xs[b]!]
  const slope = (values[b]! - values[a]!) / (xb - xa)
  const straight = values[a]! + slope * (x - xa)
  if (c < 0) return straight
  const xc = xs[c]!
  const bow = ((values[c]! - values[b]!) / (xc - xb) - slope) / (xc - xa)
  return straight + bow * (x - xa) * (x - xb)
}
