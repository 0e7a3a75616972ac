import {ownAt} from '../../plugins/build-file/schema/path.ts'
import type {JournalSettings} from '../../plugins/build-file/schema/schema.ts'
import type {RackContext} from '../../plugins/plan/stock/rack.ts'
import type {PlannedBuild} from '../journal/read-journal.ts'
import {keyOf} from '../kit/cache.ts'

/** Tell whether a site tells what was paid: while somebody writes, and where the journal says so. */
export const tellsMoney = ({isWriting}: {isWriting: boolean}, journal: JournalSettings): boolean =>
  isWriting || journal['show-money']?.value === true

/** The settings without what an hour is worth. */
export const withoutRate = ({rate: _, ...settings}: JournalSettings): JournalSettings => settings

/**
 * Leave out of a build what the published site does not tell: what was paid, what hours come to, and its price unless
 * it is for sale.
 */
export function asPublished(one: PlannedBuild): PlannedBuild {
  const {price, cost: paid, ...values} = one.build.values
  const isForSale = values['for-sale']?.value === true
  const stock = values.stock?.map(({cost: _, ...piece}) => piece)
  const costly = (values.stock ?? []).flatMap(({cost}, at) => (cost ? [`stock.${at + 1}.cost`] : []))
  const kept = [...costly, ...(paid ? ['cost'] : []), ...(price && !isForSale ? ['price'] : [])]
  const {cost, bill} = one.plan
  const shown = {
    hours: cost?.hours ?? 0,
    price: isForSale ? cost?.price : undefined,
    currency: cost?.currency,
  }
  const published = {
    ...one,
    build: {
      ...one.build,
      values: {...values, ...(stock && {stock}), ...(price && isForSale && {price})},
    },
    plan: {
      ...one.plan,
      cost: shown.hours > 0 || shown.price !== undefined ? shown : undefined,
      bill: bill?.map(({each: _, total: __, ...row}) => row),
    },
    rack: withoutCosts(one.rack),
    text: withoutKeys(kept, one),
  }
  if (kept.length === 0 && moneyIn(one) === moneyIn(published)) return one
  return {
    ...published,
    key: keyOf(one.key, 'published'),
    ...(one.shown && {shown: keyOf(one.shown, 'published')}),
  }
}

/** Stands for what a build tells of money beside its file. */
const moneyIn = ({plan: {cost, bill}, rack}: Pick<PlannedBuild, 'plan' | 'rack'>): string =>
  JSON.stringify([cost, bill, rack.pieces.map(({cost: paid}) => paid), rack.lots.map(({each}) => each)])

const withoutCosts = (rack: RackContext): RackContext => ({
  ...rack,
  pieces: rack.pieces.map(({cost: _, ...piece}) => piece),
  lots: rack.lots.map(({each: _, ...lot}) => lot),
})

/** Take keys of the front matter and their values out of the text; of those in braces the comma that parts them too. */
export function withoutKeys(
  paths: readonly string[],
  {text, build}: Pick<PlannedBuild, 'text' | 'build'>,
): string {
  const ranges = paths.flatMap((path) => {
    const [from, to] = [ownAt(build.keys, path), ownAt(build.places, path)]
    return from && to ? [{from, to}] : []
  })
  if (ranges.length === 0) return text
  // From the end on, so that places before it stay.
  ranges.sort((a, b) => b.from.line - a.from.line || b.from.column - a.from.column)
  return ranges
    .reduce(
      (lines, {from, to}) => {
        const before = lines[from.line - 1]!.slice(0, from.column - 1)
        const after = lines[to.endLine - 1]!.slice(to.endColumn - 1)
        const isLast = /,\s*$/.test(before)
        const rest = isLast ? before.replace(/,\s*$/, '') + after : before + after.replace(/^\s*,\s*/, '')
        const kept = rest.trim() === '' ? [] : [rest]
        return [...lines.slice(0, from.line - 1), ...kept, ...lines.slice(to.endLine)]
      },
      text.split(/(?<=\n)/),
    )
    .join('')
}
