import {nearest} from '../build-file/nearest.ts'
import type {BuildValues} from '../build-file/schema.ts'
import type {StockPiece} from '../cut-stock/cut-stock.ts'
import type {Context} from './context.ts'
import {woodRow} from './design-parts.ts'

export interface StockTrouble {
  /** twice, unknown, cut, later, undated, unsized or clear. */
  kind: string
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
  /** The size that is missing. */
  lacks?: string | undefined
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

/** List the pieces that a build names: its own stock in file order, then those it takes from the rack, each once. */
export function stockAtHand(values: BuildValues, rack: Context['pieces'], mostAlike: number): PieceAtHand[] {
  const own = (values.stock ?? []).flatMap((piece, i): PieceAtHand[] => {
    const {length, width, thickness, clear} = piece
    if (!length || !width || !thickness) return []
    const count = piece.count?.value ?? 1
    const stockId = piece.id?.value ?? `piece ${i + 1}`
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
  const taken = new Set(values.take?.map(({value}) => value))
  const fromRack = rack
    .filter((piece) => taken.has(piece.id) || taken.has(piece.id.replace(/\.\d+$/, '')))
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
 * List what is wrong with the wood that a build names: a piece named twice, one that is not on the rack, cut before by
 * another build or not there yet on its day, wood taken without a date, a size that is missing, a clear length that
 * does not lie on its piece (mm).
 */
export function planStockTroubles(values: BuildValues, context: Context): StockTrouble[] | undefined {
  const {stock = [], take = [], parts = []} = values
  const listed = stock.flatMap(({id}, i) => (id ? [{id: id.value, at: `stock.${i + 1}.id`}] : []))
  const taken = take.map(({value}, i) => ({id: value, at: `take.${i + 1}`}))
  const undated: StockTrouble[] =
    taken.length > 0 && !values.started ? [{kind: 'undated', at: 'take', id: taken[0]!.id}] : []
  const found = [
    ...twice([...listed, ...taken]),
    ...undated,
    ...(values.started ? taken.flatMap((one) => notThere(one, context)) : []),
    ...stock.flatMap((piece, i) => unsized(piece, `stock.${i + 1}`, piece.id?.value ?? `piece ${i + 1}`)),
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

function notThere(one: Named, {pieces, gone = []}: Context): StockTrouble[] {
  const onRack = new Set(pieces.flatMap(({id}) => [id, id.replace(/\.\d+$/, '')]))
  if (onRack.has(one.id)) return []
  const known = gone.find(({id}) => id === one.id)
  if (known)
    return [{...one, kind: known.why, ...(known.by && {by: known.by}), ...(known.on && {on: known.on})}]
  // An offcut of a piece that stands there whole is left by a later build, if by any.
  const whole = one.id.replace(/-[a-z]+$/, '')
  if (whole !== one.id && onRack.has(whole)) return [{...one, kind: 'later'}]
  const close = nearest(one.id, onRack)
  return [{...one, kind: 'unknown', ...(close && {nearest: close})}]
}

function unsized(piece: Partial<Record<'length' | 'width' | 'thickness', unknown>>, at: string, id: string) {
  const lacks = (['length', 'width', 'thickness'] as const).find((size) => !piece[size])
  return lacks ? [{kind: 'unsized', at, id, lacks}] : []
}

type Stock = NonNullable<BuildValues['stock']>[number]

function unclear({id, clear, length}: Stock, i: number): StockTrouble[] {
  const [from, to] = clear ?? []
  if (!from || !to || !length) return []
  const one = {kind: 'clear', id: id?.value ?? `piece ${i + 1}`}
  if (to.mm > length.mm + 1e-6) return [{...one, at: `stock.${i + 1}.clear.2`, mm: length.mm}]
  return to.mm <= from.mm ? [{...one, at: `stock.${i + 1}.clear`}] : []
}
