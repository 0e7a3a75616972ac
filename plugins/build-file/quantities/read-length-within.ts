import type {Limits} from '../kinds.ts'
import type {Length} from '../values.ts'
import {plainText} from './plain-text.ts'
import {readLength} from './read-length.ts'
import {misreading, quoted, type Reading} from './reading.ts'
import {withinLimits} from './within-limits.ts'
import {writeLength} from './write-length.ts'

const thousandthMm = 0.0254

/**
 * Read a length and see that it lies within its limits (in mm): below zero only where it may lie on either
 * side. Where it is out of range, the same figure in another unit is proposed, if that would do.
 */
export function readLengthWithin(
  text: string,
  units: 'in' | 'mm',
  limits: Limits,
): Reading<Pick<Length, 'mm'>> {
  const length = readLength(text, units)
  if (!length.ok) return length
  const {mm} = length.value
  if (mm < 0 && !limits.signed) {
    return misreading('negative-length', `${quoted(text)} is below zero, which this length cannot be`, [
      plainText(text).replace(/^- ?/, ''),
    ])
  }
  const word = (limit: number, rounding: 'up' | 'down') =>
    units === 'mm'
      ? `${limit} mm`
      : writeLength(limit, {units, rulerMm: limit < 10 ? thousandthMm : 25.4 / 16}, rounding)
  const within = withinLimits(mm, text, limits, word, () => inAnotherUnit(text, units, limits))
  return within.ok ? length : within
}

function inAnotherUnit(
  text: string,
  units: 'in' | 'mm',
  {min = 0, max = Number.POSITIVE_INFINITY}: Limits,
): string[] {
  const figure = plainText(text).replace(/ ?([a-z]+\.?|["'])$/i, '')
  if (/[a-z"']/i.test(figure) || Number(figure) === 0) return []
  return (units === 'in' ? ['in', 'mm', 'cm'] : ['mm', 'in', 'cm'])
    .map((unit) => `${figure} ${unit}`)
    .filter((spelling) => {
      const tried = readLength(spelling, units)
      return tried.ok && tried.value.mm >= min && tried.value.mm <= max
    })
}
