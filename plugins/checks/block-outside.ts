import {writeLength} from '../build-file/quantities/write-length.ts'
import type {Check} from './check.ts'

/** A block that does not fit inside the box where the file puts it. */
export const blockOutside: Check = {
  rule: 'block-outside',
  find: (_, {box, ...plan}) =>
    (box?.blocks ?? []).flatMap(({of, overWallMm = 0}) =>
      overWallMm <= plan.rulerMm + 1e-6
        ? []
        : [
            {
              at: of,
              message: `this block reaches ${writeLength(overWallMm, plan, 'up')} into a wall of the box; the inside is ${writeLength(box!.inside!.lengthMm, plan, 'down')} long, ${writeLength(box!.inside!.widthMm, plan, 'down')} wide and ${writeLength(box!.inside!.heightMm, plan, 'down')} high: make it smaller, or move its middle`,
            },
          ],
    ),
}
