import * as words from '../words/findings/head.ts'
import {rule} from './rule.ts'

const tuners = 'tuners: {post-hole: 1/4, at: [-2, -4 1/2, -3 1/4], off: [-7/16, -7/16, 7/16]}'

export const headRules = {
  'face-before-nut': rule({
    severity: 'fault',
    what: 'A fingerboard or a face that ends in front of the nut, or under it.',
    why: 'The heights of the strings count from it, and the nut would stand beside it; a groove or a zero fret’s slot would break out of its end.',
    mend: 'Let it begin at the nut line, or behind it where the nut is let into it.',
    passes: 'nut: {kind: flat}\nfingerboard: {thickness: 1/4, from: 0}\nneck: 1 5/8 x 1',
    fails: 'nut: {kind: flat}\nfingerboard: {thickness: 1/4, from: 1/2}\nneck: 1 5/8 x 1',
    find: (_, {nut, neck}) => {
      const {nutFace} = neck ?? {}
      if (!nutFace) return []
      const severity = nutFace.isBeforeNut ? undefined : ('warning' as const)
      return [{...nutFace, at: `${nutFace.of}.from`, cause: 'nut.kind', severity, kind: nut?.kind}]
    },
    says: words.faceBeforeNut,
  }),
  'face-over-slope': rule({
    severity: 'warning',
    what: 'A face that goes on past the place where the head’s slope starts.',
    why: 'It is glued on after the scarf, and would lie hollow over the slope.',
    mend: 'Let it end at the ledge, or make the ledge longer.',
    passes: 'head: {ledge: 1/4}\nfingerboard: {thickness: 1/4, from: -1/4}\nneck: 1 5/8 x 1',
    fails: 'head: {ledge: 1/4}\nfingerboard: {thickness: 1/4, from: -3/4}\nneck: 1 5/8 x 1',
    find: (_, {neck, rulerMm}) => {
      const {hollow, ledgeMm = 0} = neck?.head ?? {}
      if (!hollow || hollow.byMm <= rulerMm + 1e-6) return []
      return [{at: `${hollow.of}.from`, cause: 'head.ledge', byMm: hollow.byMm, ledgeMm}]
    },
    says: words.faceOverSlope,
  }),
  'head-thicker-than-stick': rule({
    severity: 'fault',
    what: 'A head thicker than the stick that it is planed from.',
    why: 'Wood that is not there cannot be planed to size.',
    mend: 'Thin the head, glue a plate on its face, or take a thicker stick.',
    passes: 'neck: {width: 1 5/8, thickness: 3/4}\nhead: {thickness: 3/4}',
    fails: 'neck: {width: 1 5/8, thickness: 3/4}\nhead: {thickness: 13/16}',
    find: ({values}, {neck}) => {
      const {thicknessMm = 0, comesToMm} = neck?.head ?? {}
      if (comesToMm === undefined || thicknessMm <= comesToMm + 1e-6) return []
      return [{at: 'head.thickness', cause: 'neck', thickness: values.head?.thickness?.text, comesToMm}]
    },
    says: words.headThickerThanStick,
  }),
  'head-too-thick': rule({
    severity: 'warning',
    what: 'A head too thick for its tuners.',
    why: 'The posts would not come far enough through the face to wind a string on.',
    mend: 'Thin the head, or buy tuners with longer posts.',
    passes: `head: {thickness: 9/16}\n${tuners}`,
    fails: `head: {thickness: 7/8}\n${tuners}`,
    find: (_, {neck}) => {
      const {thicknessMm, mostMm} = neck?.head ?? {}
      if (thicknessMm === undefined || mostMm === undefined || thicknessMm <= mostMm + 1e-6) return []
      return [{at: 'head.thickness', thicknessMm, mostMm}]
    },
    says: words.headTooThick,
  }),
  'head-too-thin': rule({
    severity: 'warning',
    what: 'A head too thin for its tuners.',
    why: 'The bushings would not seat, and the small screws would come through the face.',
    mend: 'Leave the head thicker, or glue a plate on its face.',
    passes: `head: {thickness: 9/16}\n${tuners}`,
    fails: `head: {thickness: 1/4}\n${tuners}`,
    find: (_, {neck}) => {
      const {thicknessMm, leastMm} = neck?.head ?? {}
      if (thicknessMm === undefined || leastMm === undefined || thicknessMm >= leastMm - 1e-6) return []
      return [{at: 'head.thickness', thicknessMm, leastMm}]
    },
    says: words.headTooThin,
  }),
  'scarf-angle': rule({
    severity: 'remark',
    what: 'A scarf outside 7° to 18°.',
    why: 'Flatter ones are long and bend the strings little; steeper ones have little to glue and break easily.',
    mend: 'Lean the head as usual, unless there is a reason.',
    passes: 'head: {joint: scarf, angle: 14}',
    fails: 'head: {joint: scarf, angle: 20}',
    find: (_, {neck}) => {
      const scarf = neck?.scarf
      if (!scarf) return []
      const {angleDeg, leastDeg, mostDeg} = scarf
      if (angleDeg >= leastDeg - 1e-9 && angleDeg <= mostDeg + 1e-9) return []
      return [{at: 'head.angle', angleDeg, leastDeg, mostDeg}]
    },
    says: words.scarfAngle,
  }),
  'string-angle-flat': rule({
    severity: 'warning',
    what: 'A string that goes down less than 4° behind the nut.',
    why: 'It rattles in its slot or jumps out of it.',
    mend: 'Put in a retainer, lean the head more, or move the post nearer.',
    passes:
      'head: {angle: 14}\ntuners: {at: [-2, -4 1/2, -3 1/4], off: [-7/16, -7/16, 7/16], string-height: 3/8}',
    fails:
      'head: {angle: 14}\ntuners: {at: [-2, -4 1/2, -3 1/4], off: [-7/16, -7/16, 7/16], string-height: 1/2}',
    find: (_, {neck, strings}) => {
      const {flattest} = neck ?? {}
      if (!flattest || neck?.head?.retainer) return []
      return [{...flattest, at: 'head.retainer', name: nameOf(flattest.string, strings)}]
    },
    says: words.stringAngleFlat,
  }),
  'string-angle-steep': rule({
    severity: 'warning',
    what: 'A string that goes down more than 20° behind the nut.',
    why: 'It binds at the nut, and pitch jumps when it is tuned.',
    mend: 'Lean the head less, or move the post further back.',
    passes:
      'head: {angle: 17}\ntuners: {at: [-1 1/8, -4 1/2, -3 1/4], off: [-7/16, -7/16, 7/16], string-height: 0}',
    fails:
      'head: {angle: 18}\ntuners: {at: [-1 1/8, -4 1/2, -3 1/4], off: [-7/16, -7/16, 7/16], string-height: 0}',
    find: (_, {neck, strings}) => {
      const {steepest, gentlerHead: gentler} = neck ?? {}
      if (!steepest) return []
      const isDrop = neck?.head?.joint === 'straight'
      return [
        {
          ...steepest,
          at: isDrop ? 'head.drop' : 'head.angle',
          name: nameOf(steepest.string, strings),
          isDrop,
          gentler,
        },
      ]
    },
    says: words.stringAngleSteep,
  }),
}

const nameOf = (at: number, strings: readonly {name: string}[] = []): string =>
  strings[at]?.name ?? `string ${at + 1}`
