import {writeLength} from '../build-file/quantities/write-length.ts'
import {rule} from './rule.ts'

export const headRules = {
  'head-too-thick': rule({
    severity: 'warning',
    what: 'A head too thick for its tuners.',
    why: 'The posts would not come far enough through the face to wind a string on.',
    mend: 'Thin the head, or buy tuners with longer posts.',
    find: (_, {neck, ...plan}) => {
      const {thicknessMm, mostMm} = neck?.head ?? {}
      if (thicknessMm === undefined || mostMm === undefined || thicknessMm <= mostMm + 1e-6) return []
      const most = writeLength(mostMm, plan, 'down')
      return [
        {
          at: 'head.thickness',
          message: `the head is ${writeLength(thicknessMm, plan)} thick, too thick for the tuners’ posts to come through; ${most} is the most`,
          expected: [most],
        },
      ]
    },
  }),
  'head-too-thin': rule({
    severity: 'warning',
    what: 'A head too thin for its tuners.',
    why: 'The bushings would not seat, and the small screws would come through the face.',
    mend: 'Leave the head thicker, or glue a plate on its face.',
    find: (_, {neck, ...plan}) => {
      const {thicknessMm, leastMm} = neck?.head ?? {}
      if (thicknessMm === undefined || leastMm === undefined || thicknessMm >= leastMm - 1e-6) return []
      const least = writeLength(leastMm, plan, 'up')
      return [
        {
          at: 'head.thickness',
          message: `the head is ${writeLength(thicknessMm, plan)} thick, too thin for the tuners to be screwed and bushed; they need ${least}`,
          expected: [least],
        },
      ]
    },
  }),
  'scarf-angle': rule({
    severity: 'remark',
    what: 'A scarf outside 7° to 18°.',
    why: 'Flatter ones are long and bend the strings little; steeper ones have little to glue and break easily.',
    mend: 'Lean the head as usual, unless there is a reason.',
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
  }),
  'string-angle-flat': rule({
    severity: 'warning',
    what: 'A string that goes down less than 4° behind the nut.',
    why: 'It rattles in its slot or jumps out of it.',
    mend: 'Put in a retainer, lean the head more, or move the post nearer.',
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
  }),
  'string-angle-steep': rule({
    severity: 'warning',
    what: 'A string that goes down more than 20° behind the nut.',
    why: 'It binds at the nut, and pitch jumps when it is tuned.',
    mend: 'Lean the head less, or move the post further back.',
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
  }),
}

/** Write an angle in degrees to a tenth, without idle zeros: `6.9`. */
function degrees(deg: number): string {
  return String(Number(deg.toFixed(1)))
}
