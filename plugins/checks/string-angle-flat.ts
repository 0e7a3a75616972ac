import type {Check} from './check.ts'
import {degrees} from './degrees.ts'

/** A string that hardly goes down behind the nut, with nothing to hold it there. */
export const stringAngleFlat: Check = {
  rule: 'string-angle-flat',
  find: (_, {neck, strings}) => {
    const {flattest} = neck ?? {}
    if (!flattest || neck?.head?.retainer) return []
    const name = strings?.[flattest.string]?.name ?? `string ${flattest.string + 1}`
    const found =
      flattest.angleDeg <= 0
        ? `${name} does not go down behind the nut at all`
        : `${name} goes down only ${degrees(flattest.angleDeg)}° behind the nut`
    return [
      {
        at: 'head.retainer',
        message: `${found}, where it needs ${flattest.leastDeg}° to stay in its slot; a retainer would do: a bar across the strings, or a screw`,
        expected: ['bar'],
      },
    ]
  },
}
