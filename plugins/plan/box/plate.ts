/** A flat rectangular plate: along the neck and across it in mm, its stiffness against bending in N·mm. */
export interface Plate {
  lengthMm: number
  widthMm: number
  /** Along the neck. */
  alongNmm: number
  /** Across the neck. */
  acrossNmm: number
  /** Against twisting, with what one bending does to the other: H = D1 + 2·Dk. */
  twistNmm: number
  /** How much the bending one way adds to the moment the other way (D1): ν times the weaker of the two. */
  sharedNmm: number
}

/** What presses a plate, midway across it: mm from its head-side edge, N down, N·mm up at its head side. */
export interface PlateLoad {
  atMm: number
  /** Along the neck. */
  footMm: number
  /** Across the neck. */
  acrossMm: number
  pushN: number
  momentNmm: number
}

/** How a plate gives way: mm down under the load, its slope there (down towards the tail), moments in N·mm per mm. */
export interface Given {
  sinkMm: number
  slope: number
  /** The largest of either sign. */
  momentAlongN: number
  momentAcrossN: number
}

/** Terms of the double series along the plate, and across it the odd ones up to as many. */
const terms = 48

/**
 * Press a plate that lies loose on its four edges: sunk and leaning by the mean over the load, bent under it. The
 * load's push is even over its foot, its moment a pressure that grows evenly along it.
 * A square one of side a, isotropic, pressed in its middle by P: sinks 0.0116·P·a²/D.
 * Source: Navier's double series; Timoshenko and Woinowsky-Krieger, Theory of Plates and Shells, arts. 34 and 85.
 */
export function loosePlate(plate: Plate, load: PlateLoad): Given {
  const {lengthMm: a, widthMm: b, alongNmm, acrossNmm, twistNmm} = plate
  const {atMm, footMm, acrossMm, pushN, momentNmm} = load
  const across = acrossTerms(b, acrossMm)
  const curved = [atMm - footMm / 2, atMm, atMm + footMm / 2].map((x) => ({x, along: 0, across: 0}))
  let [sinkMm, slope] = [0, 0]
  for (let m = 1; m <= terms; m++) {
    const k = (m * Math.PI) / a
    const k2 = k * k
    const mean = Math.sin(k * atMm) * evened((k * footMm) / 2)
    const lean = Math.cos(k * atMm) * k * leaning((k * footMm) / 2)
    const pressed = (4 * (pushN * mean + momentNmm * lean)) / (a * b)
    let [sunk, middle, bent] = [0, 0, 0]
    for (let i = 0; i < across.length; i++) {
      const {l2, share, sign} = across[i]!
      const size = share / (alongNmm * k2 * k2 + 2 * twistNmm * k2 * l2 + acrossNmm * l2 * l2)
      sunk += size * share
      middle += size * sign
      bent += size * sign * l2
    }
    sinkMm += pressed * sunk * mean
    slope += pressed * sunk * lean
    for (const one of curved) {
      const shape = pressed * Math.sin(k * one.x)
      one.along += middle * k2 * shape
      one.across += bent * shape
    }
  }
  const most = (moments: number[]) => Math.max(...moments.map(Math.abs))
  return {
    sinkMm,
    slope,
    momentAlongN: most(curved.map((one) => alongNmm * one.along + plate.sharedNmm * one.across)),
    momentAcrossN: most(curved.map((one) => acrossNmm * one.across + plate.sharedNmm * one.along)),
  }
}

/** The odd terms across a plate, where the load lies midway: its share of each, and the term's sign in the middle. */
function acrossTerms(widthMm: number, acrossMm: number) {
  return Array.from({length: terms / 2}, (_, i) => {
    const l = ((2 * i + 1) * Math.PI) / widthMm
    const sign = i % 2 ? -1 : 1
    return {l2: l * l, sign, share: sign * evened((l * acrossMm) / 2)}
  })
}

/** The mean of a wave over a stretch about a place, to its height there; z is half the stretch in its phase. */
const evened = (z: number) => (z < 1e-6 ? 1 : Math.sin(z) / z)

/** The same for its slope, by the straight line that fits it best over the stretch. */
const leaning = (z: number) => (z < 1e-3 ? 1 : (3 * (Math.sin(z) - z * Math.cos(z))) / (z * z * z))

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
  const [inX, inY] = [productsOf(along, a), productsOf(across, b)]
  // A shape meets only itself and the next but one, along and across.
  const band = 2 * across.length + 1
  const rows: Float64Array[] = []
  const pressed = new Float64Array(along.length * across.length)
  for (let i = 0; i < along.length; i++)
    for (let j = 0; j < across.length; j++) {
      const row = new Float64Array(rows.length + 1)
      pressed[rows.length] = (load.pushN * means[i]! + load.momentNmm * leans[i]!) * shares[j]!
      for (let at = Math.max(0, rows.length - band); at < row.length; at++) {
        const x = inX[i]![Math.floor(at / across.length)]!
        const y = inY[j]![at % across.length]!
        row[at] =
          plate.alongNmm * x.bent * y.plain +
          2 * plate.twistNmm * x.sloped * y.sloped +
          plate.acrossNmm * x.plain * y.bent
      }
      rows.push(row)
    }
  const sizes = solved(rows, pressed, band)
  const sum = (ofAlong: readonly number[], ofAcross: readonly number[]) =>
    sizes.reduce((all, size, at) => {
      const [i, j] = [Math.floor(at / across.length), at % across.length]
      return all + size * ofAlong[i]! * ofAcross[j]!
    }, 0)
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

interface Products {
  plain: number
  sloped: number
  bent: number
}

/** Integrate each two shapes over a plate's length, as they are, by their slopes and by their curvatures. */
function productsOf(waves: readonly Waves[], sizeMm: number): Products[][] {
  return waves.map(([k, higher]) =>
    waves.map(([l, higherL]) => {
      const found: Products = {plain: 0, sloped: 0, bent: 0}
      const add = (one: number, other: number, sign: 1 | -1) => {
        if (Math.abs(one - other) * sizeMm > 0.1) return
        const half = (sign * sizeMm) / 2
        found.plain += one === 0 ? 2 * half : half
        found.sloped += half * one * one
        found.bent += half * one * one * one * one
      }
      add(k, l, 1)
      add(higher, higherL, 1)
      add(k, higherL, -1)
      add(higher, l, -1)
      return found
    }),
  )
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
