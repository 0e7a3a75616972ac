import type {AsBuilt} from '../../plan/as-built/as-built.ts'
import type {Plan} from '../../plan/plan.ts'
import {effectsInWords} from '../as-built.ts'
import {writeMeasured} from '../measured.ts'
import type {Wording} from './wording.ts'

const toSetBack =
  'Under frets the scale length is measured from the nut line to where the strings leave the bridge, which is set back behind its line.'

/** `isAsFound` is a measure that no work changes: the plan goes by it once it is written. */
export function measureOutOfTolerance(
  measure: AsBuilt & {isAsFound?: boolean | undefined},
  {units, scale}: Plan,
): Wording {
  const {path, planned = 0, measured, difference = 0, tolerance = 0, unit} = measure
  const effects = effectsInWords(measure, {units})
  const isToBridge = scale?.fretted === true && /^scale(\.length)?$/.test(path)
  const written = (value: number) => writeMeasured(value, unit, {units, near: planned})
  const side = difference > 0 ? 'more' : 'less'
  if (measure.isAsFound)
    return {
      message: `${path} measures ${written(measured)}, ${written(Math.abs(difference))} ${side} than planned; a box is what it is: write ${written(measured)} there, and the plan is of this box`,
      expected: [written(measured)],
    }
  return {
    message: `${path} measures ${written(measured)}, ${written(Math.abs(difference))} ${side} than the ${written(planned)} planned, where ${written(tolerance)} is allowed; mend it if it can be, or allow more under tolerances`,
    note: [...(isToBridge ? [toSetBack] : []), ...effects].join(' ') || undefined,
  }
}

export function measuredLineUnknown({label, labels}: {label: string; labels: readonly string[]}): Wording {
  return {
    message: `line ${label} was measured and is not there: ${labels.length === 0 ? 'this build has no lines' : `the lines run from ${labels[0]} to ${labels.at(-1)}`}; name the line as it is numbered`,
  }
}

export const measuredWithoutDay = (): Wording => ({
  message:
    'these measures do not say their day, and so count as the first; write it under on, as in on: 2026-03-15',
})

export const measuredTwice = ({path, on}: {path: string; on: string}): Wording => ({
  message: `${path} was measured twice on ${on}, and only the one further down counts; keep one, or mend a day`,
})

/** `before` is the day it was started, `after` the last other day of the build. */
export const measuredDayOff = ({
  on,
  before,
  after,
}: {
  on: string
  before?: string | undefined
  after?: string | undefined
}): Wording => ({
  message: before
    ? `measured on ${on}, before the build was started on ${before}; one of the two is a slip`
    : `measured on ${on}, more than ten years after ${after}, the last other day of this build; look at the year`,
})
