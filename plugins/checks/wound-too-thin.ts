import {thinnestWoundIn} from '../tables/string-gauges.ts'
import type {Check} from './check.ts'

const thinnestWoundMm = thinnestWoundIn * 25.4

/** A wound string thinner than any that is made. */
export const woundTooThin: Check = {
  rule: 'wound-too-thin',
  find: ({values}) =>
    (values.strings ?? []).flatMap(({gauge}, i) => {
      if (!gauge?.wound || gauge.mm >= thinnestWoundMm - 1e-9) return []
      const plain = gauge.text.replace(/ ?w$/i, '')
      return {
        at: `strings.${i + 1}.gauge`,
        message: `no wound string is as thin as ${gauge.text}; ${plain} is a plain string`,
        expected: [plain],
      }
    }),
}
