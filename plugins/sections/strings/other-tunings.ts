import type {BlockContent} from 'mdast'
import type {Plan} from '../../plan/shape/plan.ts'
import {forceAlone, table} from '../kit.ts'

/** List other common tunings that the same strings carry, and what each string would pull. */
export function otherTunings(plan: Plan): BlockContent[] {
  const {tunings = []} = plan
  if (tunings.length === 0) return []
  const pulls = (tensionsN: readonly number[], words: readonly string[]) =>
    tensionsN.map((tensionN, at) => `${forceAlone(tensionN, plan)} ${words[at]}`).join('; ')
  return [
    table({
      caption: 'Other common tunings that these strings carry',
      columns: [{head: 'Notes'}, {head: 'Tuning'}, {head: 'Pull, string by string'}],
      rows: tunings.map(({name, notes, tensionsN, pulls: words}) => [
        notes.join(' '),
        name,
        pulls(tensionsN, words),
      ]),
    }),
  ]
}
