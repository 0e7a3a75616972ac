import type {Check} from './check.ts'

/** Find prose that is nested so deep that it is not read. */
export const nestedTooDeep: Check = {
  rule: 'nested-too-deep',
  find: ({tooNested}) =>
    tooNested
      ? [
          {
            at: tooNested,
            message: 'the prose is nested too deep here to be read; close what stays open before it',
          },
        ]
      : [],
}
