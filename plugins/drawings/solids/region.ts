/** A point of a plane. */
export type Flat = readonly [number, number]

/** A straight line on a plane, and what it comes from. */
export interface Line<From> {
  a: Flat
  b: Flat
  from: From
}

/** Shorter than this is nothing; so far beside a line is asked what lies there. */
const slack = 1e-6
const beside = 2e-4

/**
 * Find the boundary of a part of a plane, where `isIn` says what belongs to it and every change lies on some of the
 * lines: the stretches of these that part in from out, with what is in at their left (x to the right, y up).
 */
export function boundary<From>(
  lines: readonly Line<From>[],
  isIn: (x: number, y: number) => boolean,
): Line<From>[] {
  const cuts = meetingsOf(lines)
  const known = new Map<number, number[]>()
  const found: Line<From>[] = []
  const ask = (a: Flat, b: Flat, from: From) => {
    if (isKnown(known, keyOf(a), keyOf(b))) return
    const dx = b[0] - a[0]
    const dy = b[1] - a[1]
    const x = (a[0] + b[0]) / 2
    const y = (a[1] + b[1]) / 2
    const by = beside / Math.sqrt(dx * dx + dy * dy)
    const left = isIn(x - dy * by, y + dx * by)
    if (left !== isIn(x + dy * by, y - dx * by)) found.push(left ? {a, b, from} : {a: b, b: a, from})
  }
  for (let i = 0; i < lines.length; i++) {
    const {a, b, from} = lines[i]!
    const dx = b[0] - a[0]
    const dy = b[1] - a[1]
    const length = Math.sqrt(dx * dx + dy * dy)
    let start = a
    let last = 0
    const places = cuts[i] ?? none
    for (let k = 0; k < places.length; k++) {
      const t = places[k]!
      if (t < 0 || t >= 1 || (t - last) * length < slack * 10) continue
      const at: Flat = [a[0] + t * dx, a[1] + t * dy]
      ask(start, at, from)
      start = at
      last = t
    }
    if ((1 - last) * length >= slack * 10) ask(start, b, from)
  }
  return found
}

const none: readonly number[] = []

/** No mark of a ruler, in inches or millimetres, lies on the edge of a square that is shifted so. */
const aside = 0.137

/** The square of a tenth of a micrometre that a point lies in, as one number (up to 6.7 m either way). */
const keyOf = (at: Flat) => Math.round(at[0] * 1e4 + aside) * 2 ** 27 + Math.round(at[1] * 1e4 + aside)

/** Is a stretch between two points known, in either sense? From now on it is. */
export function isKnown(known: Map<number, number[]>, one: number, other: number): boolean {
  const low = Math.min(one, other)
  const high = Math.max(one, other)
  const ends = known.get(low)
  if (!ends) known.set(low, [high])
  else if (ends.includes(high)) return true
  else ends.push(high)
  return false
}

/** Of each line the places along it, from 0 to 1, where others meet it, in order. */
type Cuts = (number[] | undefined)[]

/** Find where lines meet: from left to right, each with those that reach over it. */
function meetingsOf(lines: readonly Line<unknown>[]): Cuts {
  const count = lines.length
  const left = new Float64Array(count)
  const low = new Float64Array(count)
  const high = new Float64Array(count)
  const order: number[] = []
  for (let i = 0; i < count; i++) {
    const {a, b} = lines[i]!
    left[i] = Math.min(a[0], b[0]) - slack
    low[i] = Math.min(a[1], b[1]) - slack
    high[i] = Math.max(a[1], b[1]) + slack
    order.push(i)
  }
  order.sort((i, j) => left[i]! - left[j]!)
  const cuts: Cuts = new Array(count).fill(undefined)
  for (let s = 0; s < count; s++) {
    const i = order[s]!
    const one = lines[i]!
    const right = Math.max(one.a[0], one.b[0]) + slack
    for (let t = s + 1; t < count; t++) {
      const j = order[t]!
      if (left[j]! > right) break
      if (low[i]! > high[j]! || low[j]! > high[i]!) continue
      meet(cuts, [i, j], one, lines[j]!)
    }
  }
  return cuts
}

/** Add where along each of two lines the other meets it. */
function meet(
  cuts: Cuts,
  [one, other]: readonly [number, number],
  {a, b}: Line<unknown>,
  {a: c, b: d}: Line<unknown>,
): void {
  const rx = b[0] - a[0]
  const ry = b[1] - a[1]
  const sx = d[0] - c[0]
  const sy = d[1] - c[1]
  const r = Math.sqrt(rx * rx + ry * ry)
  const s = Math.sqrt(sx * sx + sy * sy)
  if (r < slack || s < slack) return
  const qx = c[0] - a[0]
  const qy = c[1] - a[1]
  const turn = rx * sy - ry * sx
  const [offOne, offOther] = [qx * ry - qy * rx, qx * sy - qy * sx]
  if (Math.abs(turn) > 1e-9 * r * s) {
    const t = offOther / turn
    const u = offOne / turn
    if (t <= -slack / r || t >= 1 + slack / r || u <= -slack / s || u >= 1 + slack / s) return
    note(cuts, one, t)
    note(cuts, other, u)
    return
  }
  // They run beside each other, or on one line: then the ends of each cut the other.
  if (Math.abs(offOne) <= slack * r) {
    note(cuts, one, (qx * rx + qy * ry) / (r * r))
    note(cuts, one, ((qx + sx) * rx + (qy + sy) * ry) / (r * r))
  }
  if (Math.abs(offOther) <= slack * s) {
    note(cuts, other, (-qx * sx - qy * sy) / (s * s))
    note(cuts, other, ((rx - qx) * sx + (ry - qy) * sy) / (s * s))
  }
}

/** A line has few places: put among them at once, each costs less than to sort them later. */
function note(cuts: Cuts, line: number, t: number): void {
  const places = cuts[line]
  if (!places) {
    cuts[line] = [t]
    return
  }
  let at = places.length
  for (; at > 0 && places[at - 1]! > t; at--) places[at] = places[at - 1]!
  places[at] = t
}

/** Does a point lie within lines that close, by the count of those to its right? */
export function encloses(lines: readonly {a: Flat; b: Flat}[], x: number, y: number): boolean {
  let inside = false
  for (let i = 0; i < lines.length; i++) {
    const {a, b} = lines[i]!
    if (a[1] > y !== b[1] > y && x < a[0] + ((y - a[1]) / (b[1] - a[1])) * (b[0] - a[0])) inside = !inside
  }
  return inside
}

/** Join lines that close into loops, each corner once. */
export function loops<From>(lines: readonly Line<From>[]): Line<From>[][] {
  const waiting = new Map<number, Line<From>[]>()
  for (const line of lines) {
    const key = keyOf(line.a)
    const there = waiting.get(key)
    if (there) there.push(line)
    else waiting.set(key, [line])
  }
  const found: Line<From>[][] = []
  for (const first of lines) {
    const here = waiting.get(keyOf(first.a))
    const index = here?.indexOf(first) ?? -1
    if (index < 0) continue
    here!.splice(index, 1)
    const loop = [first]
    for (let next = taken(waiting, first.b); next; next = taken(waiting, next.b)) loop.push(next)
    found.push(loop)
  }
  return found
}

/** Take a line that starts at a point out of those that wait: two ends that round apart may be one. */
function taken<From>(waiting: Map<number, Line<From>[]>, [x, y]: Flat): Line<From> | undefined {
  for (const [dx, dy] of around) {
    const there = waiting.get(keyOf([x + dx, y + dy]))
    if (there && there.length > 0) return there.shift()
  }
  return undefined
}

const around: readonly Flat[] = [0, 1e-4, -1e-4].flatMap((dx) =>
  [0, 1e-4, -1e-4].map((dy) => [dx, dy] as const),
)
