import {pathAt} from '../build-file/path.ts'
import {writeMeasured} from '../build-file/quantities/write-measured.ts'
import {rule} from './rule.ts'

export const asBuiltRules = {
  'measure-out-of-tolerance': rule({
    severity: 'warning',
    about: 'journal',
    what: 'A measure of the finished thing that is further off the drawing than is allowed.',
    why: 'What was built is not what was planned, and some of the plan’s numbers do not hold for it. A mark of the ruler is allowed for a length, half a degree for an angle, a tenth for a pull (common practice, no source), and for pitch what ears notice.',
    mend: 'Mend it where it can be mended, measure again, or allow more under tolerances.',
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
  }),
  'measured-line-unknown': rule({
    severity: 'warning',
    what: 'A measured line that is not there.',
    why: 'What was measured there can be compared with nothing.',
    mend: 'Name the line as it is numbered on this build.',
    find: (build, {scale}) => {
      const lines = scale?.lines
      if (!lines) return []
      const labels = new Set(lines.map((line) => line.label))
      const {measured} = build.values
      const named = [
        ...(measured?.lines ?? []).map((item) => ({...item, under: 'measured.lines'})),
        ...(measured?.cents ?? []).map((item) => ({...item, under: 'measured.cents'})),
      ]
      return named
        .filter(({label}) => !labels.has(label))
        .map(({label, value, under}) => ({
          at: pathAt(build, under, value.place) ?? under,
          message: `line ${label} was measured and is not there: ${lines.length === 0 ? 'this build has no lines' : `the lines run from ${lines[0]!.label} to ${lines.at(-1)!.label}`}; name the line as it is numbered`,
          cause: 'scale.lines',
        }))
    },
  }),
}
