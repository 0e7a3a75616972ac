/**
 * Give the hollow (mm) of a relieved neck at a distance from the nut (mm), by its deepest: a straight slope to the
 * octave and back towards the bridge, as the model of intonation has it.
 */
export function reliefAtMm(deepestMm: number, fromNutMm: number, scaleMm: number): number {
  return deepestMm * Math.min((2 * fromNutMm) / scaleMm, (2 * (scaleMm - fromNutMm)) / scaleMm)
}
