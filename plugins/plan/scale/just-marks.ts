import {nearestMark} from '../../build-file/quantities/write-length.ts'
import {justIntervals} from '../../tables/intervals.ts'
import type {PlanPart} from '../part.ts'

/**
 * Place the pure intervals of the first octave on the side of a fretless neck: mm from the nut, the nearest mark of the
 * ruler, and the cents above the open string. Absent where the build is fretted, since frets say where notes are.
 */
export const justMarks: PlanPart = ({units, rulerMm}, {scale}) => {
  const lengthMm = scale?.lengthMm
  if (!scale || scale.fretted || lengthMm === undefined || !scale.lines?.length) return {}
  return {
    scale: {
      ...scale,
      justMarks: justIntervals.map(({name, over, under}) => {
        const fromNutMm = lengthMm * (1 - under / over)
        const mark = nearestMark(fromNutMm, {units, rulerMm})
        return {
          name,
          ratio: `${over}/${under}`,
          cents: 1200 * Math.log2(over / under),
          fromNutMm,
          mark: mark.text,
        }
      }),
    },
  }
}
