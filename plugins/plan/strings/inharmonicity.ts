import type {StringStiffness} from './string-stiffness.ts'

/**
 * Give B in f_n = n·f_0·√(1 + B·n²) of a string of this length (mm) and pull (N): π³·E·d⁴/(64·T·L²).
 * Source: H. Fletcher, J. Acoust. Soc. Am. 36, 203 (1964).
 */
export function inharmonicityOf(
  {stiffnessMpa, sectionMm}: StringStiffness,
  tensionN: number,
  lengthMm: number,
): number {
  return (Math.PI ** 3 * stiffnessMpa * sectionMm ** 4) / (64 * tensionN * lengthMm ** 2)
}
