import {nearestMark} from '../../build-file/quantities/write-length.ts'
import type {Line} from '../shape/scale.ts'
import {centsAbove} from './cents-above.ts'
import type {PatternLine} from './line-pattern.ts'
import {lineStation} from './line-station.ts'

export interface LineSettings {
  lengthMm: number
  /** The twelve steps of an octave in cents; left out, equal. */
  steps?: readonly number[]
  units: 'in' | 'mm'
  rulerMm: number
}

/**
 * Lay out lines on a string length: each one's place, the step from the line before it, the nearest mark of the
 * ruler (short of the bridge), and what that mark is off in mm and in cents, positive when sharp.
 */
export function layLines(
  pattern: readonly PatternLine[],
  {lengthMm, steps, units, rulerMm}: LineSettings,
): Line[] {
  let previousMm = 0
  return pattern.map(({label, semitones}, i) => {
    const cents = centsAbove(semitones, steps)
    const fromNutMm = lineStation(lengthMm, cents)
    const mark = nearestMark(Math.min(fromNutMm, lengthMm - rulerMm), {units, rulerMm})
    const fromPreviousMm = fromNutMm - previousMm
    previousMm = fromNutMm
    return {
      n: i + 1,
      label,
      semitones,
      cents,
      offEqualCents: cents - 100 * semitones,
      fromNutMm,
      fromPreviousMm,
      mark: mark.text,
      markMm: mark.mm,
      markErrorMm: mark.mm - fromNutMm,
      markErrorCents: 1200 * Math.log2((lengthMm - fromNutMm) / (lengthMm - mark.mm)),
    }
  })
}
