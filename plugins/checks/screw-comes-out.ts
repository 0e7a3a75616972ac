import {writeLength} from '../build-file/quantities/write-length.ts'
import type {Check} from './check.ts'
import {oneEach} from './one-each.ts'

/** A screw whose tip comes out, or nearly. */
export const screwComesOut: Check = {
  rule: 'screw-comes-out',
  find: ({values}, {fasteners = [], ...plan}) =>
    oneEach(
      fasteners.filter(({lengthMm, longestMm = lengthMm}) => lengthMm > longestMm + 1e-6),
      ({of}) => of,
      ({lengthMm, longestMm = 0}) => lengthMm - longestMm,
    ).map(({of, tipToFaceMm = 0, longestMm = 0, shortestMm, farFace}) => {
      const longest = longestMm > 0 ? writeLength(longestMm, plan, 'down') : undefined
      const found =
        Math.abs(tipToFaceMm) < plan.rulerMm - 1e-6
          ? `ends level with ${farFace}`
          : tipToFaceMm <= 0
            ? `comes out ${writeLength(-tipToFaceMm, plan, 'up')} past ${farFace}`
            : `ends ${writeLength(tipToFaceMm, plan, 'down')} under ${farFace}`
      const length = values.screws?.[Number(of.split('.')[1]) - 1]?.length?.text
      return {
        at: `${of}.length`,
        message: `a screw of ${length} ${found}; ${longest ? `${longest} is the longest that stays ${writeLength(25.4 / 8, plan)} below it` : 'no screw is short enough'}`,
        ...(longest && {expected: [longest]}),
        ...(longestMm < shortestMm - 1e-6 && {
          note: 'A screw of that length has too little thread: take less wood under its head as well.',
        }),
      }
    }),
}
