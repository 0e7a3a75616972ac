import {writeLength} from '../build-file/quantities/write-length.ts'
import type {Check} from './check.ts'
import {oneEach} from './one-each.ts'

/** A screw that is to go through or into a block, where there is none. */
export const screwMissesBlock: Check = {
  rule: 'screw-misses-block',
  find: (_, {box, fasteners = [], screws = [], ...plan}) =>
    oneEach(
      fasteners.filter(({astray}) => astray),
      ({of, stationMm, astray}) => astray?.wouldDo?.path ?? (box?.blocks ? `${of} ${stationMm}` : of),
      () => 0,
    ).map(({of, astray, stationMm, offMm, into}) => {
      const place = screws.find((one) => one.of === of && one.stationMm === stationMm && one.offMm === offMm)
      const text = astray?.wouldDo && writeLength(astray.wouldDo.mm, plan)
      return {
        at: astray?.wouldDo?.path ?? (box?.blocks ? place?.offPath : `${of}.through`) ?? of,
        message: `this screw is to go ${into === 'block' ? 'into' : 'through'} a block, and ${box?.blocks ? 'none is there' : 'the file has none under box.blocks'}${text ? `; ${text} meets the middle of the nearest` : ''}`,
        ...(text && {expected: [text]}),
      }
    }),
}
