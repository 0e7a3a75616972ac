import {cutStock, type SawnPiece} from '../cut-stock/cut-stock.ts'
import {blockParts, neckParts, sheetParts, smallPartMm, type WantedPart, woodRow} from './design-parts.ts'
import type {PlanPart, Settled} from './part.ts'
import type {Cuts} from './shape/stock.ts'
import {type PieceAtHand, stockAtHand} from './stock-at-hand.ts'
import {toBuy} from './to-buy.ts'
import {unplacedParts} from './unplaced-parts.ts'

/** List the parts that the file itself lists, cut as written; one of several carries its number. */
function listedParts({values}: Settled): WantedPart[] {
  return (values.parts ?? []).flatMap((part, i) => {
    if (!part.length || !part.width || !part.thickness) return []
    const count = part.count?.value ?? 1
    const name = part.name?.value ?? `part ${i + 1}`
    const isSmall = part.length.mm < smallPartMm
    const one = {
      ...woodRow(part),
      lengthMm: part.length.mm,
      widthMm: part.width.mm,
      thicknessMm: part.thickness.mm,
      why: `listed, cut as written${isSmall ? '; small, so cut it off its strip last' : ''}`,
      of: `parts.${i + 1}`,
    }
    return Array.from({length: count}, (_, k) => ({name: count > 1 ? `${name} ${k + 1}` : name, ...one}))
  })
}

/** How many parts the file lists in all. */
const listedCount = ({values}: Settled): number =>
  (values.parts ?? []).reduce((sum, part) => sum + (part.count?.value ?? 1), 0)

/** Give each part an id made of its name: lower-case, hyphens for everything else, a number where two would be alike. */
function withIds(parts: readonly WantedPart[]): (WantedPart & {id: string})[] {
  const used = new Set<string>()
  const last = new Map<string, number>()
  return parts.map((part) => {
    const plain =
      part.name
        .toLowerCase()
        .replace(/[^\p{L}\p{N}]+/gu, '-')
        .replace(/^-+|-+$/g, '') || 'part'
    let id = plain
    for (let n = last.get(plain) ?? 2; used.has(id); n++) {
      id = `${plain}-${n}`
      last.set(plain, n + 1)
    }
    used.add(id)
    return {...part, id}
  })
}

/** More parts than this in one build are a slip of the pen. */
const mostParts = 20_000

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
