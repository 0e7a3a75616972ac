import type {Moments} from './circle-moments.ts'

/** Gauss and Legendre's nodes and weights for six points on −1 to 1. Source: any table of quadrature. */
const points = [
  [0.2386191860831969, 0.467913934572691],
  [0.6612093864662645, 0.3607615730481386],
  [0.9324695142031521, 0.1713244923791704],
].flatMap(([node = 0, weight = 0]) => [[node, weight] as const, [-node, weight] as const])

/**
 * Integrate the width of a face crowned to a radius over depth from a to b (mm under its middle): [mm², mm³, mm⁴].
 * Taken over the angle from the middle, since a shallow crown on a large radius leaves few digits otherwise.
 */
export function crownMoments(radius: number, a: number, b: number): Moments {
  const angle = (depth: number) => 2 * Math.asin(Math.sqrt(Math.min(1, Math.max(0, depth / (2 * radius)))))
  const [from, to] = [angle(a), angle(b)]
  const total: [number, number, number] = [0, 0, 0]
  for (const [node, weight] of points) {
    const turn = (from + to) / 2 + ((to - from) / 2) * node
    const depth = 2 * radius * Math.sin(turn / 2) ** 2
    const strip = weight * ((to - from) / 2) * 2 * radius * radius * Math.sin(turn) ** 2
    for (const power of [0, 1, 2] as const) total[power] += strip * depth ** power
  }
  return total
}
