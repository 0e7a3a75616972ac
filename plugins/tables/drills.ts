/**
 * Drill sizes in inches: number and letter sizes after ANSI/ASME B94.11M, as secondary lists give them in full.
 * Fractions go by 1/64 and are not listed. Number sizes run from 1 to 80.
 */
// biome-ignore format: ten sizes a line
export const numberDrillsIn: readonly number[] = [
  0.228, 0.221, 0.213, 0.209, 0.2055, 0.204, 0.201, 0.199, 0.196, 0.1935,
  0.191, 0.189, 0.185, 0.182, 0.18, 0.177, 0.173, 0.1695, 0.166, 0.161,
  0.159, 0.157, 0.154, 0.152, 0.1495, 0.147, 0.144, 0.1405, 0.136, 0.1285,
  0.12, 0.116, 0.113, 0.111, 0.11, 0.1065, 0.104, 0.1015, 0.0995, 0.098,
  0.096, 0.0935, 0.089, 0.086, 0.082, 0.081, 0.0785, 0.076, 0.073, 0.07,
  0.067, 0.0635, 0.0595, 0.055, 0.052, 0.0465, 0.043, 0.042, 0.041, 0.04,
  0.039, 0.038, 0.037, 0.036, 0.035, 0.033, 0.032, 0.031, 0.0292, 0.028,
  0.026, 0.025, 0.024, 0.0225, 0.021, 0.02, 0.018, 0.016, 0.0145, 0.0135,
]

// biome-ignore format: a few letters a line
export const letterDrillsIn: Readonly<Record<string, number>> = {
  A: 0.234, B: 0.238, C: 0.242, D: 0.246, E: 0.25, F: 0.257, G: 0.261, H: 0.266, I: 0.272,
  J: 0.277, K: 0.281, L: 0.29, M: 0.295, N: 0.302, O: 0.316, P: 0.323, Q: 0.332, R: 0.339,
  S: 0.348, T: 0.358, U: 0.368, V: 0.377, W: 0.386, X: 0.397, Y: 0.404, Z: 0.413,
}

/** Forstner bits as shops have them; common practice, no source. */
export const forstnerIn: readonly number[] = [
  0.25, 0.375, 0.5, 0.625, 0.75, 0.875, 1, 1.125, 1.25, 1.375, 1.5, 1.75, 2, 2.125,
]
export const forstnerMm: readonly number[] = [10, 12, 15, 16, 18, 20, 22, 25, 26, 30, 32, 35, 38, 40, 50]

/** Bits that a sound hole is bored with, as a build file has them: common practice, no source. */
export const soundHoleBits = {
  in: ['1/2', '5/8', '3/4', '7/8', '1', '1 1/8', '1 1/4', '1 3/8', '1 1/2', '1 3/4', '2'],
  mm: ['12', '15', '18', '20', '22', '25', '30', '35', '38', '40', '50'],
} as const

export const drillSource = 'ANSI/ASME B94.11M, number and letter sizes; fractions by 1/64 in'
