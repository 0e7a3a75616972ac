import {writeLength} from './write-length.ts'

/**
 * Find the mark of the ruler nearest to a place. `mm` is the mark's own place, `text` as it is read off the
 * ruler: in inches off a ruler that divides the inch, whatever the build's units.
 */
export function nearestMark(
  mm: number,
  {units, rulerMm}: {units: 'in' | 'mm'; rulerMm: number},
): {mm: number; text: string} {
  const perInch = 25.4 / rulerMm
  const dividesInch = Math.abs(perInch - Math.round(perInch)) < 1e-9
  const dividesMetre = Math.abs(1000 / rulerMm - Math.round(1000 / rulerMm)) < 1e-6
  const inInches = dividesInch && !(units === 'mm' && dividesMetre)
  const marks = Math.round(mm / rulerMm)
  return {
    mm: inInches ? (marks * 25.4) / Math.round(perInch) : marks * rulerMm,
    text: writeLength(marks * rulerMm, {units: inInches ? 'in' : dividesMetre ? 'mm' : units, rulerMm}),
  }
}
