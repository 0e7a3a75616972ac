import {writeLength} from '../../build-file/quantities/write-length.ts'
import type {Ruler} from '../lengths.ts'
import type {Wording} from './wording.ts'

/** Either the thickest string does not go through, or a ball end does. */
export function stringHole(
  {hole, ...facts}: {hole: string} & ({stringMm: number} | {ballMm: number}),
  ruler: Ruler,
): Wording {
  if ('stringMm' in facts) {
    const least = writeLength(facts.stringMm, ruler, 'up')
    return {
      message: `a string hole of ${hole} is too small for the thickest string; ${least} would do`,
      expected: [least],
    }
  }
  const most = writeLength(facts.ballMm - ruler.rulerMm, ruler, 'down')
  return {message: `a ball end slips through a string hole of ${hole}; ${most} holds it`, expected: [most]}
}
