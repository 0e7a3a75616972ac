import {writeLength} from './write-length.ts'

interface Ruler {
  units: 'in' | 'mm'
  rulerMm: number
}

/**
 * Find the mark of the ruler nearest to a place. `mm` is the mark's own place, `text` as it is read off the
 * ruler: in inches off a ruler that divides the inch, whatever the build's units.
 */
export function nearestMark(mm: number, ruler: Ruler): {mm: number; text: string} {
  const {units, rulerMm} = ruler
  const {perInch, dividesMetre} = divisions(ruler)
  const marks = Math.round(mm / rulerMm)
  const readIn = perInch ? 'in' : dividesMetre ? 'mm' : units
  return {
    mm: placeOf(marks, rulerMm, perInch),
    text: writeLength(marks * rulerMm, {units: readIn, rulerMm}),
  }
}

/** Find only the place (mm) of the mark nearest to a place. */
export function nearestMarkMm(mm: number, ruler: Ruler): number {
  return placeOf(Math.round(mm / ruler.rulerMm), ruler.rulerMm, divisions(ruler).perInch)
}

const placeOf = (marks: number, rulerMm: number, perInch: number | undefined): number =>
  perInch ? (marks * 25.4) / perInch : marks * rulerMm

/** Say how many marks an inch has on a ruler that is read in inches, and whether it divides the metre. */
function divisions({units, rulerMm}: Ruler): {perInch: number | undefined; dividesMetre: boolean} {
  const perInch = Math.round(25.4 / rulerMm)
  const dividesInch = Math.abs(25.4 / rulerMm - perInch) < 1e-9
  const dividesMetre = Math.abs(1000 / rulerMm - Math.round(1000 / rulerMm)) < 1e-6
  return {perInch: dividesInch && !(units === 'mm' && dividesMetre) ? perInch : undefined, dividesMetre}
}
