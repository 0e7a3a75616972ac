import type {PlanPart} from '../part.ts'
import type {Cuts} from '../shape/stock.ts'
import {cutStock} from '../stock/cut-stock.ts'
import type {SawnPiece} from '../stock/sawn-piece.ts'
import {blockParts} from './block-parts.ts'
import {listedCount, listedParts} from './listed-parts.ts'
import {neckParts} from './neck-parts.ts'
import {smallPartMm} from './rough-size.ts'
import {sheetParts} from './sheet-parts.ts'
import {type PieceAtHand, stockAtHand} from './stock-at-hand.ts'
import {toBuy} from './to-buy.ts'
import {unplacedParts} from './unplaced-parts.ts'
import {withIds} from './with-ids.ts'

/** More parts than this in one build are a slip of the pen. */
export const mostParts = 20_000

/**
 * Plan the cutting (mm): the parts that the design implies and the file lists, which piece gives which, what is left
 * over, and what to buy for parts that no piece gives. Absent while there are no parts.
 */
export const cuts: PlanPart = (settled, soFar, context) => {
  const listed = listedCount(settled)
  if (listed > mostParts) return {tooManyParts: {count: listed, most: mostParts}}
  const wanted = withIds([
    ...neckParts(settled, soFar),
    ...sheetParts(settled, soFar),
    ...blockParts(settled),
    ...listedParts(settled),
  ])
  if (wanted.length === 0) return {}
  const {kerf, trim} = settled.values.saw ?? {}
  const saw = {kerfMm: kerf?.mm ?? 0, trimMm: trim?.mm ?? 0}
  const pieces = stockAtHand(settled, context, wanted.length)
  const parts = wanted.map(({woodRow, ...part}) => ({...part, wood: woodRow}))
  const plan = cutStock(parts, pieces, saw)
  const left = new Set(plan.unplaced)
  const unplaced = wanted.filter(({id}) => left.has(id))
  const {used, bound, proven, gapFraction, wasteFraction, fenceSettings} = plan
  return {
    cuts: {
      parts: wanted.map(({id, name, wood, lengthMm, widthMm, thicknessMm, why, of}) => ({
        id,
        name,
        wood,
        lengthMm,
        widthMm,
        thicknessMm,
        why,
        of,
        isSmall: lengthMm < smallPartMm,
      })),
      pieces: plan.pieces.map((sawn) => pieceShape(sawn, pieces[sawn.index]!)),
      used,
      bought: toBuy(unplaced, saw),
      wasteFraction,
      bound,
      proven,
      gapFraction,
      fenceSettings,
      unplaced: unplacedParts(unplaced, {parts, pieces, saw, settled}),
      hasStock: pieces.length > 0,
      ...saw,
    },
  }
}

function pieceShape({fromMm, toMm, strips, offcuts}: SawnPiece, piece: PieceAtHand): Cuts['pieces'][number] {
  const {id, stockId, woodName, lengthMm, widthMm, thicknessMm} = piece
  return {id, stockId, wood: woodName, lengthMm, widthMm, thicknessMm, fromMm, toMm, strips, offcuts}
}
