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
