import {writeLength} from '../build-file/quantities/write-length.ts'
import {cutStock, type Saw, type StockPart} from '../cut-stock/cut-stock.ts'
import type {Cuts} from './cut-list.ts'
import type {WantedPart} from './design-parts.ts'
import type {Settled} from './settle.ts'
import type {PieceAtHand} from './stock-at-hand.ts'
import type {WouldDo} from './would-do.ts'

/** A part that found no piece. */
export interface Unplaced {
  partId: string
  nearest?: string | undefined
  lacks: string
  /** A size that some piece gives. */
  wouldDo?: WouldDo | undefined
}

type Wanted = WantedPart & {id: string}

/**
 * Say of each part that found no piece which one comes nearest, what it lacks and, for a single listed part, what
 * would fit.
 */
export function unplacedParts(unplaced: readonly Wanted[], cutting: Cutting, settled: Settled): Unplaced[] {
  const known = new Map<string, ReturnType<typeof nearestPiece>>()
  return unplaced.map((part) => {
    const key = [part.woodRow, part.lengthMm, part.widthMm, part.thicknessMm].join(' ')
    const near = known.get(key) ?? nearestPiece(part, cutting, settled)
    known.set(key, near)
    const {only, ...says} = near
    const isTried = only && unplaced.length === 1
    const wouldDo = isTried ? sizeThatFits(part, only, cutting, settled.rulerMm) : undefined
    return {partId: part.id, ...says, wouldDo}
  })
}

/** One measure that a piece falls short by, in mm. */
interface Lack {
  what: 'length' | 'width' | 'thickness'
  mm: number
}

/**
 * For a part that found no piece, name the piece that comes nearest and say what it lacks, in the build's units.
 * A piece of another wood comes last. `only` is what it lacks where that is a single measure.
 */
function nearestPiece(
  part: WantedPart,
  {pieces, saw}: Cutting,
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
  {what, mm: lacksMm}: Lack,
  {parts, pieces, saw}: Cutting,
  rulerMm: number,
): WouldDo | undefined {
  if (!part.of.startsWith('parts.') || parts.filter(({of}) => of === part.of).length > 1) return undefined
  const key = `${what}Mm` as const
  const mm = Math.floor((part[key] - lacksMm) / rulerMm + 1e-6) * rulerMm
  if (mm <= 0) return undefined
  const tried = parts.map((one) => (one.id === part.id ? {...one, [key]: mm} : one))
  const {unplaced} = cutStock(tried, pieces, saw, effort)
  return unplaced.length === 0 ? {path: `${part.of}.${what}`, mm} : undefined
}

/** The parts of one row that found no piece: the row's path, its first such part in words, and what is near it. */
interface UnplacedRow {
  of: string
  /** `inlay 1 and 2 more like it` */
  which: string
  /** `K1 comes nearest, and lacks 4 in of length` */
  near: string
  wouldDo?: WouldDo | undefined
}

/** Gather the parts that found no piece by the row of the file, or of the design, that they come from. */
export function unplacedRows({parts, unplaced}: Cuts): UnplacedRow[] {
  const byId = new Map(parts.map((part) => [part.id, part]))
  const rows = new Map<string, Unplaced[]>()
  for (const one of unplaced) {
    const {of} = byId.get(one.partId)!
    rows.set(of, [...(rows.get(of) ?? []), one])
  }
  return [...rows].map(([of, lacking]) => {
    const {partId, nearest, lacks, wouldDo} = lacking[0]!
    const {name} = byId.get(partId)!
    return {
      of,
      which: lacking.length > 1 ? `${name} and ${lacking.length - 1} more like it` : name,
      near: nearest ? `${nearest} comes nearest, and lacks ${lacks}` : lacks,
      wouldDo,
    }
  })
}
