import type {BlockContent} from 'mdast'
import {overTimePlot} from '../drawings/plots/over-time-plot.ts'
import type {AsBuilt} from '../plan/as-built/as-built.ts'
import {effectsInWords} from '../words/as-built.ts'
import {keyInWords} from '../words/keys.ts'
import {writeMeasured} from '../words/measured.ts'
import {figure, fold, list, note, paragraph, strong, subHeading} from './kit.ts'
import {type Cell, table} from './kit-table.ts'
import {fractions, measured} from './measures.ts'
import type {Section, SectionInput} from './section.ts'

/** What was measured on the finished thing, beside what was drawn, and what the difference does. */
export const asBuilt: Section = {
  name: 'as-built',
  title: 'As built',
  quiet: true,
  needs: ({plan}) => (plan.asBuilt?.length ? [] : ['measured']),
  content: ({plan}) => {
    const measures = plan.asBuilt ?? []
    const effects = measures.flatMap((measure) => effectsInWords(measure, plan))
    const out = measures.filter(({isOut}) => isOut).length
    return [
      paragraph(
        strong(`${measures.length} measured`),
        out === 0 ? ', none of them out of bounds.' : `, ${out} of them further off than allowed.`,
        ...againInWords(measures),
      ),
      ...fold(effects.length > 0 ? 'Planned and measured, and what it does' : 'Planned and measured', [
        table({
          caption: 'Planned and measured',
          columns: [
            {head: 'What'},
            {head: 'Planned', align: 'right'},
            {head: 'Measured', align: 'right'},
            {head: 'Difference', align: 'right'},
            {head: 'Allowed', align: 'right'},
          ],
          rows: measures.map((measure) => row(measure, plan)),
        }),
        note(
          'Allowed is a mark of the ruler, half a degree, a tenth of a pull or what ears notice, where the file does not say: common practice, no source, but for hearing.',
        ),
        ...(effects.length > 0 ? [subHeading('What that does'), list(effects.map(fractions))] : []),
        ...howItMoved(measures, plan),
      ]),
    ]
  },
}

/** Say when it was measured last, where that was more than once. */
function againInWords(measures: readonly AsBuilt[]): string[] {
  const days = measures.flatMap(({on, earlier}) => (earlier ? [on ?? ''] : [])).sort()
  return days.length > 0 ? [` The last day counts${days.at(-1) ? `: ${days.at(-1)}` : ''}.`] : []
}

/** Set out what was measured more than once, the earliest first: how it moved, and since when. */
function howItMoved(measures: readonly AsBuilt[], {units}: SectionInput['plan']): BlockContent[] {
  const moved = measures.filter(({earlier}) => earlier)
  if (moved.length === 0) return []
  const plots = moved.map((measure) => overTime(measure, units))
  const others = moved.filter((_, at) => plots[at]!.length === 0)
  return [
    subHeading('How it moved'),
    ...plots.flat(),
    ...(others.length > 0 ? [dayTable(others, units)] : []),
  ]
}

/** Set out measures whose days are not all known. */
function dayTable(moved: readonly AsBuilt[], units: 'in' | 'mm'): BlockContent {
  return table({
    caption: 'Measured more than once',
    columns: [
      {head: 'What'},
      {head: 'Day'},
      {head: 'Measured', align: 'right'},
      {head: 'Since the day before', align: 'right'},
    ],
    rows: moved.flatMap(({path, on, measured: last, unit, earlier = [], planned}) => {
      const by = {units, ...(planned !== undefined && {near: planned})}
      return [...earlier, {on, measured: last}].map(({on: day, measured: found}, i): Cell[] => [
        {type: 'inlineCode', value: path},
        day ?? 'no day given',
        measured(found, unit, by),
        i === 0 ? '' : offInWords(found - earlier[i - 1]!.measured, unit, by),
      ])
    }),
  })
}

/** Draw how a measure moved, where at least two of its days are known. */
function overTime(
  {path, on, measured: last, unit, earlier = [], planned}: AsBuilt,
  units: 'in' | 'mm',
): BlockContent[] {
  const written = (value: number) => writeMeasured(value, unit, {units, near: planned ?? value})
  const days = [...earlier, {on, measured: last}].flatMap(({on: day, measured: value}) =>
    day === undefined ? [] : [{on: day, value, figure: written(value)}],
  )
  if (new Set(days.map((day) => day.on)).size < 2) return []
  const name = keyInWords(path)
  const says = `${capital(name)} over time.`
  const id = `over-time-${path.toLowerCase().replace(/[^a-z0-9]+/g, '-')}`
  const drawn = {
    id,
    title: name,
    says,
    days,
    planned: planned === undefined ? undefined : {value: planned, figure: written(planned)},
  }
  const figures = days.map(({on: day, figure: found}) => `${found} on ${day}`).join(', ')
  const plan = planned === undefined ? '' : `; ${written(planned)} planned, the broken line`
  const caption = fractions(`${capital(name)}: ${figures}${plan}.`)
  return [figure(overTimePlot(drawn), {alt: says, caption})]
}

const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1)

/** Say how far a measure is off, and which way: `1/32 in more`. */
function offInWords(difference: number, unit: AsBuilt['unit'], by: Parameters<typeof measured>[2]): Cell {
  const size = measured(Math.abs(difference), unit, by)
  return Math.abs(difference) < 1e-6 ? 'none' : [size, difference > 0 ? ' more' : ' less']
}

function row(
  {path, planned, measured: found, difference, tolerance, isOut, unit}: AsBuilt,
  {units}: SectionInput['plan'],
): Cell[] {
  const by = {units, ...(planned !== undefined && {near: planned})}
  const written = (value: number | undefined) => (value === undefined ? '' : measured(value, unit, by))
  const off = difference === undefined ? '' : offInWords(difference, unit, by)
  const allowed = tolerance === undefined ? '' : [written(tolerance), isOut ? ', too far off' : ''].flat()
  return [keyInWords(path), written(planned), written(found), off, allowed]
}
