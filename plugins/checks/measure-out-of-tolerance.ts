import {writeMeasured} from '../build-file/quantities/write-measured.ts'
import type {Check} from './check.ts'

/** A measure further off the drawing than is allowed. */
export const measureOutOfTolerance: Check = {
  rule: 'measure-out-of-tolerance',
  find: (_, {asBuilt = [], units}) =>
    asBuilt
      .filter(({isOut}) => isOut)
      .map(({path, planned = 0, measured, difference = 0, tolerance = 0, unit, effects}) => {
        const written = (value: number) => writeMeasured(value, unit, {units, near: planned})
        const side = difference > 0 ? 'more' : 'less'
        return {
          at: `measured.${path}`,
          message: `${path} measures ${written(measured)}, ${written(Math.abs(difference))} ${side} than the ${written(planned)} drawn, where ${written(tolerance)} is allowed; mend it if it can be, or allow more under tolerances`,
          ...(effects.length > 0 && {note: effects.join(' ')}),
        }
      }),
}
