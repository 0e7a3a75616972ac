import {nearest} from '../../build-file/schema/nearest.ts'
import type {BuildValues} from '../../build-file/schema/schema.ts'
import type {StockPiece} from '../../cut-stock/cut-stock.ts'
import {type Context, listedAs} from '../kit/context.ts'
import {woodRow} from './part.ts'

export interface StockTrouble {
  kind: 'twice' | 'unknown' | 'cut' | 'later' | 'reserved' | 'differs' | 'unsized' | 'clear'
  /** The path of the value to change. */
  at: string
  id: string
  /** The path of the other one, where a piece is named twice. */
  other?: string | undefined
  /** The build that cut it, or that it comes from. */
  by?: string | undefined
  /** The day it came into the shop. */
  on?: string | undefined
  /** A piece that is there and may be meant. */
  nearest?: string | undefined
  /** The size that is missing, or that differs from the rack's. */
  size?: 'length' | 'width' | 'thickness' | undefined
  /** What would do. */
  mm?: number | undefined
}

/** A piece that this build may cut. */
export interface PieceAtHand extends StockPiece {
  /** As the file or the rack names it; one of several alike is `A4.1`, listed as `A4`. */
  stockId: string
  woodName: string
  /** From the rack, not listed by the build itself. */
  isFromRack: boolean
  /** The day it came into the shop. */
  bought?: string | undefined
  remark?: string | undefined
}

/**
 * List the pieces that a build names: its own stock in file order, then those it takes from the rack, each once. A
 * piece of one name in both is one board; listed without its sizes it has those of the rack.
 */
export function stockAtHand(values: BuildValues, rack: Context['pieces'], mostAlike: number): PieceAtHand[] {
  const own = (values.stock ?? []).flatMap((piece, i): PieceAtHand[] => {
    const {length, width, thickness, clear} = piece
    if (!length || !width || !thickness) return []
    const count = piece.count?.value ?? 1
    const stockId = pieceId(piece, i)
    const {wood: woodName, woodRow: wood} = woodRow(piece)
    const [from, to] = clear ?? []
    return Array.from({length: Math.min(count, mostAlike)}, (_, k) => ({
      id: count > 1 ? `${stockId}.${k + 1}` : stockId,
      stockId,
      wood,
      woodName,
      lengthMm: length.mm,
      widthMm: width.mm,
      thicknessMm: thickness.mm,
      isFromRack: false,
      bought: piece.bought?.iso,
      remark: piece.remark?.value,
      ...(from && to && {clearMm: [from.mm, to.mm] as const}),
    }))
  })
  const unsizedIds = (values.stock ?? []).flatMap((piece) =>
    piece.id && missingSize(piece) ? piece.id.value : [],
  )
  const taken = new Set([...(values.take ?? []).map(({value}) => value), ...unsizedIds])
  const owned = new Set(own.map(({id}) => id))
  const fromRack = rack
    .filter(({id}) => !owned.has(id) && (taken.has(id) || taken.has(listedAs(id))))
    .map(({id, wood, lengthMm, widthMm, thicknessMm, clearMm, bought, remark}): PieceAtHand => {
      const named = woodRow({wood: {value: wood}})
      const sizes = {lengthMm, widthMm, thicknessMm, ...(clearMm && {clearMm})}
      return {
        id,
        stockId: id,
        wood: named.woodRow,
        woodName: named.wood,
        ...sizes,
        isFromRack: true,
        bought,
        remark,
      }
    })
  return [...own, ...fromRack]
}

/**
 * List what is wrong with what a build names of the rack, and with its wood: a piece named twice, one that is not
 * there, used before by another build, not there yet on its day, or reserved by another one too; a board of its own that
 * the rack has in another size; a size that is missing, a clear length that does not lie on its piece (mm).
 */
export function planStockTroubles(values: BuildValues, context: Context): StockTrouble[] | undefined {
  const {stock = [], take = [], parts = []} = values
  const listed = stock.flatMap(({id}, i) => (id ? [{id: id.value, at: `stock.${i + 1}.id`}] : []))
  const taken = take.map(({value}, i) => ({id: value, at: `take.${i + 1}`}))
  const found: StockTrouble[] = [
    ...twice([...listed, ...taken]),
    ...taken.flatMap((one) => notThere(one, context)),
    ...listed.flatMap((one) => usedBefore(one, context)),
    ...[...listed, ...taken].flatMap((one) => reserved(one, context)),
    ...stock.flatMap((piece, i) => differing(piece, `stock.${i + 1}`, context)),
    ...stock.flatMap((piece, i) =>
      onRack(piece, context) ? [] : unsized(piece, `stock.${i + 1}`, pieceId(piece, i)),
    ),
    ...parts.flatMap((part, i) => unsized(part, `parts.${i + 1}`, part.name?.value ?? `part ${i + 1}`)),
    ...stock.flatMap(unclear),
  ]
  return found.length > 0 ? found : undefined
}

interface Named {
  id: string
  at: string
}

function twice(named: readonly Named[]): StockTrouble[] {
  const first = new Map<string, string>()
  return named.flatMap((one) => {
    const other = first.get(one.id)
    if (other) return [{...one, kind: 'twice', other}]
    first.set(one.id, one.at)
    return []
  })
}

function notThere(one: Named, context: Context): StockTrouble[] {
  const {pieces, lots = []} = context
  const onRack = new Set([...pieces, ...lots].flatMap(({id}) => [id, listedAs(id)]))
  if (onRack.has(one.id)) return []
  const used = usedBefore(one, context)
  if (used.length > 0) return used
  // An offcut of a piece that stands there whole is left by a later build, if by any.
  const whole = one.id.replace(/-[a-z]+$/, '')
  if (whole !== one.id && onRack.has(whole)) return [{...one, kind: 'later'}]
  const close = nearest(one.id, onRack)
  return [{...one, kind: 'unknown', ...(close && {nearest: close})}]
}

/** Find what became of a piece that stood on the rack, or that comes there later. */
function usedBefore(one: Named, {gone = []}: Context): StockTrouble[] {
  const known = gone.find(({id}) => id === one.id)
  return known ? [{...one, kind: known.why, by: known.by, on: known.on}] : []
}

function reserved(one: Named, {reserved: others = []}: Context): StockTrouble[] {
  const other = others.find(({id}) => id === one.id)
  return other ? [{...one, kind: 'reserved', by: other.by}] : []
}

type Stock = NonNullable<BuildValues['stock']>[number]

/** Say by what id a piece of the build's own stock goes: its own, or that of its place in the list, from 0. */
export const pieceId = ({id}: Stock, i: number): string => id?.value ?? `piece ${i + 1}`

/** Lengths written in two ways may part in their last digit. */
const alikeMm = 0.01

/** Find the first size of a piece that is not what the rack says of the same board. */
function differing(piece: Stock, at: string, context: Context): StockTrouble[] {
  const name = piece.id?.value
  const there = onRack(piece, context)
  if (name === undefined || !there) return []
  const size = sizes.find((one) => piece[one] && Math.abs(piece[one].mm - there[`${one}Mm`]) > alikeMm)
  return size ? [{kind: 'differs', at: `${at}.${size}`, id: name, size, mm: there[`${size}Mm`]}] : []
}

/** Find the board of the rack, or the first of several alike, that a piece is. */
const onRack = (piece: Stock, {pieces}: Context) =>
  pieces.find(({id}) => piece.id && (id === piece.id.value || listedAs(id) === piece.id.value))

const sizes = ['length', 'width', 'thickness'] as const

type Sized = Partial<Record<(typeof sizes)[number], unknown>>

const missingSize = (piece: Sized) => sizes.find((one) => !piece[one])

function unsized(piece: Sized, at: string, id: string): StockTrouble[] {
  const size = missingSize(piece)
  return size ? [{kind: 'unsized', at, id, size}] : []
}

function unclear(piece: Stock, i: number): StockTrouble[] {
  const {clear, length} = piece
  const [from, to] = clear ?? []
  if (!from || !to || !length) return []
  const one = {kind: 'clear', id: pieceId(piece, i)} as const
  if (to.mm > length.mm + 1e-6) return [{...one, at: `stock.${i + 1}.clear.2`, mm: length.mm}]
  return to.mm <= from.mm ? [{...one, at: `stock.${i + 1}.clear`}] : []
}
