import type {AsBuilt} from '../../plan/as-built.ts'
import {effectsInWords} from '../as-built.ts'
import type {Ruler} from '../lengths.ts'
import {writeMeasured} from '../measured.ts'
import type {Wording} from './wording.ts'

export function measureOutOfTolerance(measure: AsBuilt, {units}: Ruler): Wording {
  const {path, planned = 0, measured, difference = 0, tolerance = 0, unit} = measure
  const effects = effectsInWords(measure, {units})
  const written = (value: number) => writeMeasured(value, unit, {units, near: planned})
  const side = difference > 0 ? 'more' : 'less'
  return {
    message: `${path} measures ${written(measured)}, ${written(Math.abs(difference))} ${side} than the ${written(planned)} drawn, where ${written(tolerance)} is allowed; mend it if it can be, or allow more under tolerances`,
    note: effects.length > 0 ? effects.join(' ') : undefined,
  }
}

export function measuredLineUnknown({label, labels}: {label: string; labels: readonly string[]}): Wording {
  return {
    message: `line ${label} was measured and is not there: ${labels.length === 0 ? 'this build has no lines' : `the lines run from ${labels[0]} to ${labels.at(-1)}`}; name the line as it is numbered`,
  }
}
