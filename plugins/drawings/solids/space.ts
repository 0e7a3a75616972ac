/** A point or a direction in space: x across towards the last string, y from the nut line to the tail, z up; in mm. */
export type Vec = readonly [x: number, y: number, z: number]

export const plus = (a: Vec, b: Vec, times = 1): Vec => [
  a[0] + times * b[0],
  a[1] + times * b[1],
  a[2] + times * b[2],
]

export const minus = (a: Vec, b: Vec): Vec => plus(a, b, -1)

export const times = (a: Vec, by: number): Vec => [a[0] * by, a[1] * by, a[2] * by]

export const dot = (a: Vec, b: Vec): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2]

export const cross = (a: Vec, b: Vec): Vec => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
]

export const lengthOf = (a: Vec): number => Math.sqrt(dot(a, a))

export const unit = (a: Vec): Vec => times(a, 1 / lengthOf(a))

/** Two directions square to one, so that the three turn like x, y and z. */
export function squareTo(normal: Vec): readonly [Vec, Vec] {
  const least = Math.abs(normal[0]) < 0.6 ? ([1, 0, 0] as const) : ([0, 1, 0] as const)
  const u = unit(cross(least, normal))
  return [u, cross(normal, u)]
}
