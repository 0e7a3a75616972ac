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
export function boundary<From>(lines: readonly Line<From>[], isIn: (point: Flat) => boolean): Line<From>[] {
  const known = new Set<string>()
  return split(lines).flatMap(({a, b, from}) => {
    const key = [keyOf(a), keyOf(b)].sort().join(' ')
    if (known.has(key)) return []
    known.add(key)
    const [dx, dy] = [b[0] - a[0], b[1] - a[1]]
    const length = Math.hypot(dx, dy)
    const [mx, my] = [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2]
    const [ox, oy] = [(-dy / length) * beside, (dx / length) * beside]
    const [left, right] = [isIn([mx + ox, my + oy]), isIn([mx - ox, my - oy])]
    if (left === right) return []
    return [left ? {a, b, from} : {a: b, b: a, from}]
  })
}

const keyOf = ([x, y]: Flat) => `${Math.round(x * 1e4)},${Math.round(y * 1e4)}`

/** Part lines where they meet each other. */
function split<From>(lines: readonly Line<From>[]): Line<From>[] {
  const boxes = lines.map(({a, b}) => [
    Math.min(a[0], b[0]) - slack,
    Math.min(a[1], b[1]) - slack,
    Math.max(a[0], b[0]) + slack,
    Math.max(a[1], b[1]) + slack,
  ])
  const cuts: number[][] = lines.map(() => [0, 1])
  for (let i = 0; i < lines.length; i++)
    for (let j = i + 1; j < lines.length; j++) {
      const [p, q] = [boxes[i]!, boxes[j]!]
      if (p[0]! > q[2]! || q[0]! > p[2]! || p[1]! > q[3]! || q[1]! > p[3]!) continue
      const [one, other] = [lines[i]!, lines[j]!]
      cuts[i]!.push(...meetings(one, other))
      cuts[j]!.push(...meetings(other, one))
    }
  return lines.flatMap(({a, b, from}, i) => {
    const length = Math.hypot(b[0] - a[0], b[1] - a[1])
    const at = (t: number): Flat =>
      t === 0 ? a : t === 1 ? b : [a[0] + t * (b[0] - a[0]), a[1] + t * (b[1] - a[1])]
    const places = cuts[i]!.filter((t) => t >= 0 && t <= 1).sort((s, t) => s - t)
    const parts: Line<From>[] = []
    let start = 0
    for (const t of places) {
      if ((t - start) * length < slack * 10) continue
      parts.push({a: at(start), b: at(t), from})
      start = t
    }
    return parts
  })
}

/** Where along a line, from 0 to 1, another one meets it. */
function meetings({a, b}: Line<unknown>, {a: c, b: d}: Line<unknown>): number[] {
  const [rx, ry, sx, sy] = [b[0] - a[0], b[1] - a[1], d[0] - c[0], d[1] - c[1]]
  const [r, s] = [Math.hypot(rx, ry), Math.hypot(sx, sy)]
  if (r < slack || s < slack) return []
  const turn = rx * sy - ry * sx
  const [qx, qy] = [c[0] - a[0], c[1] - a[1]]
  if (Math.abs(turn) > 1e-9 * r * s) {
    const t = (qx * sy - qy * sx) / turn
    const u = (qx * ry - qy * rx) / turn
    const [tSlack, uSlack] = [slack / r, slack / s]
    return t > -tSlack && t < 1 + tSlack && u > -uSlack && u < 1 + uSlack ? [t] : []
  }
  if (Math.abs(qx * ry - qy * rx) > slack * r) return []
  const along = (x: number, y: number) => (x * rx + y * ry) / (r * r)
  return [along(qx, qy), along(qx + sx, qy + sy)]
}

/** Does a point lie within lines that close, by the count of those to its right? */
export function encloses(lines: readonly {a: Flat; b: Flat}[], [x, y]: Flat): boolean {
  let inside = false
  for (const {a, b} of lines)
    if (a[1] > y !== b[1] > y && x < a[0] + ((y - a[1]) / (b[1] - a[1])) * (b[0] - a[0])) inside = !inside
  return inside
}

/** Join lines that close into loops, each corner once. */
export function loops<From>(lines: readonly Line<From>[]): Line<From>[][] {
  const waiting = new Map<string, Line<From>[]>()
  for (const line of lines) {
    const key = keyOf(line.a)
    const there = waiting.get(key)
    if (there) there.push(line)
    else waiting.set(key, [line])
  }
  const found: Line<From>[][] = []
  for (const first of lines) {
    const loop: Line<From>[] = []
    let next = taken(waiting, first.a, first)
    while (next) {
      loop.push(next)
      next = taken(waiting, next.b)
    }
    if (loop.length > 0) found.push(loop)
  }
  return found
}

/** Take a line that starts at a point out of those that wait; only the one asked for, where that is said. */
function taken<From>(
  waiting: Map<string, Line<From>[]>,
  at: Flat,
  only?: Line<From>,
): Line<From> | undefined {
  for (const key of only ? [keyOf(at)] : near(at)) {
    const there = waiting.get(key)
    const index = only ? (there?.indexOf(only) ?? -1) : there?.length ? 0 : -1
    if (index >= 0) return there!.splice(index, 1)[0]
  }
  return undefined
}

/** The key of a point, and those of the cells around it: two that round apart may be one. */
function near([x, y]: Flat): string[] {
  const cells = [0, -1, 1].flatMap((dx) => [0, -1, 1].map((dy) => [dx, dy] as const))
  return cells.map(([dx, dy]) => keyOf([x + dx * 1e-4, y + dy * 1e-4]))
}
