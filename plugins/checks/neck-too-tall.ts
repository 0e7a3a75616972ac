import {writeLength} from '../build-file/quantities/write-length.ts'
import type {Check} from './check.ts'

/** A neck that runs through and comes down into the box’s back. */
export const neckTooTall: Check = {
  rule: 'neck-too-tall',
  find: ({values}, {box, ...plan}) => {
    const neck = box?.neck
    if (neck?.tallestMm === undefined || neck.thicknessMm <= neck.tallestMm + 1e-6) return []
    const overMm = neck.thicknessMm - neck.tallestMm
    const over = writeLength(overMm, plan, 'up')
    const tallest = neck.tallestMm > 0 ? writeLength(neck.tallestMm, plan, 'down') : undefined
    const higher = writeLength(neck.aboveTopMm + overMm, plan, 'up')
    const isLayered = values.neck?.laminations !== undefined
    return [
      {
        at: isLayered || !tallest ? 'neck.above-top' : 'neck.thickness',
        message: `this neck runs through ${over} deeper than the inside of the box; ${tallest ? `a thickness of ${tallest} would do, or ` : ''}a playing face ${higher} above the top`,
        expected: [isLayered || !tallest ? higher : tallest],
        cause: 'box.depth',
      },
    ]
  },
}
