import {arrow} from './arrow.ts'
import {circle, path, type Shape} from './shape.ts'

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
