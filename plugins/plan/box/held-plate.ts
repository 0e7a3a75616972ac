import {evened, type Given, leaning, type Plate, type PlateLoad} from './plate.ts'

/**
 * Press a plate that is held fast at its four edges: sunk and leaning by the mean over the load, bent at its edges.
 * A square one of side a, isotropic, pressed in its middle by P: sinks 0.0056·P·a²/D, bent by 0.126·P at its edges.
 * Shapes as many as bring its sinking to within 2 %, its moments to within 10 %.
 * Source: the least energy of shapes cos(m − 1)πx/a − cos(m + 1)πx/a (Ritz); Timoshenko and Woinowsky-Krieger,
 * Theory of Plates and Shells, arts. 44 and 82.
 */
export function heldPlate(plate: Plate, load: PlateLoad): Given {
  const {lengthMm: a, widthMm: b} = plate
  const slender = Math.min(Math.max(a / b, 0.75), 1.75)
  const along = shapes(a, Math.ceil(8 * slender), 1)
  const across = shapes(b, Math.ceil(5 / slender) + 1, 2)
  const means = along.map((shape) => over(shape, load.atMm, load.footMm, meanOf))
  const leans = along.map((shape) => over(shape, load.atMm, load.footMm, leanOf))
  const shares = across.map((shape) => over(shape, b / 2, load.acrossMm, meanOf))
  const sizes = sizesOf(plate, {along, across}, (i, j) => {
    return (load.pushN * means[i]! + load.momentNmm * leans[i]!) * shares[j]!
  })
  const sum = (ofAlong: readonly number[], ofAcross: readonly number[]) => {
    let all = 0
    let at = 0
    for (const one of ofAlong) for (const other of ofAcross) all += sizes[at++]! * one * other
    return all
  }
  // Over an edge a shape bends by its own second derivative; along that edge the plate is straight.
  const [edgesX, edgesY] = [along.map(bentAtEdge), across.map(bentAtEdge)]
  const farEdges = edgesX.map((bent, i) => (i % 2 ? -bent : bent))
  const [highX, highY] = [
    along.map((shape) => over(shape, load.atMm, 0, meanOf)),
    across.map((shape) => over(shape, b / 2, 0, meanOf)),
  ]
  return {
    sinkMm: sum(means, shares),
    slope: sum(leans, shares),
    momentAlongN: plate.alongNmm * Math.max(Math.abs(sum(edgesX, highY)), Math.abs(sum(farEdges, highY))),
    momentAcrossN: plate.acrossNmm * Math.abs(sum(highX, edgesY)),
  }
}

/** A shape of a held plate, cos kx − cos Kx, by its two waves (1/mm). */
type Waves = readonly [k: number, higher: number]

/** List the first shapes of a held plate, or every second of them, the even ones about its middle. */
const shapes = (sizeMm: number, count: number, step: 1 | 2): Waves[] =>
  Array.from({length: count}, (_, i) => {
    const m = 1 + i * step
    return [((m - 1) * Math.PI) / sizeMm, ((m + 1) * Math.PI) / sizeMm]
  })

const meanOf = (k: number, at: number, half: number) => Math.cos(k * at) * evened(k * half)
const leanOf = (k: number, at: number, half: number) => -Math.sin(k * at) * k * leaning(k * half)

const over = ([k, higher]: Waves, at: number, wide: number, of: typeof meanOf) =>
  of(k, at, wide / 2) - of(higher, at, wide / 2)

const bentAtEdge = ([k, higher]: Waves) => higher * higher - k * k

/** Find how much of each shape along times each shape across bends the plate, where the load presses that so much. */
function sizesOf(
  {lengthMm, widthMm, alongNmm, acrossNmm, twistNmm}: Plate,
  {along, across}: {along: readonly Waves[]; across: readonly Waves[]},
  pressed: (i: number, j: number) => number,
): Float64Array {
  const [inX, inY] = [productsOf(along, lengthMm), productsOf(across, widthMm)]
  // A shape meets only itself and the next but one, along and across.
  const band = 2 * across.length + 1
  const rows: Float64Array[] = []
  const right = new Float64Array(along.length * across.length)
  for (let i = 0; i < along.length; i++)
    for (let j = 0; j < across.length; j++) {
      const row = new Float64Array(rows.length + 1)
      right[rows.length] = pressed(i, j)
      for (let k = Math.max(0, i - 2); k <= i; k++)
        for (let l = 0; l < inY[j]!.length && k * across.length + l < row.length; l++) {
          const [x, y] = [inX[i]![k], inY[j]![l]]
          if (!x || !y) continue
          row[k * across.length + l] =
            alongNmm * x.bent * y.plain + 2 * twistNmm * x.sloped * y.sloped + acrossNmm * x.plain * y.bent
        }
      rows.push(row)
    }
  return solved(rows, right, band)
}

/** What two shapes that meet come to. */
interface Products {
  plain: number
  sloped: number
  bent: number
}

/** Integrate each two shapes over a plate's length, as they are, by their slopes and by their curvatures; nothing of two that share no wave. */
function productsOf(waves: readonly Waves[], sizeMm: number): (Products | undefined)[][] {
  return waves.map(([k, higher], i) =>
    waves.slice(0, i + 3).map(([l, higherL]) => {
      if (k !== l && k !== higherL && higher !== l) return undefined
      const found: Products = {plain: 0, sloped: 0, bent: 0}
      meet(found, k, k === l ? sizeMm / 2 : 0)
      meet(found, higher, higher === higherL ? sizeMm / 2 : 0)
      meet(found, k, k === higherL ? -sizeMm / 2 : 0)
      meet(found, higher, higher === l ? -sizeMm / 2 : 0)
      return found
    }),
  )
}

/** Add what two waves that are the same one come to over so much of the plate (half of it, below zero where they part). */
function meet(found: Products, wave: number, halfMm: number): void {
  found.plain += wave === 0 ? 2 * halfMm : halfMm
  found.sloped += halfMm * wave * wave
  found.bent += halfMm * wave * wave * wave * wave
}

/**
 * Solve symmetric, positive equations, given up to their diagonal and nothing further off it than the band, by
 * Cholesky's way; the rows are used up.
 */
function solved(rows: readonly Float64Array[], right: Float64Array, band: number): Float64Array {
  for (let i = 0; i < rows.length; i++) {
    const row = rows[i]!
    const first = Math.max(0, i - band)
    for (let j = first; j <= i; j++) {
      const other = rows[j]!
      let sum = row[j]!
      for (let k = first; k < j; k++) sum -= row[k]! * other[k]!
      row[j] = i === j ? Math.sqrt(sum) : sum / other[j]!
    }
    for (let k = first; k < i; k++) right[i]! -= row[k]! * right[k]!
    right[i]! /= row[i]!
  }
  for (let i = rows.length - 1; i >= 0; i--) {
    const last = Math.min(rows.length - 1, i + band)
    for (let k = i + 1; k <= last; k++) right[i]! -= rows[k]![i]! * right[k]!
    right[i]! /= rows[i]![i]!
  }
  return right
}
