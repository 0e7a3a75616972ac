import {lusolve, sparse} from 'mathjs'

/** A plate on a grid, written out by differences: sizes in mm, stiffness in N·mm, a push spread over a foot. */
export interface GridPlate {
  a: number
  b: number
  dx: number
  dy: number
  /** D1 + 2·Dk. */
  h: number
  isHeld: boolean
  /** Its middle along the plate and its sides; across, it lies midway. */
  foot: {at: number; along: number; across: number}
  push: number
  /** Up at the head side, spread over the foot as a pressure that grows evenly along it. */
  moment?: number
}

/**
 * Solve dx·w_xxxx + 2h·w_xxyy + dy·w_yyyy = q on a grid by central differences and the library's own sparse
 * elimination; half the plate across, since load and plate are even about its middle. An edge has w = 0 and, held, no
 * slope, or, loose, no curvature: the place outside it mirrors the one inside, with or against its sign.
 * Gives the mean of w over the foot and its best straight slope along it.
 */
export function gridPlate(
  {a, b, dx, dy, h, isHeld, foot, push, moment = 0}: GridPlate,
  nx: number,
  ny: number,
) {
  const [sx, sy] = [a / nx, b / 2 / ny]
  // x from 1 to nx − 1; y from 0, the middle, to ny − 1.
  const [columns, rows] = [nx - 1, ny]
  const at = (i: number, j: number) => (i - 1) * rows + j
  const size = columns * rows
  const system = sparse([], 'number')
  system.resize([size, size])
  const entries = new Map<number, number>()
  const edge = isHeld ? 1 : -1
  const add = (row: number, i: number, j: number, value: number) => {
    // Over the middle, then over an end and a side.
    const [x, y] = [
      i < 0 ? -i : i > nx ? 2 * nx - i : i,
      Math.abs(j) > ny ? 2 * ny - Math.abs(j) : Math.abs(j),
    ]
    if (x === 0 || x === nx || y === ny) return
    const isOutside = x !== i || y !== Math.abs(j)
    const key = row * size + at(x, y)
    entries.set(key, (entries.get(key) ?? 0) + (isOutside ? edge * value : value))
  }
  const [cx, cy, cxy] = [dx / sx ** 4, dy / sy ** 4, (2 * h) / (sx * sx * sy * sy)]
  const second = [1, -2, 1]
  const fourth = [1, -4, 6, -4, 1]
  const pressed = Array.from({length: size}, (_, row) => {
    const [x, y] = [(1 + Math.floor(row / rows)) * sx, (row % rows) * sy]
    const share = lapped(x, sx, foot.at, foot.along) * lapped(y, sy, 0, foot.across) * (y ? 2 : 1)
    return {share, off: Math.min(foot.along / 2, Math.max(-foot.along / 2, x - foot.at))}
  })
  const sum = (of: (place: {share: number; off: number}, row: number) => number) =>
    pressed.reduce((all, place, row) => all + place.share * of(place, row), 0)
  const [whole, spread] = [sum(() => 1), sum(({off}) => off * off)]
  const right = pressed.map(({share, off}, row) => [
    ((share / (row % rows ? 2 : 1)) * (push / whole + (moment * off) / spread)) / (sx * sy),
  ])
  for (let i = 1; i < nx; i++)
    for (let j = 0; j < ny; j++) {
      const row = at(i, j)
      for (const [k, value] of fourth.entries()) {
        add(row, i + k - 2, j, cx * value)
        add(row, i, j + k - 2, cy * value)
      }
      for (const [k, one] of second.entries())
        for (const [l, other] of second.entries()) add(row, i + k - 1, j + l - 1, cxy * one * other)
    }
  for (const [key, value] of entries) system.set([Math.floor(key / size), key % size], value)
  const solved = (lusolve(system, right) as typeof system).toArray() as number[][]
  const w = (row: number) => solved[row]![0]!
  return {
    sinkMm: sum((_, row) => w(row)) / whole,
    slope: sum(({off}, row) => off * w(row)) / spread,
  }
}

/** The part of a cell about a place of the grid that lies under the foot. */
function lapped(place: number, cell: number, middle: number, wide: number): number {
  const from = Math.max(place - cell / 2, middle - wide / 2)
  const to = Math.min(place + cell / 2, middle + wide / 2)
  return Math.max(0, to - from) / cell
}
