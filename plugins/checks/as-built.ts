import {pathAt} from '../build-file/path.ts'
import * as words from '../words/findings/as-built.ts'
import {rule} from './rule.ts'

export const asBuiltRules = {
  'measure-out-of-tolerance': rule({
    severity: 'warning',
    about: 'journal',
    what: 'A measure of the finished thing that is further off the drawing than is allowed.',
    why: 'What was built is not what was planned, and some of the plan’s numbers do not hold for it. A mark of the ruler is allowed for a length, half a degree for an angle, a tenth for a pull (common practice, no source), and for pitch what ears notice.',
    mend: 'Mend it where it can be mended, measure again, or allow more under tolerances.',
    passes: 'scale: 24 1/4\nmeasured: {scale.length: 24 9/32}',
    fails: 'scale: 24 1/4\nmeasured: {scale.length: 24 5/16}',
    find: (_, {asBuilt = []}) =>
      asBuilt.filter(({isOut}) => isOut).map((one) => ({...one, at: `measured.${one.path}`})),
    says: words.measureOutOfTolerance,
  }),
  'measured-line-unknown': rule({
    severity: 'warning',
    what: 'A measured line that is not there.',
    why: 'What was measured there can be compared with nothing.',
    mend: 'Name the line as it is numbered on this build.',
    passes: 'scale: {length: 24, lines: 12}\nmeasured:\n  cents: {12: 4}',
    fails: 'scale: {length: 24, lines: 12}\nmeasured:\n  cents: {13: 4}',
    find: (build, {scale}) => {
      if (!scale?.lines) return []
      const labels = scale.lines.map((line) => line.label)
      const {measured} = build.values
      const named = [
        ...(measured?.lines ?? []).map((item) => ({...item, under: 'measured.lines'})),
        ...(measured?.cents ?? []).map((item) => ({...item, under: 'measured.cents'})),
      ]
      return named
        .filter(({label}) => !labels.includes(label))
        .map(({label, value, under}) => ({
          at: pathAt(build, under, value.place) ?? under,
          cause: 'scale.lines',
          label,
          labels,
        }))
    },
    says: words.measuredLineUnknown,
  }),
}
