import type {BlockContent} from 'mdast'
import type {Plan} from '../../plan/shape/plan.ts'
import {forceAlone, type Inline, strong, table} from '../kit.ts'

/** List other common gauges that would do for each string, and what each would pull. */
export function otherGauges(plan: Plan): BlockContent[] {
  const rows = (plan.strings ?? []).flatMap(({name, alternatives = []}) => {
    const said = alternatives.flatMap(({gauge, tensionN}, at): Inline[] => [
      ...(at === 0 ? [] : ['; ']),
      strong(gauge),
      ` ${forceAlone(tensionN, plan)}`,
    ])
    return said.length > 0 ? [[name, said]] : []
  })
  if (rows.length === 0) return []
  return [
    table({
      caption: 'Other common gauges that would do, and what each would pull',
      columns: [{head: 'For'}, {head: 'The nearest first'}],
      rows,
    }),
  ]
}
