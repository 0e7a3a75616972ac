import type {Check} from './check.ts'

/** More lines than a list that does not repeat has. */
export const linesPastPattern: Check = {
  rule: 'lines-past-pattern',
  find: ({values}, {scale}) => {
    const wanted = values.scale?.lines?.value
    const laid = scale?.lines?.length
    if (wanted === undefined || laid === undefined || laid >= wanted) return []
    return [
      {
        at: 'scale.lines',
        message: `${wanted} lines, but the pattern lists ${laid} and repeats only if its last is the octave (12); ${laid} would do`,
        expected: [`${laid}`],
        cause: 'scale.pattern',
      },
    ]
  },
}
