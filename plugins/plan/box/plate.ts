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

/** The mean of a wave over a stretch about a place, to its height there; z is half the stretch in its phase. */
export const evened = (z: number) => (z < 1e-6 ? 1 : Math.sin(z) / z)

/** The same for its slope, by the straight line that fits it best over the stretch. */
export const leaning = (z: number) => (z < 1e-3 ? 1 : (3 * (Math.sin(z) - z * Math.cos(z))) / (z * z * z))

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
