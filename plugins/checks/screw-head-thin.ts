import {writeLength} from '../build-file/quantities/write-length.ts'
import type {Check} from './check.ts'
import {oneEach} from './one-each.ts'

/** A screw head on thin wood, with neither block nor washer to spread it. */
export const screwHeadThin: Check = {
  rule: 'screw-head-thin',
  find: (_, {fasteners = [], ...plan}) =>
    oneEach(
      fasteners.filter(
        ({underHeadMm, leastUnderHeadMm, hasPad}) => !hasPad && underHeadMm < leastUnderHeadMm - 1e-6,
      ),
      ({of}) => of,
      ({underHeadMm}) => -underHeadMm,
    ).map(({of, underHeadMm, through, joinsNeck}) => ({
      at: `${of}.through`,
      message: `the head pulls on ${writeLength(underHeadMm, plan)} of wood, and would sink in or split it; put a washer under it, or a block`,
      expected: [`[washer, ${through.join(', ')}]`],
      ...(!joinsNeck && {severity: 'remark' as const}),
    })),
}
