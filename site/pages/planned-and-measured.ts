import type {ElementContent} from 'hast'
import {h} from 'hastscript'
import {type Comparison, comparisons, type MeasureKind, spread} from '../../plugins/plan/deviations.ts'
import {link, paragraph, toElements} from '../../plugins/sections/kit.ts'
import {table} from '../../plugins/sections/kit-table.ts'
import {fractions, measured} from '../../plugins/sections/measures.ts'
import {writeMeasured} from '../../plugins/words/measured.ts'
import {type Page, pageOf} from '../page.ts'
import type {SiteBuild, SiteData} from '../site-data.ts'

/** Fewer builds than this say nothing about a workshop; common practice, no source. */
const fewest = 5

const names: Record<MeasureKind, string> = {
  lines: 'Line positions',
  notes: 'Notes at the lines',
  pull: 'Pull of the strings',
  bow: 'Bow of the neck',
  resonance: 'The box’s own pitch',
  action: 'String heights',
  scale: 'Scale length',
  neck: 'Neck and head',
  box: 'Box',
}

/** Write the page that sets what was planned against what was measured, over all builds. */
export function plannedAndMeasuredPage({around, builds}: SiteData): Page[] {
  const describes = 'How far off the plan this workshop’s instruments come out, and in which direction.'
  const built = builds.filter((one) => (one.plan.asBuilt?.length ?? 0) > 0)
  const content = [
    h('header.page-head', [h('h1', 'Planned and measured'), h('p', describes)]),
    h('div.prose', built.length < fewest ? tooFew(built.length) : toldOf(built)),
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

function toldOf(built: readonly SiteBuild[]): ElementContent[] {
  return comparisons(built)
    .filter(({builds}) => builds >= fewest)
    .flatMap((comparison) => [
      h('h2', names[comparison.kind]),
      ...toElements([paragraph(...fractions(sentence(comparison))), deviationTable(comparison)]),
    ])
}

function sentence({deviations, builds, unit}: Comparison<SiteBuild>): string {
  const {median, typical, furthest, above, below} = spread(deviations.map(({difference}) => difference))
  const {one, planned} = deviations[0]!
  const write = (value: number) => writeMeasured(value, unit, {units: one.plan.units, near: planned})
  const leans =
    above >= 2 * below ? 'mostly over' : below >= 2 * above ? 'mostly under' : 'as often over as under'
  const middle = Math.abs(median) > typical / 2 ? `, the middle one by ${write(Math.abs(median))}` : ''
  return `${deviations.length} measures of ${builds} builds: half lie within ${write(typical)} of the plan, the furthest ${write(furthest)} off; ${leans}${middle}.`
}

function deviationTable({kind, unit, deviations}: Comparison<SiteBuild>) {
  return table({
    caption: `${names[kind]}, planned and measured`,
    columns: [
      {head: 'Build'},
      {head: 'What'},
      {head: 'Planned', align: 'right'},
      {head: 'Measured', align: 'right'},
      {head: 'Off by', align: 'right'},
    ],
    rows: deviations.map(({one, path, planned, measured: found, difference}) => {
      const by = {units: one.plan.units, near: planned}
      return [
        link(`/builds/${one.slug}/`, one.title),
        {type: 'inlineCode', value: path},
        measured(planned, unit, by),
        measured(found, unit, by),
        [measured(Math.abs(difference), unit, by), difference > 0 ? ' more' : difference < 0 ? ' less' : ''],
      ]
    }),
  })
}
