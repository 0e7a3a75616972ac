import type {BlockContent} from 'mdast'
import type {Plan} from '../../plan/shape/plan.ts'
import type {Cuts} from '../../plan/shape/stock.ts'
import {unplacedRows} from '../../plan/unplaced-parts.ts'
import {lumberSources} from '../../tables/lumber.ts'
import {
  type Cell,
  fractions,
  lengthAlone,
  list,
  number,
  paragraph,
  source,
  subHeading,
  table,
} from '../kit.ts'

/** More than this and a list of lacking parts says no more than its first lines. */
const mostListed = 12

/** Say which parts found no piece, what the nearest one lacks, and which boards to buy for them. */
export function cutUnplaced(cuts: Cuts, plan: Plan): BlockContent[] {
  const {unplaced, bought, hasStock} = cuts
  if (unplaced.length === 0) return []
  const lacking = unplacedRows(cuts)
  const listed = lacking.slice(0, mostListed).map(({which, near}) => fractions(`${which}: ${near}`))
  const rest = lacking.length - listed.length
  return [
    subHeading('To buy'),
    ...(hasStock
      ? [
          paragraph('No piece at hand gives these parts:'),
          list([...listed, ...(rest > 0 ? [`and ${number(rest, 0)} more`] : [])]),
        ]
      : []),
    ...(bought.length > 0 ? [boards(bought, plan), source(...sources(bought))] : []),
  ]
}

function boards(bought: Cuts['bought'], plan: Plan): BlockContent {
  const isCounted = bought.some(({boardFeet}) => boardFeet !== undefined)
  return table({
    caption: 'Fewest boards that give them',
    columns: [
      {head: 'Wood'},
      {head: 'Board'},
      {head: 'How many', align: 'right'},
      {head: 'Dressed thickness', align: 'right'},
      {head: 'Dressed width', align: 'right'},
      ...(isCounted ? [{head: 'Board feet', align: 'right' as const}] : []),
    ],
    rows: bought.map(({wood, size, count, thicknessMm, widthMm, boardFeet}): Cell[] => [
      wood === 'any' ? 'any wood' : wood,
      size,
      String(count),
      lengthAlone(thicknessMm, plan),
      lengthAlone(widthMm, plan),
      ...(isCounted ? [boardFeet === undefined ? '' : number(boardFeet, 1)] : []),
    ]),
  })
}

function sources(bought: Cuts['bought']): string[] {
  const hard = bought.some(({boardFeet}) => boardFeet !== undefined)
  const soft = bought.some(({boardFeet}) => boardFeet === undefined)
  const said = [
    ...(soft ? [lumberSources.softwood] : []),
    ...(hard ? [lumberSources.hardwood] : []),
    lumberSources.lengths,
  ]
  return [`${said.join('; ')}.`]
}
