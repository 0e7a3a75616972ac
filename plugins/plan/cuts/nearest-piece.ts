import {writeLength} from '../../build-file/quantities/write-length.ts'
import type {Settled} from '../part.ts'
import type {Saw, StockPiece} from '../stock/task.ts'
import type {WantedPart} from './wanted-part.ts'

/** One measure that a piece falls short by, in mm. */
export interface Lack {
  what: 'length' | 'width' | 'thickness'
  mm: number
}

/**
 * For a part that found no piece, name the piece that comes nearest and say what it lacks, in the build's units.
 * A piece of another wood comes last. `only` is what it lacks where that is a single measure.
 */
export function nearestPiece(
  part: WantedPart,
  pieces: readonly (StockPiece & {woodName: string})[],
  saw: Saw,
  {units, rulerMm}: Settled,
): {nearest?: string; lacks: string; only?: Lack} {
  if (pieces.length === 0) return {lacks: 'no piece is listed'}
  const finest = {units, rulerMm: Math.min(rulerMm, units === 'in' ? 25.4 / 64 : 0.1)}
  const shorts = pieces.map((piece) => {
    const [from, to] = piece.clearMm ?? [0, piece.lengthMm]
    const usableMm = Math.min(to, piece.lengthMm) - Math.max(from, 0) - 2 * saw.trimMm
    const short: Lack[] = [
      {what: 'length', mm: part.lengthMm - usableMm},
      {what: 'width', mm: part.widthMm - piece.widthMm},
      {what: 'thickness', mm: part.thicknessMm - piece.thicknessMm},
    ]
    const lacking = short.filter(({mm}) => mm > 1e-6)
    // Relative to the part: 1/16 in of thickness is as far off as several inches of length.
    const far = lacking.reduce((sum, {what, mm}) => sum + mm / part[`${what}Mm`], 0)
    return {piece, lacking, far, isOther: part.woodRow !== 'any' && part.woodRow !== piece.wood}
  })
  const {piece, lacking, isOther} = shorts.reduce((best, one) =>
    (Number(one.isOther) - Number(best.isOther) || one.far - best.far) < 0 ? one : best,
  )
  const measures = lacking.map(({what, mm}) => `${writeLength(mm, finest, 'up')} of ${what}`)
  const wood = isOther ? [`the right wood: it is ${piece.woodName}, not ${part.wood}`] : []
  const all = [...measures, ...wood]
  return {
    nearest: piece.id,
    lacks: all.length > 0 ? all.join(' and ') : 'room beside the other parts',
    ...(all.length === 1 && lacking.length === 1 && {only: lacking[0]!}),
  }
}
