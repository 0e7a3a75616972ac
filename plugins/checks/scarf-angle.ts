import type {Check} from './check.ts'
import {degrees} from './degrees.ts'

/** A scarf sawn flatter or steeper than usual. */
export const scarfAngle: Check = {
  rule: 'scarf-angle',
  find: (_, {neck}) => {
    const scarf = neck?.scarf
    if (!scarf) return []
    const {angleDeg, leastDeg, mostDeg} = scarf
    if (angleDeg >= leastDeg - 1e-9 && angleDeg <= mostDeg + 1e-9) return []
    const isFlat = angleDeg < leastDeg
    return [
      {
        at: 'head.angle',
        message: `a scarf at ${degrees(angleDeg)}° is ${isFlat ? 'flatter than usual: long to saw, and the strings hardly go down behind the nut' : 'steeper than usual: little to glue, and a head that breaks when the instrument falls'}; ${isFlat ? leastDeg : mostDeg}° would do`,
        expected: [`${isFlat ? leastDeg : mostDeg}`],
      },
    ]
  },
}
