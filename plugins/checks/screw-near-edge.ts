import {writeLength} from '../build-file/quantities/write-length.ts'
import type {Check} from './check.ts'
import {oneEach} from './one-each.ts'

/** A screw too near an edge or an end of a piece. */
export const screwNearEdge: Check = {
  rule: 'screw-near-edge',
  find: (_, {fasteners = [], screws = [], ...plan}) =>
    oneEach(
      fasteners.filter(({edge}) => edge),
      ({of, edge}) => edge?.wouldDo?.path ?? of,
      ({edge}) => edge!.needsMm - edge!.gapMm,
    ).map(({of, edge, stationMm, offMm}) => {
      const {piece, isEnd, gapMm, needsMm, wouldDo} = edge!
      const place = screws.find((one) => one.of === of && one.stationMm === stationMm && one.offMm === offMm)
      const text = wouldDo && writeLength(wouldDo.mm, plan)
      const found =
        gapMm < 0 ? 'misses' : `is ${writeLength(gapMm, plan, 'down')} from the ${isEnd ? 'end' : 'edge'} of`
      return {
        at: wouldDo?.path ?? place?.offPath ?? of,
        message: `this screw ${found} the ${piece}, and needs ${writeLength(needsMm, plan, 'up')} or the wood splits; ${text ? `${wouldDo.path.includes('.off') ? 'off' : 'a place'} ${text} would do` : 'take a thinner screw'}`,
        ...(text && {expected: [text]}),
      }
    }),
}
