/** Speed of sound in air at 20 °C, m/s. Source: OpenStax University Physics vol. 1, §17.2. */
const soundMS = 343

/** What a flange adds to a hole's length at each end, times its radius: 8/(3π), Rayleigh's piston. */
const endCorrection = 8 / (3 * Math.PI)

/** What the give of thin wooden walls makes of the air's note: about a semitone lower. */
export const wallsGive = 0.944

/**
 * Give the frequency (Hz) of the air in a box of so many litres breathing through round holes (mm) in a top of this
 * thickness (mm): (c/2π)·√(Σ S/L / V), both ends of each hole flanged, the box stiff.
 * Sources: J. Woodhouse, Euphonics §4.2.1 eq. (8); parallel holes add as inertances. The lowering by thin walls:
 * Nia et al., Proc. R. Soc. A 471, 20140905 (2015).
 */
export function airResonanceHz(
  volumeL: number,
  topMm: number,
  diametersMm: readonly number[],
): number | undefined {
  const conductanceMm = diametersMm.reduce((sum, diameterMm) => {
    const radiusMm = diameterMm / 2
    return sum + (Math.PI * radiusMm ** 2) / (topMm + 2 * endCorrection * radiusMm)
  }, 0)
  if (!(volumeL > 0) || !(conductanceMm > 0)) return undefined
  return (soundMS / (2 * Math.PI)) * Math.sqrt(conductanceMm / 1000 / (volumeL / 1000))
}
