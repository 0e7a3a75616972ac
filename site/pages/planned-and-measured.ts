import type {Element, ElementContent} from 'hast'
import {h} from 'hastscript'
import {offPlanPlot} from '../../plugins/drawings/plots/off-plan-plot.ts'
import {
  type Comparison,
  comparisons,
  fewestBuilds,
  type Habit,
  habits,
  type MeasureKind,
  spread,
} from '../../plugins/plan/deviations.ts'
import {fold, link, list, paragraph, toElements} from '../../plugins/sections/kit.ts'
import {table} from '../../plugins/sections/kit-table.ts'
import {measured} from '../../plugins/sections/measures.ts'
import {keyInWords} from '../../plugins/words/keys.ts'
import {habitInWords, writeMeasured} from '../../plugins/words/measured.ts'
import {keptFractions} from '../kit/markup.ts'
import {type Page, pageShowing} from '../kit/page.ts'
import type {SiteBuild, SiteData} from '../kit/site-data.ts'

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
  const compared = comparisons(built)
  const content = () => [
    h('header.page-head', [h('h1', 'Planned and measured'), h('p', describes)]),
    h(
      'div.prose',
      built.length < fewestBuilds ? tooFew(built.length) : toldOf(compared, built[0]!.plan.units),
    ),
  ]
  const data = {title: 'Planned and measured', describes, within: '/planned-and-measured/'}
  const shows = built.map(({slug, title, plan: {units, rulerMm, asBuilt}}) => [
    slug,
    title,
    units,
    rulerMm,
    asBuilt,
  ])
  return [pageShowing('/planned-and-measured/', data, {shows, content, prefix: around.prefix})]
}

function tooFew(count: number): ElementContent[] {
  const so = count === 0 ? 'None has been' : count === 1 ? 'One has been' : `${count} have been`
  return [
    h(
      'p',
      `It takes ${fewestBuilds} measured builds before a habit can be told from chance. ${so} measured so far.`,
    ),
    h('p', ['What was measured stands in a build’s file under ', h('code', 'measured'), '.']),
  ]
}

function toldOf(compared: readonly Comparison<SiteBuild>[], units: 'in' | 'mm'): ElementContent[] {
  return [
    ...habitsTold(habits(compared), units),
    ...compared
      .filter(({builds}) => builds >= fewestBuilds)
      .flatMap((comparison) => [
        h('h2', names[comparison.kind]),
        ...toElements([paragraph(...keptFractions(sentence(comparison)))]),
        h('figure.drawing', [dots(comparison)]),
        ...toElements(fold('Each of them', [deviationTable(comparison)])),
      ]),
  ]
}

/** Say what this workshop does again and again, and what to plan instead. */
function habitsTold(found: readonly Habit[], units: 'in' | 'mm'): ElementContent[] {
  if (found.length === 0) return []
  return [
    h('h2#habits', 'What this workshop does'),
    ...toElements([
      list(found.map((habit) => keptFractions(habitInWords(habit, units)))),
      paragraph(
        'Told where at least five builds have the measure, and so many are off to one side that chance would do it in fewer than one of twenty workshops (the sign test, from memory). A new file from npm run new has these beside it.',
      ),
    ]),
  ]
}

/** Draw a dot for each measure about its plan. */
function dots({kind, unit, deviations}: Comparison<SiteBuild>): Element {
  const {median, typical, furthest} = spread(deviations.map(({difference}) => difference))
  const {one, planned} = deviations[0]!
  const write = (value: number) => writeMeasured(value, unit, {units: one.plan.units, near: planned})
  const side = (value: number) => `${write(Math.abs(value))} ${value > 0 ? 'more' : 'less'}`
  const middle = `the middle one ${write(Math.abs(median)) === write(0) ? 'as planned' : side(median)}`
  const all = deviations.map(
    ({one: {title}, path, difference}) =>
      `${title}, ${keyInWords(path)}: ${difference === 0 ? 'as planned' : side(difference)}`,
  )
  return offPlanPlot({
    id: `off-plan-${kind}-${unit}`.toLowerCase(),
    title: `${names[kind]}: how far off the plan`,
    says: `${all.join('; ')}. ${middle.charAt(0).toUpperCase()}${middle.slice(1)}.`,
    differences: deviations.map(({difference}) => difference),
    median,
    typical,
    words: {least: `${write(furthest)} less`, most: `${write(furthest)} more`, middle, plan: 'plan'},
  })
}

function sentence({deviations, builds, unit}: Comparison<SiteBuild>): string {
  const {median, typical, furthest, above, below} = spread(deviations.map(({difference}) => difference))
  const {one, planned} = deviations[0]!
  const write = (value: number) => writeMeasured(value, unit, {units: one.plan.units, near: planned})
  const leans =
    above >= 2 * below ? 'mostly over' : below >= 2 * above ? 'mostly under' : 'as often over as under'
  const middle =
    Math.abs(median) > typical / 2 && write(Math.abs(median)) !== write(0)
      ? `, the middle one by ${write(Math.abs(median))}`
      : ''
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
        keyInWords(path),
        measured(planned, unit, by),
        measured(found, unit, by),
        [measured(Math.abs(difference), unit, by), difference > 0 ? ' more' : difference < 0 ? ' less' : ''],
      ]
    }),
  })
}
