import type {Check} from './check.ts'
import {pathAt} from './path-at.ts'

/** A line measured that is not there. */
export const measuredLineUnknown: Check = {
  rule: 'measured-line-unknown',
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
}
