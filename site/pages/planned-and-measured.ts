import type {ElementContent} from 'hast'
import {h} from 'hastscript'
import {writeLength} from '../../plugins/build-file/quantities/write-length.ts'
import {number} from '../../plugins/sections/kit/number.ts'
import {toElements} from '../../plugins/sections/kit/to-elements.ts'
import type {Ruler} from '../../plugins/sections/kit.ts'
import {table} from '../../plugins/sections/kit.ts'
import {pageOf} from '../html/page-of.ts'
import type {Page} from '../publish/page.ts'
import type {SiteBuild, SiteData} from '../site-data.ts'
import {type Comparison, comparisons} from './measured/deviations.ts'
import {spread} from './measured/spread.ts'

/** Fewer builds than this say nothing about a workshop; common practice, no source. */
const fewest = 5

/** Write the page that sets what was planned against what was measured, over all builds. */
export function plannedAndMeasuredPage({around, builds}: SiteData): Page[] {
  const describes = 'How far off the plan this workshop’s instruments come out, and in which direction.'
  const measured = builds.filter((one) => (one.plan.asBuilt?.length ?? 0) > 0)
  const content = [
    h('header.page-head', [h('h1', 'Planned and measured'), h('p', describes)]),
    h('div.prose', measured.length < fewest ? tooFew(measured.length) : toldOf(measured)),
  ]
  const data = {title: 'Planned and measured', describes, within: '/planned-and-measured/'}
  return [pageOf('/planned-and-measured/', data, content, around.prefix)]
}

function tooFew(count: number): ElementContent[] {
  const so = count === 0 ? 'None has been' : count === 1 ? 'One has been' : `${count} have been`
  return [
    h(
      'p',
      `It takes ${fewest} measured builds before a habit can be told from chance. ${so} measured so far.`,
    ),
    h('p', ['What was measured stands in a build’s file under ', h('code', 'measured'), '.']),
  ]
}

function toldOf(measured: readonly SiteBuild[]): ElementContent[] {
  return comparisons(measured)
    .filter(({builds}) => builds >= fewest)
    .flatMap((comparison) => [
      h('h2', comparison.name),
      h('p', sentence(comparison)),
      ...toElements([deviationTable(comparison)]),
    ])
}

function sentence({deviations, builds, unit}: Comparison): string {
  const {median, typical, furthest, above, below} = spread(deviations.map(({difference}) => difference))
  const ruler = deviations[0]!.one.plan
  const write = (value: number) => amount(value, unit, ruler)
  const leans =
    above >= 2 * below ? 'mostly over' : below >= 2 * above ? 'mostly under' : 'as often over as under'
  const middle = Math.abs(median) > typical / 2 ? `, by ${write(Math.abs(median))} in the middle of them` : ''
  return `${deviations.length} measures of ${builds} builds: half lie within ${write(typical)} of the plan, the furthest ${write(furthest)} off; ${leans}${middle}.`
}

function deviationTable({name, unit, deviations}: Comparison) {
  return table({
    caption: `${name}, planned and measured`,
    columns: [
      {head: 'Build'},
      {head: 'Planned', align: 'right'},
      {head: 'Measured', align: 'right'},
      {head: 'Off by', align: 'right'},
    ],
    rows: deviations.map(({one, planned, measured, difference}) => [
      one.title,
      amount(planned, unit, one.plan),
      amount(measured, unit, one.plan),
      signed(difference, amount(Math.abs(difference), unit, one.plan)),
    ]),
  })
}

/** What is measured is read finer than it is marked out. */
function amount(value: number, unit: string, {units, rulerMm}: Ruler): string {
  return unit === 'mm'
    ? writeLength(value, {units, rulerMm: Math.min(rulerMm, 25.4 / 64)})
    : `${number(value, unit === 'mm' ? 2 : 1)} ${unit}`
}

const signed = (value: number, written: string) =>
  value > 0 ? `+${written}` : value < 0 ? `−${written}` : written
