import {writeLength} from '../build-file/quantities/write-length.ts'
import type {Check} from './check.ts'

/** A block under the top that stands where a neck runs through. */
export const blockUnderNeck: Check = {
  rule: 'block-under-neck',
  find: (_, {box, ...plan}) =>
    (box?.blocks ?? []).flatMap(({of, overNeckMm = 0, wouldDo}) => {
      if (overNeckMm <= 1e-6) return []
      const text = wouldDo?.path.endsWith('.thickness') ? writeLength(wouldDo.mm, plan) : undefined
      return [
        {
          at: text ? wouldDo!.path : of,
          message: `this block would stand ${writeLength(overNeckMm, plan, 'up')} into the neck that runs through under the top; put it beside the neck${text ? `, or make it ${text} thick` : ''}`,
          ...(text && {expected: [text]}),
        },
      ]
    }),
}
