import {writeLength} from '../build-file/quantities/write-length.ts'
import type {Check} from './check.ts'
import {oneEach} from './one-each.ts'

/** A screw that is to pass the top or the back, and stands past an edge of the box. */
export const screwOffBox: Check = {
  rule: 'screw-off-box',
  find: (_, {fasteners = [], ...plan}) =>
    oneEach(
      fasteners.filter(({offBox}) => offBox),
      ({offBox}) => offBox!.path,
      () => 0,
    ).map(({offBox}) => {
      const text = writeLength(offBox!.mm, plan)
      return {
        at: offBox!.path,
        message: `this screw stands past the edge of the box; ${text} would do`,
        expected: [text],
      }
    }),
}
