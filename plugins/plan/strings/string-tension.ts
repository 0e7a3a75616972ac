/**
 * Give the pull (N) that brings a string (mass in kg/m) of this length (mm) to its pitch (Hz): T = μ(2Lf)².
 * Source: Mersenne's law; OpenStax University Physics vol. 1, 16.3 and 16.6.
 */
export function stringTensionN(massKgM: number, lengthMm: number, frequencyHz: number): number {
  return massKgM * ((2 * lengthMm * frequencyHz) / 1000) ** 2
}

/** Give the mass per length (kg/m) of a string that pulls so many newtons at this length (mm) and pitch (Hz). */
export function massOfPullKgM(tensionN: number, lengthMm: number, frequencyHz: number): number {
  return tensionN / ((2 * lengthMm * frequencyHz) / 1000) ** 2
}
