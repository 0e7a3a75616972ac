import type {InkName} from '../kit/inks.ts'
import {type Arc, across, arc, loop, type Point, path, pointOnCircle, type Shape} from '../kit/shapes.ts'
import type {CrossSection} from './instrument.ts'

/**
 * Draw a cut across the neck, its upper face at 0: its outline, the joints between its layers, and end grain as rings
 * that turn the other way from layer to layer; and inside a box, the top over it. In mm.
 */
export function crossSectionShapes(whole: CrossSection): Shape[] {
  const cut = raised(whole)
  const {laminations, thicknessMm, roundOverMm: radius} = cut
  const half = cut.widthMm / 2
  const {face, downMm} = faceOf(cut)
  const flat: Shape[] =
    radius > 0
      ? [
          ...(downMm > 0
            ? [
                ...face,
                path('outline', [-half, thicknessMm - radius], [-half, downMm]),
                path('outline', [half, downMm], [half, thicknessMm - radius]),
              ]
            : [
                path(
                  'outline',
                  [-half, thicknessMm - radius],
                  [-half, 0],
                  [half, 0],
                  [half, thicknessMm - radius],
                ),
              ]),
          arc('outline', [half - radius, thicknessMm - radius], radius, [0, 90]),
          path('outline', [half - radius, thicknessMm], [-half + radius, thicknessMm]),
          arc('outline', [-half + radius, thicknessMm - radius], radius, [90, 180]),
        ]
      : downMm > 0
        ? [
            ...face,
            path('outline', [half, downMm], [half, thicknessMm], [-half, thicknessMm], [-half, downMm]),
          ]
        : [loop('outline', [-half, 0], [half, 0], [half, thicknessMm], [-half, thicknessMm])]
  const joints = laminations
    .slice(1)
    .map(({fromFaceMm}) => across('edge', halfWidth(cut, fromFaceMm), fromFaceMm))
  return [
    ...laminations.flatMap((layer, i) => layerShapes(cut, layer, i)),
    ...joints,
    ...flat,
    ...topOver(cut),
  ]
}

/** Count the layers of a cut from its own upper face. */
function raised(cut: CrossSection): CrossSection {
  const laminations = cut.laminations.map((layer) => ({...layer, fromFaceMm: layer.fromFaceMm - cut.deepMm}))
  return {...cut, laminations}
}

/** Draw the two faces of a top that lies over a cut, a little wider than the neck. */
function topOver({under, widthMm}: CrossSection): Shape[] {
  if (!under) return []
  return [under.gapMm, under.gapMm + under.topMm].map((mm) => across('outline', 0.6 * widthMm, -mm))
}

/** Draw the playing face, level or round, and say how much lower its edges are than its middle (mm). */
function faceOf({widthMm, faceRadiusMm: radius}: CrossSection): {face: Shape[]; downMm: number} {
  const half = widthMm / 2
  if (radius === undefined) return {face: [], downMm: 0}
  const lean = (Math.asin(half / radius) * 180) / Math.PI
  return {
    face: [arc('outline', [0, radius], radius, [-90 - lean, -90 + lean])],
    downMm: radius - Math.sqrt(radius ** 2 - half ** 2),
  }
}

/** Draw the end grain of one layer, strip by strip, and the joints between its strips. */
function layerShapes(
  cut: CrossSection,
  {fromFaceMm: from, thicknessMm: thick, strips = 1}: CrossSection['laminations'][number],
  index: number,
): Shape[] {
  const half = cut.widthMm / 2
  const outline = layerOutline(cut, from, from + thick)
  const wide = cut.widthMm / strips
  return Array.from({length: strips}, (_, i) => -half + i * wide).flatMap((left, i) => {
    const strip = between(outline, left, left + wide)
    const bottom = Math.max(...strip.filter(([x]) => Math.abs(x - left) < 1e-6).map(([, y]) => y), from)
    const joint = i > 0 ? [path('edge', [left, from], [left, bottom])] : []
    return [...rings(strip, left + wide / 2, half, index + i), ...joint]
  })
}

/** Cut a hollow-free outline down to what lies between two upright lines. */
function between(outline: readonly Point[], left: number, right: number): Point[] {
  const keep = (points: readonly Point[], edge: number, side: 1 | -1) =>
    points.flatMap((from, i): Point[] => {
      const to = points[(i + 1) % points.length]!
      const [a, b] = [side * (from[0] - edge), side * (to[0] - edge)]
      const cross: Point[] = a * b < 0 ? [[edge, from[1] + ((to[1] - from[1]) * a) / (a - b)]] : []
      return a >= 0 ? [from, ...cross] : cross
    })
  return keep(keep(outline, left, 1), right, -1)
}

/** Half the neck's width at a depth, less where the back edges are rounded. */
function halfWidth(
  {widthMm, thicknessMm, roundOverMm: radius, faceRadiusMm}: CrossSection,
  depthMm: number,
): number {
  const face = faceRadiusMm === undefined ? widthMm / 2 : Math.sqrt(depthMm * (2 * faceRadiusMm - depthMm))
  const half = Math.min(widthMm / 2, face)
  const into = depthMm - (thicknessMm - radius)
  return into > 0 && radius > 0 ? half - radius + Math.sqrt(Math.max(0, radius ** 2 - into ** 2)) : half
}

function layerOutline(cut: CrossSection, from: number, to: number): Point[] {
  const isRound = from === 0 && cut.faceRadiusMm !== undefined
  const steps = isRound || (cut.roundOverMm > 0 && to > cut.thicknessMm - cut.roundOverMm) ? 24 : 1
  const depths = Array.from({length: steps + 1}, (_, i) => from + ((to - from) * i) / steps)
  const side = (sign: 1 | -1) => depths.map((depth): Point => [sign * halfWidth(cut, depth), depth])
  return [...side(1), ...side(-1).reverse()]
}

/** Draw rings of end grain round a centre above or below a piece, the other way for every second one. */
function rings(outline: readonly Point[], middle: number, half: number, index: number): Shape[] {
  const depths = outline.map(([, y]) => y)
  const [top, bottom] = [Math.min(...depths), Math.max(...depths)]
  const lean = half * (index % 3 === 1 ? -0.35 : 0.25)
  const centre: Point = [middle + lean, index % 2 ? top - 1.1 * half : bottom + 1.1 * half]
  const pitch = half / 9
  const count = Math.ceil((1.3 * half + bottom - top) / pitch)
  return Array.from({length: count}, (_, i) => half + (i + 0.5) * pitch).flatMap((r) =>
    clipCircle('grain', centre, r, outline),
  )
}

/** Draw what of a circle, in mm, lies inside a closed outline, as arcs. */
export function clipCircle(ink: InkName, centre: Point, radiusMm: number, outline: readonly Point[]): Arc[] {
  const cuts = outline
    .flatMap((from, i) => cutsOf([from, outline[(i + 1) % outline.length]!], centre, radiusMm))
    .sort((a, b) => a - b)
  return cuts.flatMap((from, i) => {
    const to = i + 1 < cuts.length ? cuts[i + 1]! : cuts[0]! + 360
    const at = pointOnCircle(centre, radiusMm, (from + to) / 2)
    return to - from > 0.01 && isInside(at, outline) ? [arc(ink, centre, radiusMm, [from, to])] : []
  })
}

/** The angles, in degrees, at which a circle passes a straight edge. */
function cutsOf([[x1, y1], [x2, y2]]: readonly [Point, Point], [cx, cy]: Point, r: number): number[] {
  const [dx, dy, fx, fy] = [x2 - x1, y2 - y1, x1 - cx, y1 - cy]
  const a = dx * dx + dy * dy
  const b = fx * dx + fy * dy
  const root = b * b - a * (fx * fx + fy * fy - r * r)
  if (a === 0 || root <= 0) return []
  return [(-b - Math.sqrt(root)) / a, (-b + Math.sqrt(root)) / a]
    .filter((t) => t >= 0 && t < 1)
    .map((t) => (Math.atan2(fy + t * dy, fx + t * dx) * 180) / Math.PI)
}

function isInside([x, y]: Point, outline: readonly Point[]): boolean {
  let inside = false
  outline.forEach(([ax, ay], i) => {
    const [bx, by] = outline[(i + 1) % outline.length]!
    if (ay > y !== by > y && x < ax + ((y - ay) / (by - ay)) * (bx - ax)) inside = !inside
  })
  return inside
}
