import type {BlockContent} from 'mdast'
import type {Plan} from '../../plan/shape/plan.ts'
import {noticeableSource} from '../../tables/hearing.ts'
import {figures, fractions, number, source, table} from '../kit.ts'

/** Fold away what other rulers would do to these lines at worst, and where the least that ears notice comes from. */
export function rulersTried({scale}: Plan): BlockContent[] {
  const rulers = scale?.rulers ?? []
  if (rulers.length === 0) return []
  return [
    figures('Figures: how finely to mark', [
      table({
        caption: 'The furthest off that each ruler would leave a line',
        columns: [{head: 'Marked to'}, {head: 'Furthest off', align: 'right'}, {head: 'At line'}],
        rows: rulers.map(({text, worstCents, worstLabel}) => [
          fractions(text),
          `${number(worstCents, 1)} cents`,
          fractions(worstLabel),
        ]),
      }),
      source(`about five cents is the least that is noticed: ${noticeableSource}.`),
    ]),
  ]
}
