import type {BlockContent} from 'mdast'
import type {Plan} from '../plan/plan.ts'
import type {Cuts} from '../plan/stock/cut-list.ts'
import type {Part} from '../plan/stock/part.ts'
import {unplacedRows} from '../plan/stock/unplaced-rows.ts'
import {lumberSources} from '../tables/lumber.ts'
import {boardName, partName, partWhy, plainName, unplacedWords} from '../words/cut-list.ts'
import {number, percent} from '../words/quantities.ts'
import {cutPieces} from './cut-pieces.ts'
import {figures, fold, holds, list, note, paragraph, source, subHeading} from './kit.ts'
import {type Cell, table, under} from './kit-table.ts'
import {fractions, length, lengthAlone} from './measures.ts'
import type {Section} from './section.ts'

/** Which piece gives which part, where to rip and crosscut, what goes back on the rack, and what to buy. */
export const cutList: Section = {
  name: 'cut-list',
  title: 'Cut list',
  needs: ({plan}) => (plan.cuts || plan.tooManyParts ? [] : ['neck.length', 'parts']),
  content: ({plan}) => {
    const {cuts} = plan
    if (!cuts) return []
    const [unplaced, pieces] = [cutUnplaced(cuts, plan), cutPieces(cuts, plan)]
    const count = cuts.pieces.length
    const name = holds(
      ['parts', ['always']],
      ['what to buy', unplaced],
      [count === 1 ? 'one piece, where to cut' : `${count} pieces, where to cut`, cuts.pieces],
    )
    return [
      ...cutSummary(cuts),
      ...fold(name, [...sawTakes(cuts, plan), ...cutParts(cuts, plan), ...unplaced, ...pieces]),
    ]
  },
}

/** Say what the saw takes. */
function sawTakes({kerfMm, trimMm}: Cuts, plan: Plan): BlockContent[] {
  const takes = [
    ...(kerfMm > 0 ? [['A saw cut takes ', length(kerfMm, plan), '. ']] : []),
    ...(trimMm > 0 ? [['Squaring an end takes ', length(trimMm, plan), '.']] : []),
  ]
  return takes.length > 0 ? [paragraph(...takes.flat())] : []
}

/** Say how many pieces are cut, and how sure it is that no plan does better. */
function cutSummary(cuts: Cuts): BlockContent[] {
  const {parts, unplaced, used, wasteFraction} = cuts
  const placed = parts.length - unplaced.length
  if (!cuts.hasStock)
    return [
      paragraph(
        parts.length === 1
          ? '1 part to cut, and no piece listed yet to cut it from.'
          : `${number(parts.length, 0)} parts to cut, and no piece listed yet to cut them from.`,
      ),
    ]
  if (used === 0) return [paragraph('No piece at hand gives any of these parts.')]
  const pieces = used === 1 ? 'One piece gives' : `${number(used, 0)} pieces give`
  const all =
    unplaced.length > 0
      ? `${placed} of ${parts.length} parts`
      : parts.length === 1
        ? 'the one part'
        : `all ${parts.length} parts`
  return [paragraph(`${pieces} ${all}; ${percent(wasteFraction)} of the wood is waste. `, sure(cuts))]
}

function sure({proven, gapFraction, unplaced, used, bound}: Cuts): string {
  if (proven)
    return unplaced.length > 0
      ? 'No plan gets more out of these pieces, nor does it with less wood.'
      : 'No plan does it with less wood.'
  if (gapFraction > 0)
    return `A better plan may exist: at best it would save ${number(gapFraction * 100, 1)} % of the wood${bound < used ? ` and cut ${bound} pieces` : ''}.`
  return 'A better plan may exist; the search was stopped before it could tell.'
}

/** A longer list of reasons is read by nobody. */
const mostReasons = 40

/** List the parts with their rough sizes, and why each has its size. */
function cutParts(cuts: Cuts, plan: Plan): BlockContent[] {
  const rows = partRows(cuts)
  const parts = table({
    caption: 'Parts, as sawn',
    columns: [
      {head: ['Part', under('Wood')]},
      {head: 'How many', align: 'right'},
      {head: 'Length', align: 'right'},
      {head: 'Width', align: 'right'},
      {head: 'Thickness', align: 'right'},
    ],
    rows: rows.map(({part, count, name}): Cell[] => [
      [name, under(part.wood)],
      String(count),
      // What is sawn must not come out short; across, what is planed off leaves room.
      lengthAlone(part.lengthMm, plan, 'up'),
      lengthAlone(part.widthMm, plan),
      lengthAlone(part.thicknessMm, plan),
    ]),
  })
  const why = list(
    rows.slice(0, mostReasons).map(({part, name}) => [`${name}: `, ...fractions(partWhy(part, plan))]),
  )
  return [
    parts,
    figures('Why each has its size', [
      why,
      note('What planing takes and what is added at the ends: common practice, no source.'),
    ]),
  ]
}

/** Parts alike in size, wood and purpose, as one row of the list. */
interface PartRow {
  part: Part
  count: number
  name: string
}

/** List parts by row of the build file: strips of one layer, or several of one listed part, stand together. */
function partRows({parts}: Pick<Cuts, 'parts'>): PartRow[] {
  const rows = new Map<string, PartRow>()
  for (const part of parts) {
    const key = [part.of, part.wood, part.lengthMm, part.widthMm, part.thicknessMm].join('|')
    const row = rows.get(key)
    if (row) row.count++
    else rows.set(key, {part, count: 1, name: partName(part.called)})
  }
  return [...rows.values()].map((row) => (row.count > 1 ? {...row, name: plainName(row.name)} : row))
}

/** More than this and a list of lacking parts says no more than its first lines. */
const mostLacking = 12

/** Say which parts found no piece, what the nearest one lacks, and which boards to buy for them. */
function cutUnplaced(cuts: Cuts, plan: Plan): BlockContent[] {
  const {unplaced, bought, hasStock} = cuts
  if (unplaced.length === 0) return []
  const lacking = unplacedRows(cuts.parts, cuts.unplaced)
  const listed = lacking.slice(0, mostLacking).map((row) => fractions(unplacedWords(row, plan)))
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
    rows: bought.map(({wood, nominal, count, thicknessMm, widthMm, boardFeet}): Cell[] => [
      wood === 'any' ? 'any wood' : wood,
      boardName(nominal, widthMm),
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
