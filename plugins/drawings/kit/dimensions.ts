import {textWidthMm} from './extent.ts'
import {arrow, circle, label, type Path, type Point, path, type Shape} from './shapes.ts'

/** One dimension: from where to where along the axis, its figure, and where its two extension lines start. */
export interface Span {
  from: number
  to: number
  figure: string
  fromEdge: number
  toEdge: number
}

/** Dimension a stretch both of whose extension lines start at one edge. */
export const span = (from: number, to: number, edge: number, figure: string): Span => ({
  from,
  to,
  figure,
  fromEdge: edge,
  toEdge: edge,
})

interface Laid extends Span {
  lane: number
  /** The middle of the figure, along the axis. */
  middle: number
  /** What the dimension takes of its lane. */
  takes: readonly [number, number]
}

/** How far apart lanes lie, in text heights. */
const lanePitch = 1.9

/**
 * Lay dimensions down the page in lanes beside a drawing, after ISO 129-1: extension lines that start clear of the
 * outline and end past the dimension line, filled arrowheads, figures along the line and readable from the right;
 * shorter ones nearer, arrowheads and figure outside where the span is short.
 * `base` is where the first lane starts, `out` the way the lanes go (1 right, −1 left), in mm.
 * No figure touches another, nor an extension line of any of these.
 */
export function lanes(spans: readonly Span[], base: number, out: 1 | -1, textMm: number): Shape[] {
  const laid = assign(spans.map(rising), textMm)
  // A figure lies on the left of its line, so a first lane to the right leaves it room.
  const first = base + (out > 0 ? 1.5 : -0.4) * textMm
  const at = (lane: number) => first + out * lanePitch * textMm * lane
  return [
    ...extensions(laid, at, out, textMm),
    ...laid.flatMap((one) => dimension(one, at(one.lane), textMm)),
  ]
}

/** Lay dimensions across the page in lanes below a drawing (`out` 1), or above it (−1). */
export const lanesAcross = (spans: readonly Span[], base: number, out: 1 | -1, textMm: number): Shape[] =>
  transpose(lanes(spans, base, out, textMm))

const rising = ({from, to, fromEdge, toEdge, figure}: Span): Span =>
  from <= to
    ? {from, to, fromEdge, toEdge, figure}
    : {from: to, to: from, fromEdge: toEdge, toEdge: fromEdge, figure}

function assign(spans: readonly Span[], textMm: number): Laid[] {
  const stations = spans.flatMap(({from, to}) => [from, to])
  const laid: Laid[] = []
  for (const span of [...spans].sort((a, b) => a.to - a.from - (b.to - b.from) || a.from - b.from)) {
    const half = textWidthMm(span.figure, textMm) / 2 + 0.3 * textMm
    const middle = figurePlace(span, half, stations, textMm)
    const outside = isShort(span, textMm) ? 1.5 * textMm : 0
    const takes = [
      Math.min(span.from - outside, middle - half),
      Math.max(span.to + outside, middle + half),
    ] as const
    let lane = laid.reduce((least, other) => (holds(span, other) ? Math.max(least, other.lane) : least), 0)
    while (laid.some((other) => other.lane === lane && overlap(other.takes, takes))) lane++
    laid.push({...span, lane, middle, takes})
  }
  return laid
}

/** Arrowheads of a short span stand outside it and point inwards. */
const isShort = ({from, to}: Span, textMm: number) => to - from < 2.4 * textMm

const holds = (span: Span, other: Span) => other.from >= span.from - 1e-9 && other.to <= span.to + 1e-9

// Neighbours of a chain share their end, so touching there is no overlap.
const overlap = (a: readonly [number, number], b: readonly [number, number]) =>
  a[0] < b[1] - 1e-6 && b[0] < a[1] - 1e-6

/** Draw one extension line for each station and side it starts from, as far out as its outermost dimension. */
function extensions(
  laid: readonly Laid[],
  at: (lane: number) => number,
  out: 1 | -1,
  textMm: number,
): Shape[] {
  const outermost = new Map<number, {edge: number; lane: number}>()
  for (const {from, to, fromEdge, toEdge, lane} of laid)
    for (const [station, edge] of [
      [from, fromEdge],
      [to, toEdge],
    ] as const) {
      const known = outermost.get(station)
      outermost.set(station, {
        edge: known && (known.edge - edge) * out < 0 ? known.edge : edge,
        lane: Math.max(lane, known?.lane ?? 0),
      })
    }
  return [...outermost].map(([station, {edge, lane}]) =>
    path('dimension', [edge + 0.35 * textMm * out, station], [at(lane) + 0.4 * textMm * out, station]),
  )
}

function dimension(span: Laid, x: number, textMm: number): Shape[] {
  const {from, to, middle, figure} = span
  const short = isShort(span, textMm)
  const tail = short ? 1.3 * textMm : 0
  const half = textWidthMm(figure, textMm) / 2
  const head = 0.75 * textMm
  return [
    path('dimension', [x, Math.min(from - tail, middle - half)], [x, Math.max(to + tail, middle + half)]),
    arrow([x, from], short ? 90 : -90, head),
    arrow([x, to], short ? -90 : 90, head),
    label(figure, [x - 0.8 * textMm, middle], textMm, {anchor: 'middle', turned: true}),
  ]
}

/** Find the middle for a figure: within the span if it fits there, else beyond its end; never over a station. */
function figurePlace(
  {from, to}: {from: number; to: number},
  half: number,
  stations: readonly number[],
  textMm: number,
): number {
  const free = (m: number) => !stations.some((s) => s > m - half + 1e-6 && s < m + half - 1e-6)
  const centre = (from + to) / 2
  const near = stations.flatMap((s) => [s - half, s + half])
  const clear = 1.4 * textMm
  const beyond = [to + clear + half, from - clear - half, ...near]
  const nearest = (places: number[]) =>
    places.filter(free).sort((a, b) => Math.abs(a - centre) - Math.abs(b - centre) || b - a)[0]
  return (
    nearest([centre, ...near].filter((m) => m - half >= from - 1e-6 && m + half <= to + 1e-6)) ??
    nearest(beyond.filter((m) => m - half >= to + clear - 1e-6 || m + half <= from - clear + 1e-6)) ??
    centre
  )
}

/**
 * Draw a running dimension down the page (ISO 129-1): one line from a small circle at the origin, with an arrowhead at
 * each station that points away from it. Its figures are set apart. In mm.
 */
export function running(stations: readonly number[], origin: number, x: number, textMm: number): Shape[] {
  const radius = 0.28 * textMm
  const ends = [origin, ...stations]
  const [first, last] = [Math.min(...ends), Math.max(...ends)]
  const beyond = stations.filter((station) => Math.abs(station - origin) > 2 * radius)
  return [
    circle('dimension', [x, origin], radius),
    ...(first < origin - radius ? [path('dimension', [x, first], [x, origin - radius])] : []),
    ...(last > origin + radius ? [path('dimension', [x, origin + radius], [x, last])] : []),
    ...beyond.map((station) => arrow([x, station], station > origin ? 90 : -90, 0.7 * textMm)),
  ]
}

/** Draw an upright centre line at 0 that passes the outline's top and bottom by a little, as ISO 128 has it. In mm. */
export const centreLine = (topMm: number, bottomMm: number, textMm: number): Path =>
  path('centre', [0, topMm - 0.35 * textMm], [0, bottomMm + 0.35 * textMm])

const swap = ([x, y]: Point): Point => [y, x]

/**
 * Exchange x and y of shapes, so that what was laid out down the page lies across it.
 * Turned text comes to stand upright and upright text is turned; it keeps its middle.
 */
export function transpose(shapes: readonly Shape[]): Shape[] {
  return shapes.map((shape) => {
    if (shape.is === 'path') return {...shape, points: shape.points.map(swap)}
    if (shape.is === 'circle') return {...shape, centre: swap(shape.centre)}
    if (shape.is === 'arc')
      return {...shape, centre: swap(shape.centre), fromDeg: 90 - shape.toDeg, toDeg: 90 - shape.fromDeg}
    const {turned, ...text} = shape
    return {...text, at: swap(shape.at), turned: turned ? undefined : true}
  })
}
