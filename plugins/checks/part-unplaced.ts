import {writeLength} from '../build-file/quantities/write-length.ts'
import type {Check} from './check.ts'

/** A part that no piece of the wood at hand gives; silent where the build names no wood at all. */
export const partUnplaced: Check = {
  rule: 'part-unplaced',
  find: (_, {cuts, ...plan}) => {
    if (!cuts?.hasStock) return []
    const parts = new Map(cuts.parts.map((part) => [part.id, part]))
    const rows = new Map<string, typeof cuts.unplaced>()
    for (const one of cuts.unplaced) {
      const {of} = parts.get(one.partId)!
      rows.set(of, [...(rows.get(of) ?? []), one])
    }
    return [...rows].map(([of, lacking]) => {
      const [first] = lacking
      const {name} = parts.get(first!.partId)!
      const more = lacking.length > 1 ? ` and ${lacking.length - 1} more like it` : ''
      const {nearest, lacks, wouldDo} = first!
      const near = nearest ? `${nearest} comes nearest, and lacks ${lacks}` : lacks
      const text = wouldDo && writeLength(wouldDo.mm, plan, 'down')
      return {
        at: wouldDo?.path ?? of,
        message: `no piece at hand gives ${name}${more}: ${near}${text ? `; ${text} would do` : '; the cut list says what to buy'}`,
        ...(text && {expected: [text]}),
      }
    })
  },
}
