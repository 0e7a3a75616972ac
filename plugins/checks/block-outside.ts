import {writeLength} from '../build-file/quantities/write-length.ts'
import type {Check} from './check.ts'

/** A block that does not fit inside the box where the file puts it. */
export const blockOutside: Check = {
  rule: 'block-outside',
  find: (_, {box, ...plan}) =>
    (box?.blocks ?? []).flatMap(({of, overWallMm = 0, wouldDo}) => {
      if (overWallMm <= plan.rulerMm + 1e-6) return []
      const {lengthMm, widthMm, heightMm} = box!.inside!
      const text = wouldDo && writeLength(wouldDo.mm, plan)
      const inside = [lengthMm, widthMm, heightMm].map((mm) => writeLength(mm, plan, 'down'))
      return [
        {
          at: wouldDo?.path ?? of,
          message: `this block reaches ${writeLength(overWallMm, plan, 'up')} into a wall; inside, the box is ${inside[0]} long, ${inside[1]} wide and ${inside[2]} high${text ? `: ${wouldDo.path.split('.').at(-1)} ${text} would do` : ''}`,
          ...(text && {expected: [text]}),
        },
      ]
    }),
}
