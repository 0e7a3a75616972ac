import {ownAt} from '../../plugins/build-file/path.ts'
import {keyOf} from '../cache.ts'
import type {PlannedBuild} from '../journal/read-journal.ts'

/** Leave out of a build what the published site never tells: its price, unless it is for sale, and what is left of it. */
export function asPublished(one: PlannedBuild): PlannedBuild {
  const {price, ...values} = one.build.values
  if (!price) return one
  const isForSale = values['for-sale']?.value === true
  const {price: asked, left: _, ...paid} = one.plan.cost ?? {hours: 0}
  const isPaid = paid.hours > 0 || paid.materials !== undefined
  const cost = isForSale ? {...paid, price: asked} : isPaid ? paid : undefined
  return {
    ...one,
    key: keyOf(one.key, 'published'),
    build: isForSale ? one.build : {...one.build, values},
    plan: {...one.plan, cost},
    text: isForSale ? one.text : withoutLineOf('price', one),
  }
}

/** Take a key of the front matter and its value out of the text. */
export function withoutLineOf(key: string, {text, build}: Pick<PlannedBuild, 'text' | 'build'>): string {
  const [from, to] = [ownAt(build.keys, key), ownAt(build.places, key)]
  if (!from || !to) return text
  const lines = text.split(/(?<=\n)/)
  const before = lines[from.line - 1]!.slice(0, from.column - 1)
  const after = lines[to.endLine - 1]!.slice(to.endColumn - 1)
  const kept = (before + after).trim() === '' ? '' : before + after
  return [...lines.slice(0, from.line - 1), kept, ...lines.slice(to.endLine)].join('')
}
