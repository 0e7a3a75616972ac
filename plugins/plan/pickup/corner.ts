/**
 * Give the frequency (Hz) below which a source of this capacitance (nF) fades into a load (Ω): 1/(2πRC).
 * Source: OpenStax University Physics vol. 2, §15.6.
 */
export function cornerHz(capacitanceNf: number, loadOhm: number): number {
  return 1 / (2 * Math.PI * loadOhm * capacitanceNf * 1e-9)
}
