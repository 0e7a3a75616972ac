/**
 * Strength of music wire by its diameter: the least and the most that the standard lets it have.
 * Rows rise by diameter. 1 ksi is 6.894757 MPa.
 *
 * Source: ASTM A228/A228M, tensile strength, as tabulated by a supplier of wire; the standard's own table was not
 * seen. The most at 0.036 in is printed there as 255, a slip: every other row has most/least between 1.103 and 1.108.
 */
export interface MusicWireRow {
  diameterIn: number
  minKsi: number
  maxKsi: number
}

export const musicWireSource = 'ASTM A228/A228M, as tabulated by a supplier of wire'

// biome-ignore format: a line each
export const musicWire: readonly MusicWireRow[] = [
  {diameterIn: 0.008, minKsi: 399, maxKsi: 441},
  {diameterIn: 0.009, minKsi: 393, maxKsi: 434},
  {diameterIn: 0.01, minKsi: 387, maxKsi: 428},
  {diameterIn: 0.011, minKsi: 382, maxKsi: 422},
  {diameterIn: 0.012, minKsi: 377, maxKsi: 417},
  {diameterIn: 0.013, minKsi: 373, maxKsi: 412},
  {diameterIn: 0.014, minKsi: 369, maxKsi: 408},
  {diameterIn: 0.015, minKsi: 365, maxKsi: 404},
  {diameterIn: 0.016, minKsi: 362, maxKsi: 400},
  {diameterIn: 0.018, minKsi: 356, maxKsi: 393},
  {diameterIn: 0.02, minKsi: 350, maxKsi: 387},
  {diameterIn: 0.022, minKsi: 345, maxKsi: 382},
  {diameterIn: 0.024, minKsi: 341, maxKsi: 377},
  {diameterIn: 0.026, minKsi: 337, maxKsi: 373},
  {diameterIn: 0.028, minKsi: 333, maxKsi: 368},
  {diameterIn: 0.03, minKsi: 330, maxKsi: 365},
  {diameterIn: 0.032, minKsi: 327, maxKsi: 361},
  {diameterIn: 0.034, minKsi: 324, maxKsi: 358},
  {diameterIn: 0.036, minKsi: 321, maxKsi: 355},
  {diameterIn: 0.038, minKsi: 318, maxKsi: 352},
  {diameterIn: 0.04, minKsi: 315, maxKsi: 349},
  {diameterIn: 0.042, minKsi: 313, maxKsi: 346},
  {diameterIn: 0.045, minKsi: 309, maxKsi: 342},
  {diameterIn: 0.048, minKsi: 306, maxKsi: 339},
  {diameterIn: 0.051, minKsi: 303, maxKsi: 335},
  {diameterIn: 0.055, minKsi: 300, maxKsi: 331},
  {diameterIn: 0.059, minKsi: 296, maxKsi: 327},
  {diameterIn: 0.063, minKsi: 293, maxKsi: 324},
]

/**
 * The handbook's fit A/d^m, for diameters that the table does not have; 1.1 to 2.5 % above the table's least.
 *
 * Source: Shigley's Mechanical Engineering Design, Table 10-4 (after the Design Handbook, 1987), music wire A228.
 */
export const musicWireFit = {aMpa: 2211, exponent: 0.145}

/**
 * Young's modulus of music wire.
 *
 * Source: Shigley's Mechanical Engineering Design, 9th ed. (2011), Table 10-5: 29.5 Mpsi up to 0.032 in, 29.0 above.
 */
export const musicWireStiffness = {thinUpToIn: 0.032, thinMpa: 203_400, thickMpa: 200_000}
