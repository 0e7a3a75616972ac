import type {Element} from 'hast'
import {toHtml} from 'hast-util-to-html'
import {h} from 'hastscript'
import {ofTheMade} from '../../plugins/build-file/start-from.ts'
import {setValues} from '../../plugins/build-file/writing/set-values.ts'
import {cutDiagram} from '../../plugins/drawings/cut-diagram.ts'
import {pageSvg} from '../../plugins/drawings/writers/svg.ts'
import type {Context} from '../../plugins/plan/kit/context.ts'
import {planMaking} from '../../plugins/plan/making.ts'
import type {Plan} from '../../plugins/plan/plan.ts'
import type {Cuts} from '../../plugins/plan/stock/cut-list.ts'
import type {Part} from '../../plugins/plan/stock/part.ts'
import {partName, partNamesById} from '../../plugins/words/cut-list.ts'
import {bareLength} from '../../plugins/words/lengths.ts'
import {percent} from '../../plugins/words/quantities.ts'
import {blankSlug, checked, type Reading} from './session.ts'
import {type Told, table, toldOf} from './view.ts'

/** What the page shows of the making of an instrument, as texts. */
export interface MakingView {
  /** The text that it is of. */
  text: string
  /** The cut list, as HTML; empty where there is nothing to cut. */
  cuts: string
  /** What would not work in the making. */
  problems: Told[]
}

/** Add to what was read what making it takes. */
export function wholeOf(reading: Reading, context: Context): Reading {
  const plan = {...reading.plan, ...planMaking(reading.settled, reading.plan, context)}
  return checked({...reading, plan})
}

/** Word the making for the page, against that of the start. */
export function makingView(start: Reading, reading: Reading, whole: Reading): MakingView {
  const known = new Set(reading.problems.map(({rule, line, message}) => `${rule} ${line} ${message}`))
  const own = whole.problems.filter(({rule, line, message}) => !known.has(`${rule} ${line} ${message}`))
  const {plan} = whole
  const cuts = plan.cuts ? cutList(plan.cuts, plan, start.plan) : []
  return {text: whole.text, cuts: toHtml(cuts), problems: toldOf({build: whole.build, problems: own})}
}

/** More pieces than this are drawn on the build's own page alone. */
const mostDrawn = 6

function cutList(cuts: Cuts, plan: Plan, before: Plan): Element[] {
  const names = partNamesById(cuts.parts)
  const drawn = cuts.pieces.slice(0, mostDrawn)
  return [
    h('p', summary(cuts)),
    partTable(cuts, plan, before),
    h(
      'div.pieces',
      drawn.map((piece, at) => pageSvg(cutDiagram(piece, names, plan), `cut-${at + 1}`)),
    ),
  ].filter((one) => one !== undefined)
}

function summary({parts, unplaced, used, hasStock, wasteFraction}: Cuts): string {
  const count = (many: number, what: string) => `${many} ${what}${many === 1 ? '' : 's'}`
  if (!hasStock) return `${count(parts.length, 'part')} to cut, and no piece is listed to cut them from.`
  if (unplaced.length > 0)
    return `${unplaced.length} of ${count(parts.length, 'part')} found no piece at hand.`
  return `${count(used, 'piece')} give${used === 1 ? 's' : ''} all ${count(parts.length, 'part')}; ${percent(wasteFraction)} of the wood is waste.`
}

function partTable(cuts: Cuts, plan: Plan, before: Plan): Element | undefined {
  const was = new Map(before.cuts?.parts.map((part) => [part.id, part]))
  const piece = new Map(
    cuts.pieces.flatMap(({id, strips}) =>
      strips.flatMap((strip) => strip.cuts.map(({partId}) => [partId, id] as const)),
    ),
  )
  const size = ({lengthMm, widthMm, thicknessMm}: Part) =>
    [bareLength(lengthMm, plan, 'up'), bareLength(widthMm, plan), bareLength(thicknessMm, plan)]
      .map((length) => length.replaceAll(' ', '\u00a0'))
      .join(' × ')
  const rows = cuts.parts.map((part) => {
    const old = was.get(part.id)
    const isOther = old ? size(old) !== size(part) : before.cuts !== undefined
    return {
      cells: [
        partName(part.called),
        size(part),
        isOther ? (old ? size(old) : 'new') : '',
        piece.get(part.id) ?? (cuts.hasStock ? 'none' : ''),
      ],
      isChanged: isOther,
    }
  })
  return table('Parts, as sawn', ['Part', `Size, ${plan.units}`, 'Was', 'From'], rows)
}

/** Write what was tried as a build of its own: without what belongs to the instrument that was made. */
export function newBuildOf({text, build}: Reading, title: string, from: string): string {
  const gone = Object.keys(build.values).filter((key) => ofTheMade.some((one) => one === key))
  const own = [
    ...gone.map((key): [string, string] => [key, '']),
    ['title', title],
    ['status', 'idea'],
    ...(from === blankSlug ? [] : [['based-on', from]]),
  ] as const
  return setValues(text, build, new Map(own as [string, string][]))
}
