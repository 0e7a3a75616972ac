import type {CrossSectionLayer, Outline} from '../../../plugins/plan/neck-shape/cross-section.ts'

type Point = readonly [x: number, y: number]

/** Corners of a round edge. */
const corners = 800

/**
 * Compute a laminated section another way: its outline as a polygon of many corners, cut at each layer's faces and
 * integrated along the edges (Green's theorem).
 */
export function polygonSection(outline: Outline, layers: readonly CrossSectionLayer[]) {
  const whole = polygon(outline)
  let [area, ea, es, ei] = [0, 0, 0, 0]
  for (const {fromFaceMm, thicknessMm, eMpa = 0} of layers) {
    const part = cut(cut(whole, fromFaceMm, 1), fromFaceMm + thicknessMm, -1)
    const [m0, m1, m2] = moments(part)
    area += m0
    ea += eMpa * m0
    es += eMpa * m1
    ei += eMpa * m2
  }
  const neutralAxisMm = es / ea
  return {areaMm2: area, neutralAxisMm, eiNmm2: ei - ea * neutralAxisMm ** 2}
}

function polygon({widthMm: w, heightMm: h, roundMm: r, faceRadiusMm}: Outline): Point[] {
  const steps = Array.from({length: corners + 1}, (_, i) => i / corners)
  const face: Point[] = faceRadiusMm
    ? steps.map((t): Point => {
        const x = -w / 2 + t * w
        return [x, faceRadiusMm - Math.sqrt(faceRadiusMm ** 2 - x * x)]
      })
    : [
        [-w / 2, 0],
        [w / 2, 0],
      ]
  const arc = (centre: number, from: number): Point[] =>
    steps.map((t) => {
      const turn = from + (t * Math.PI) / 2
      return [centre + r * Math.cos(turn), h - r + r * Math.sin(turn)]
    })
  return [...face, ...arc(w / 2 - r, 0), ...arc(-w / 2 + r, Math.PI / 2)]
}

/** Keep what lies below (side 1) or above (side −1) a depth. */
function cut(points: readonly Point[], depth: number, side: 1 | -1): Point[] {
  return points.flatMap((p, i) => {
    const q = points[(i + 1) % points.length]!
    const [a, b] = [side * (p[1] - depth), side * (q[1] - depth)]
    const kept: Point[] = a >= 0 ? [p] : []
    if (a * b >= 0) return kept
    const t = a / (a - b)
    return [...kept, [p[0] + t * (q[0] - p[0]), depth]]
  })
}

function moments(points: readonly Point[]): [number, number, number] {
  let [m0, m1, m2] = [0, 0, 0]
  for (const [i, [x0, y0]] of points.entries()) {
    const [x1, y1] = points[(i + 1) % points.length]!
    const cross = x0 * y1 - x1 * y0
    m0 += cross / 2
    m1 += (cross * (y0 + y1)) / 6
    m2 += (cross * (y0 * y0 + y0 * y1 + y1 * y1)) / 12
  }
  return [m0, m1, m2]
}
