import {cutStock, type Saw, type StockPart} from '../../cut-stock/cut-stock.ts'
import type {WouldDo} from '../kit/would-do.ts'
import type {WantedPart} from './part.ts'
import type {PieceAtHand} from './stock-at-hand.ts'

/** A part that found no piece. */
export interface Unplaced {
  partId: string
  /** The piece that comes nearest; absent where none is listed. */
  nearest?: string | undefined
  lacks: Lacks
  /** A size that some piece gives. */
  wouldDo?: WouldDo | undefined
}

/** What the nearest piece lacks; nothing where it only has no room beside the other parts. */
export interface Lacks {
  sizes: {what: 'length' | 'width' | 'thickness'; mm: number}[]
  /** The wood that it is, where that is not the part's. */
  isOf?: string | undefined
}

type Wanted = WantedPart & {id: string}

/**
 * Say of each part that found no piece which one comes nearest, what it lacks and, for a single listed part, what
 * mark of the ruler would fit.
 */
export function unplacedParts(unplaced: readonly Wanted[], cutting: Cutting, rulerMm: number): Unplaced[] {
  const known = new Map<string, ReturnType<typeof nearestPiece>>()
  return unplaced.map((part) => {
    const key = [part.woodRow, part.lengthMm, part.widthMm, part.thicknessMm].join(' ')
    const near = known.get(key) ?? nearestPiece(part, cutting)
    known.set(key, near)
    const wouldDo = unplaced.length === 1 ? sizeThatFits(part, near.lacks, cutting, rulerMm) : undefined
    return {partId: part.id, ...near, wouldDo}
  })
}

/** Name the piece that comes nearest to a part, and what it lacks. A piece of another wood comes last. */
function nearestPiece(part: WantedPart, {pieces, saw}: Cutting): {nearest?: string; lacks: Lacks} {
  if (pieces.length === 0) return {lacks: {sizes: []}}
  const found = pieces.map((piece) => {
    const [from, to] = piece.clearMm ?? [0, piece.lengthMm]
    const usableMm = Math.min(to, piece.lengthMm) - Math.max(from, 0) - 2 * saw.trimMm
    const short: Lacks['sizes'] = [
      {what: 'length', mm: part.lengthMm - usableMm},
      {what: 'width', mm: part.widthMm - piece.widthMm},
      {what: 'thickness', mm: part.thicknessMm - piece.thicknessMm},
    ]
    const sizes = short.filter(({mm}) => mm > 1e-6)
    // Relative to the part: 1/16 in of thickness is as far off as several inches of length.
    const far = sizes.reduce((sum, {what, mm}) => sum + mm / part[`${what}Mm`], 0)
    return {piece, sizes, far, isOther: part.woodRow !== 'any' && part.woodRow !== piece.wood}
  })
  const {piece, sizes, isOther} = found.reduce((best, one) =>
    (Number(one.isOther) - Number(best.isOther) || one.far - best.far) < 0 ? one : best,
  )
  return {nearest: piece.id, lacks: {sizes, isOf: isOther ? piece.woodName : undefined}}
}

/** To try one other size no long search is needed. */
const effort = 200_000

/** All parts to cut, and what to cut them from. */
interface Cutting {
  parts: readonly (StockPart & {of: string})[]
  pieces: readonly PieceAtHand[]
  saw: Saw
}

/**
 * Where a single part that the file lists found no piece for want of one measure, give the largest mark of the ruler
 * (mm) at which the nearest piece gives it beside all the others.
 */
function sizeThatFits(
  part: Wanted,
  {sizes, isOf}: Lacks,
  {parts, pieces, saw}: Cutting,
  rulerMm: number,
): WouldDo | undefined {
  const [lack] = sizes
  if (!lack || sizes.length > 1 || isOf) return undefined
  if (!part.of.startsWith('parts.') || parts.filter(({of}) => of === part.of).length > 1) return undefined
  const key = `${lack.what}Mm` as const
  const mm = Math.floor((part[key] - lack.mm) / rulerMm + 1e-6) * rulerMm
  if (mm <= 0) return undefined
  const tried = parts.map((one) => (one.id === part.id ? {...one, [key]: mm} : one))
  const {unplaced} = cutStock(tried, pieces, saw, effort)
  return unplaced.length === 0 ? {path: `${part.of}.${lack.what}`, mm} : undefined
}
