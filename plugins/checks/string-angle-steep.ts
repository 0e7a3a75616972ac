import {writeLength} from '../build-file/quantities/write-length.ts'
import type {Check} from './check.ts'
import {degrees} from './degrees.ts'

/** A string that goes down too steeply behind the nut. */
export const stringAngleSteep: Check = {
  rule: 'string-angle-steep',
  find: (_, {neck, strings, ...plan}) => {
    const {steepest, gentlerHead} = neck ?? {}
    if (!steepest) return []
    const name = strings?.[steepest.string]?.name ?? `string ${steepest.string + 1}`
    const {angleDeg, dropMm} = gentlerHead ?? {}
    const isDrop = neck?.head?.joint === 'straight'
    const text =
      angleDeg !== undefined
        ? degrees(angleDeg)
        : dropMm !== undefined
          ? writeLength(dropMm, plan)
          : undefined
    const mend = text
      ? `${isDrop ? `a drop of ${text}` : `a head at ${text}°`} would do`
      : 'move its post further back'
    return [
      {
        at: isDrop ? 'head.drop' : 'head.angle',
        message: `${name} goes down ${degrees(steepest.angleDeg)}° behind the nut, more than ${steepest.mostDeg}°, which makes it bind and hard to tune; ${mend}`,
        ...(text && {expected: [text]}),
      },
    ]
  },
}
