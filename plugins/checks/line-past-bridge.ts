import type {Check} from './check.ts'
import {pathAt} from './path-at.ts'

/** A line under the bridge or past it, drawn or measured. */
export const linePastBridge: Check = {
  rule: 'line-past-bridge',
  find: (build, {scale}) => {
    const {lines = [], lengthMm, bridgeFrontMm} = scale ?? {}
    if (lengthMm === undefined || bridgeFrontMm === undefined) return []
    const free = lines.filter((line) => line.fromNutMm <= bridgeFrontMm)
    const first = lines[free.length]
    const drawn = first
      ? [
          {
            at: 'scale.lines',
            message: `line ${first.label} would lie under the bridge; ${free.length} lines are the most that end before it`,
            expected: [`${free.length}`],
          },
        ]
      : []
    const measured = (build.values.measured?.lines ?? [])
      .filter(({value}) => value.mm >= lengthMm)
      .map(({label, value}) => ({
        at: pathAt(build, 'measured.lines', value.place) ?? 'measured.lines',
        message: `line ${label} was measured at ${value.text}, past the bridge, which lies at the scale length; measure it from the nut line`,
        cause: 'scale.length',
        severity: 'warning' as const,
      }))
    return [...drawn, ...measured]
  },
}
