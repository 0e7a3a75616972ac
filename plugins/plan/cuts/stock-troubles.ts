import {nearest} from '../../build-file/nearest.ts'
import type {BuildValues} from '../../build-file/schema.ts'
import type {Context, PlanPart} from '../part.ts'
import type {StockTrouble} from '../shape/stock.ts'

/**
 * List what is wrong with the wood that a build names: a piece named twice, one that is not on the rack, cut before by
 * another build or not there yet on its day, wood taken without a date, a size that is missing, a clear length that
 * does not lie on its piece (mm).
 */
export const stockTroubles: PlanPart = ({values}, _, context) => {
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
  return found.length > 0 ? {stockTroubles: found} : {}
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
