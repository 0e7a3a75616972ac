import type {BlockContent} from 'mdast'
import type {Plan} from '../../plan/shape/plan.ts'
import type {Cuts} from '../../plan/shape/stock.ts'
import {type Cell, figures, fractions, lengthAlone, list, note, table} from '../kit.ts'
import {partRows} from './part-rows.ts'

/** A longer list of reasons is read by nobody. */
const mostListed = 40

/** List the parts with their rough sizes, and why each has its size. */
export function cutParts(cuts: Cuts, plan: Plan): BlockContent[] {
  const rows = partRows(cuts)
  const parts = table({
    caption: 'Parts, as sawn',
    columns: [
      {head: 'Part'},
      {head: 'How many', align: 'right'},
      {head: 'Wood'},
      {head: 'Length', align: 'right'},
      {head: 'Width', align: 'right'},
      {head: 'Thickness', align: 'right'},
    ],
    rows: rows.map(({part, count, name}): Cell[] => [
      name,
      String(count),
      part.wood,
      lengthAlone(part.lengthMm, plan),
      lengthAlone(part.widthMm, plan),
      lengthAlone(part.thicknessMm, plan),
    ]),
  })
  const why = list(rows.slice(0, mostListed).map(({part, name}) => [`${name}: `, ...fractions(part.why)]))
  return [
    parts,
    figures('Why each has its size', [
      why,
      note('What planing takes and what is added at the ends: common practice, no source.'),
    ]),
  ]
}
