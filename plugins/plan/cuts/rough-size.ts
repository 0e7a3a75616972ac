import {writeLength} from '../../build-file/quantities/write-length.ts'
import type {Settled} from '../part.ts'

export interface Size {
  lengthMm: number
  widthMm: number
  thicknessMm: number
}

/** Added at each end of a part that the design implies (mm): common practice, no source. */
export const endAllowanceMm = 25.4 / 2

/** Shorter than this a part is cut off its strip last of all (mm): common practice, no source. */
export const smallPartMm = 12 * 25.4

/**
 * Add what planing takes off each face, and the allowance at each end, to a finished size (mm), and say so.
 * `lengthWhy` stands for the finished length where that already counts the ends.
 */
export function roughSize(
  finished: Size,
  {values, units, rulerMm}: Settled,
  lengthWhy?: string,
): Size & {why: string} {
  const planeMm = values.saw?.plane?.mm ?? 0
  const finest = {units, rulerMm: Math.min(rulerMm, units === 'in' ? 25.4 / 64 : 0.1)}
  const size = (mm: number) => writeLength(mm, finest)
  const lengthMm = lengthWhy ? finished.lengthMm : finished.lengthMm + 2 * endAllowanceMm
  const ends = `${size(finished.lengthMm)} long, and ${size(endAllowanceMm)} more at each end`
  const small = lengthMm < smallPartMm ? '; small, so plane the strip first and cut this off it last' : ''
  return {
    lengthMm,
    widthMm: finished.widthMm + 2 * planeMm,
    thicknessMm: finished.thicknessMm + 2 * planeMm,
    why: `${lengthWhy ?? ends}; ${size(finished.widthMm)} by ${size(finished.thicknessMm)} once ${size(planeMm)} is planed off each face${small}`,
  }
}
