import {writeLength} from '../build-file/quantities/write-length.ts'

/** Say how near one thing is to another (mm), never nearer than the ruler tells: `is only 1/16 in from`, `touches`. */
export function howNear(gapMm: number, ruler: {units: 'in' | 'mm'; rulerMm: number}): string {
  return gapMm < ruler.rulerMm - 1e-6 ? 'touches' : `is only ${writeLength(gapMm, ruler, 'down')} from`
}
