import {nearest} from '../../build-file/nearest.ts'
import type {PlanPart} from '../part.ts'
import type {StockTrouble} from '../shape/stock.ts'

/**
 * List what is wrong with the pieces that a build names: one named twice, one that is not on the rack, cut before by
 * another build or not there yet at its date, and wood taken from the rack without a date.
 */
export const stockTroubles: PlanPart = ({values}, _, {pieces, gone = []}) => {
  const stock = (values.stock ?? []).flatMap(({id}, i) => (id ? [{id: id.value, at: `stock.${i + 1}.id`}] : []))
  const take = (values.take ?? []).map(({value}, i) => ({id: value, at: `take.${i + 1}`}))
  const onRack = new Set(pieces.flatMap(({id}) => [id, id.replace(/\.\d+$/, '')]))
  const trouble = (one: {id: string; at: string}): StockTrouble[] => {
    if (!values.started) return []
    if (onRack.has(one.id)) return []
    const known = gone.find(({id}) => id === one.id)
    if (known) return [{...one, kind: known.why, ...(known.by && {by: known.by}), ...(known.on && {on: known.on})}]
    const close = nearest(one.id, [...onRack])
    return [{...one, kind: 'unknown', ...(close && {nearest: close})}]
  }
  const undated =
    take.length > 0 && !values.started ? [{kind: 'undated', at: 'take', id: take[0]!.id}] : []
  const found = [...twice([...stock, ...take]), ...undated, ...take.flatMap(trouble)]
  return found.length > 0 ? {stockTroubles: found} : {}
}

function twice(named: readonly {id: string; at: string}[]): StockTrouble[] {
  const first = new Map<string, string>()
  return named.flatMap((one) => {
    const other = first.get(one.id)
    if (other) return [{...one, kind: 'twice', other}]
    first.set(one.id, one.at)
    return []
  })
}
