import {writeLength} from '../build-file/quantities/write-length.ts'
import type {Check} from './check.ts'

/** A block under the top that stands where a neck runs through. */
export const blockUnderNeck: Check = {
  rule: 'block-under-neck',
  find: (_, {box, ...plan}) =>
    (box?.blocks ?? []).flatMap(({of, overNeckMm = 0}) =>
      overNeckMm <= 1e-6
        ? []
        : [
            {
              at: of,
              message: `this block would stand ${writeLength(overNeckMm, plan, 'up')} into the neck that runs through under the top; put it beside the neck, or make it no thicker than the daylight above the neck`,
            },
          ],
    ),
}
