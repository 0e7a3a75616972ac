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
  const slender = Math.min(Math.max(a / b, leastSlender), mostSlender)
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

/** Between these the number of shapes follows the plate's length over its width. */
const [leastSlender, mostSlender] = [0.75, 1.75]
const [mostAlong, mostAcross] = [Math.ceil(8 * mostSlender), Math.ceil(5 / leastSlender) + 1]

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
  const bentX = (alongNmm * widthMm) / lengthMm ** 3
  const bentY = (acrossNmm * lengthMm) / widthMm ** 3
  const twisted = (2 * twistNmm) / (lengthMm * widthMm)
  const [countX, countY] = [along.length, across.length]
  // A shape meets only itself and the next but one, along and across.
  const band = 2 * countY + 1
  const rows = new Float64Array(countX * countY * (band + 1))
  const right = new Float64Array(countX * countY)
  for (let i = 0; i < countX; i++)
    for (let j = 0; j < countY; j++) {
      const own = i * countY + j
      right[own] = pressed(i, j)
      for (let k = Math.max(0, i - 2); k <= i; k++)
        for (let l = Math.max(0, j - 2); l < Math.min(countY, j + 3); l++) {
          const other = k * countY + l
          const [x, y] = [productsAlong[i]![k], productsAcross[j]![l]]
          if (!x || !y || other > own) continue
          rows[own * band + other + band] =
            bentX * x.bent * y.plain + twisted * x.sloped * y.sloped + bentY * x.plain * y.bent
        }
    }
  return solved(rows, right, band)
}

/** What two shapes that meet come to. */
interface Products {
  plain: number
  sloped: number
  bent: number
}

/** Integrate each two shapes over a length of 1, as they are, by their slopes and by their curvatures; nothing of two that share no wave. */
const productsOf = (waves: readonly Waves[]): (Products | undefined)[][] =>
  waves.map(([k, higher], i) =>
    waves.slice(0, i + 3).map(([l, higherL]) => {
      if (k !== l && k !== higherL && higher !== l) return undefined
      const found: Products = {plain: 0, sloped: 0, bent: 0}
      meet(found, k, k === l ? 1 / 2 : 0)
      meet(found, higher, higher === higherL ? 1 / 2 : 0)
      meet(found, k, k === higherL ? -1 / 2 : 0)
      meet(found, higher, higher === l ? -1 / 2 : 0)
      return found
    }),
  )

/** Add what two waves that are the same one come to over so much of the length (half of it, below zero where they part). */
function meet(found: Products, wave: number, half: number): void {
  found.plain += wave === 0 ? 2 * half : half
  found.sloped += half * wave * wave
  found.bent += half * wave * wave * wave * wave
}

/** Of as many shapes as any plate takes. */
const productsAlong = productsOf(shapes(1, mostAlong, 1))
const productsAcross = productsOf(shapes(1, mostAcross, 2))

/**
 * Solve symmetric, positive equations by Cholesky's way. Of each row the places up to the diagonal are given that lie
 * within the band, one row after the other: of row i, place j at i · band + j + band. The rows are used up.
 */
function solved(rows: Float64Array, right: Float64Array, band: number): Float64Array {
  const count = right.length
  for (let i = 0; i < count; i++) {
    const own = i * band + band
    const first = Math.max(0, i - band)
    for (let j = first; j <= i; j++) {
      const other = j * band + band
      let sum = rows[own + j]!
      for (let k = Math.max(first, j - band); k < j; k++) sum -= rows[own + k]! * rows[other + k]!
      rows[own + j] = i === j ? Math.sqrt(sum) : sum / rows[other + j]!
    }
    for (let k = first; k < i; k++) right[i]! -= rows[own + k]! * right[k]!
    right[i]! /= rows[own + i]!
  }
  for (let i = count - 1; i >= 0; i--) {
    const last = Math.min(count - 1, i + band)
    for (let k = i + 1; k <= last; k++) right[i]! -= rows[k * band + band + i]! * right[k]!
    right[i]! /= rows[i * band + band + i]!
  }
  return right
}
