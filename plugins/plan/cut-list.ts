import {cutStock, type SawnPiece} from '../cut-stock/cut-stock.ts'
import {blockParts, neckParts, sheetParts, smallPartMm, type WantedPart, woodRow} from './design-parts.ts'
import type {PlanPart, Settled} from './part.ts'
import {type PieceAtHand, stockAtHand} from './stock-at-hand.ts'
import {toBuy} from './to-buy.ts'
import {unplacedParts} from './unplaced-parts.ts'
import type {WouldDo} from './would-do.ts'

export interface Cuts {
  parts: Part[]
  pieces: SawnPieceShape[]
  /** How many pieces are cut. */
  used: number
  /** Boards to buy for what is unplaced. */
  bought: {
    /** Nominal, as shops name it. */
    size: string
    wood: string
    lengthMm: number
    widthMm: number
    /** Dressed. */
    thicknessMm: number
    count: number
    /** Of all of them; hardwood only. */
    boardFeet?: number | undefined
  }[]
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
  unplaced: {
    partId: string
    nearest?: string | undefined
    lacks: string
    /** A size that some piece gives. */
    wouldDo?: WouldDo | undefined
  }[]
  /** The build lists pieces, or takes them from the rack. */
  hasStock: boolean
  kerfMm: number
  trimMm: number
}

export interface Part {
  id: string
  name: string
  /** As written; any where the file does not say. */
  wood: string
  /** As sawn. */
  lengthMm: number
  widthMm: number
  thicknessMm: number
  /** Why it has its size. */
  why: string
  /** The path of the build file it comes from. */
  of: string
  /** So short that it is cut off its strip last. */
  isSmall: boolean
}

export interface SawnPieceShape {
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
  strips: {
    widthMm: number
    /** From the first edge. */
    acrossMm: number
    cuts: {
      partId: string
      /** From the end that clear counts from. */
      atMm: number
      lengthMm: number
      /** Of the part; less than the strip’s where the rest is ripped off. */
      widthMm: number
    }[]
  }[]
  /** Those that go back on the rack, the longest first. */
  offcuts: {
    lengthMm: number
    widthMm: number
    thicknessMm: number
    atMm: number
    acrossMm: number
  }[]
}

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
