import type {Plan} from '../shape/plan.ts'
import type {BillRow} from '../shape/work.ts'

/** List the strings by gauge and material, those alike together; a course counts each of its strings. */
export function stringItems({strings = []}: Plan): BillRow[] {
  const found = new Map<string, BillRow>()
  for (const {gauge, material, wound, course, name} of strings) {
    const item = `string ${gauge ?? `for ${name}`}${material && !wound ? `, ${material}` : ''}`
    const known = found.get(item)
    found.set(item, {item, count: (known?.count ?? 0) + course, from: 'strings'})
  }
  return [...found.values()]
}
