import {writeLength} from './write-length.ts'

const newtonsPerPoundForce = 4.4482216152605

/**
 * Write a measured quantity with its unit, finer than the maker's ruler, since differences are finer than marks:
 * mm (to 1/64 in or 0.1 mm, and where `near` is under 1 mm to thousandths of an inch or 0.01 mm), N, cents, Hz or deg.
 */
export function writeMeasured(
  value: number,
  unit: string,
  {units, near = value}: {units: 'in' | 'mm'; near?: number},
): string {
  if (unit === 'mm') {
    const isFine = Math.abs(near) < 1
    const rulerMm = units === 'in' ? 25.4 / (isFine ? 1000 : 64) : isFine ? 0.01 : 0.1
    return writeLength(value, {units, rulerMm})
  }
  if (unit === 'N') return units === 'in' ? `${short(value / newtonsPerPoundForce)} lbf` : `${short(value)} N`
  if (unit === 'deg') return `${short(value)}°`
  return `${short(value)} ${unit}`
}

const short = (value: number) => String(Number(value.toFixed(1)) + 0)
