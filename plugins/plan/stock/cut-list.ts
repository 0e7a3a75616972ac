import type {BuildValues} from '../../build-file/schema/schema.ts'
import {cutStock, type SawnPiece} from '../../cut-stock/cut-stock.ts'
import type {Context} from '../kit/context.ts'
import type {Settled} from '../kit/settled.ts'
import type {Neck} from '../neck/neck.ts'
import {designParts} from './design-parts.ts'
import {type Part, smallPartMm, type WantedPart, woodRow} from './part.ts'
import {type PieceAtHand, stockAtHand} from './stock-at-hand.ts'
import {type Bought, toBuy} from './to-buy.ts'
import {type Unplaced, unplacedParts} from './unplaced-parts.ts'

export interface Cuts {
  parts: Part[]
  pieces: CutPiece[]
  /** How many pieces are cut. */
  used: number
  /** Boards to buy for what is unplaced. */
  bought: Bought[]
  /** Neither part nor kept offcut, of the volume of the pieces cut. */
  wasteFraction: number
  /** The proven least that used can be. */
  bound: number
  /** No plan is better on the first two aims: the most volume placed, out of the least volume cut. */
  proven: boolean
  /** How far at most the volume cut lies above the least, where it is not proven. */
  gapFraction: number
  /** How many widths the fence is set to. */
  fenceSettings: number
  unplaced: Unplaced[]
  /** The build lists pieces, or takes them from the rack. */
  hasStock: boolean
  kerfMm: number
  trimMm: number
}

/** A piece that is cut (mm). */
export interface CutPiece {
  /** One of several alike is A4.1. */
  id: string
  /** As the build or the rack lists it. */
  stockId: string
  wood: string
  lengthMm: number
  widthMm: number
  thicknessMm: number
  /** Where the squared, clear length starts, from the end that clear counts from. */
  fromMm: number
  toMm: number
  /** Ripped end to end, in the order sawn; each is then crosscut. */
  strips: SawnPiece['strips']
  /** Those that go back on the rack, the longest first. */
  offcuts: SawnPiece['offcuts']
  /** The day it came into the shop. */
  bought?: string | undefined
  remark?: string | undefined
  /** It stands on the rack, wherever the build lists it: its offcuts go back by its name. */
  onRack?: true | undefined
}

/** More parts than this in one build are a slip of the pen. */
const mostParts = 20_000

/** Say how many parts the file lists, where those are more than can be planned. */
export function partsTooMany({parts = []}: BuildValues): {count: number; most: number} | undefined {
  const count = parts.reduce((sum, part) => sum + (part.count?.value ?? 1), 0)
  return count > mostParts ? {count, most: mostParts} : undefined
}

/**
 * Plan the cutting (mm): the parts that the design implies and the file lists, which piece of the build's own stock or
 * of the rack gives which, what is left over, and what to buy for parts that no piece gives. Absent while there are no
 * parts, or too many.
 */
export function planCuts(
  settled: Settled,
  neck: Neck | undefined,
  rack: Context['pieces'],
): Cuts | undefined {
  const {values, rulerMm} = settled
  if (partsTooMany(values)) return undefined
  const wanted = withIds([...designParts(values, neck), ...listedParts(values)])
  if (wanted.length === 0) return undefined
  const saw = {kerfMm: values.saw?.kerf?.mm ?? 0, trimMm: values.saw?.trim?.mm ?? 0}
  const pieces = stockAtHand(values, rack, wanted.length)
  const parts = wanted.map(({id, of, woodRow: wood, lengthMm, widthMm, thicknessMm}) => ({
    id,
    of,
    wood,
    lengthMm,
    widthMm,
    thicknessMm,
  }))
  const plan = cutStock(parts, pieces, saw)
  const left = new Set(plan.unplaced)
  const onRack = new Set(rack.map(({id}) => id))
  const unplaced = wanted.filter(({id}) => left.has(id))
  const {used, bound, proven, gapFraction, wasteFraction, fenceSettings} = plan
  return {
    parts: wanted.map(({woodRow, ...part}) => ({...part, isSmall: part.lengthMm < smallPartMm})),
    pieces: plan.pieces.map((sawn) => {
      const piece = cutPiece(sawn, pieces[sawn.index]!)
      return onRack.has(piece.id) ? {...piece, onRack: true} : piece
    }),
    used,
    bought: toBuy(unplaced, saw),
    wasteFraction,
    bound,
    proven,
    gapFraction,
    fenceSettings,
    unplaced: unplacedParts(unplaced, {parts, pieces, saw}, rulerMm),
    hasStock: pieces.length > 0,
    ...saw,
  }
}

function cutPiece({fromMm, toMm, strips, offcuts}: SawnPiece, piece: PieceAtHand): CutPiece {
  const {woodName: wood, id, stockId, lengthMm, widthMm, thicknessMm, bought, remark} = piece
  return {id, stockId, wood, lengthMm, widthMm, thicknessMm, fromMm, toMm, strips, offcuts, bought, remark}
}

/** List the parts that the file itself lists, cut as written; one of several carries its number. */
function listedParts({parts = []}: BuildValues): WantedPart[] {
  return parts.flatMap((part, i) => {
    if (!part.length || !part.width || !part.thickness) return []
    const count = part.count?.value ?? 1
    const called = part.name
      ? {is: 'part' as const, own: part.name.value}
      : {is: 'part' as const, number: i + 1}
    const one = {
      ...woodRow(part),
      lengthMm: part.length.mm,
      widthMm: part.width.mm,
      thicknessMm: part.thickness.mm,
      why: 'listed' as const,
      of: `parts.${i + 1}`,
    }
    return Array.from({length: count}, (_, k) => ({
      called: count > 1 ? {...called, copy: k + 1} : called,
      ...one,
    }))
  })
}

/** Give each part an id made of what it is: lower-case, hyphens for everything else, a number where two would be alike. */
function withIds(parts: readonly WantedPart[]): (WantedPart & {id: string})[] {
  const used = new Set<string>()
  const last = new Map<string, number>()
  return parts.map((part) => {
    const {is, own = is, number, strip, copy} = part.called
    const plain =
      [own, number, strip && 'strip', strip, copy]
        .filter((one) => one !== undefined)
        .join(' ')
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
