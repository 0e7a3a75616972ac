import {thinnestWrapIn} from '../tables/string-wraps.ts'
import type {Check} from './check.ts'

const thinnestWrapMm = thinnestWrapIn * 25.4

/** A core that leaves no room for a wrap inside the gauge of its wound string. */
export const coreNotInside: Check = {
  rule: 'core-not-inside',
  find: ({values}) =>
    (values.strings ?? []).flatMap(({gauge, core}, i) => {
      if (!gauge?.wound || !core || core.mm + 2 * thinnestWrapMm <= gauge.mm + 1e-9) return []
      const found = core.mm >= gauge.mm ? 'is no thinner than the whole string' : 'leaves no room for a wrap'
      return {
        at: `strings.${i + 1}.core`,
        message: `a core of ${core.text} ${found}, ${gauge.text}; leave it out, and the usual one is taken`,
        cause: `strings.${i + 1}.gauge`,
      }
    }),
}
