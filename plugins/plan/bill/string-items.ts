import type {Plan} from '../shape/plan.ts'
import type {Needed} from './implied-items.ts'

/** List the strings by gauge and material, those alike together; a course counts each of its strings. */
export function stringItems({strings = []}: Plan): Needed[] {
  const found = new Map<string, Needed>()
  for (const {gauge, material, wound, course, name} of strings) {
    const item = `string ${gauge ?? `for ${name}`}${material && !wound ? `, ${material}` : ''}`
    const known = found.get(item)
    found.set(item, {
      item,
      count: (known?.count ?? 0) + course,
      from: 'strings',
      word: /\bstrings?\b(?! tree)/i,
    })
  }
  return [...found.values()]
}
