import type {StringStiffness} from './string-stiffness.ts'

/**
 * Give how far a string stretches over a length (mm) under its pull (N), in mm: T·L/(E·A).
 * Source: Hooke's law; OpenStax University Physics vol. 1, 12.3.
 */
export function stretchMm(
  {stiffnessMpa, sectionMm}: StringStiffness,
  tensionN: number,
  lengthMm: number,
): number {
  return (tensionN * lengthMm) / (stiffnessMpa * (Math.PI / 4) * sectionMm ** 2)
}
