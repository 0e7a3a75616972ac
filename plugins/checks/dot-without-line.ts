import type {Check} from './check.ts'

/** A dot on a line that is not there. */
export const dotWithoutLine: Check = {
  rule: 'dot-without-line',
  find: ({values}, {scale}) => {
    const lines = scale?.lines
    if (!lines) return []
    const labels = new Set(lines.map((line) => line.label))
    const last = lines.at(-1)?.label
    return (values.scale?.dots ?? []).flatMap((dot, i) => {
      if (labels.has(dot.label)) return []
      const lower = lines.filter((line) => Number.parseInt(line.label, 10) <= Number.parseInt(dot.label, 10))
      const near = lower.at(-1)?.label
      const reach =
        last === undefined ? 'there are no lines' : `the lines run from ${lines[0]!.label} to ${last}`
      return {
        at: `scale.dots.${i + 1}`,
        message: `a dot on line ${dot.label}, which is not there: ${reach}${near ? `; ${near} is the nearest before it` : ''}`,
        ...(near && {expected: [near]}),
      }
    })
  },
}
