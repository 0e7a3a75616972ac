import type {AsBuilt} from '../plan/shape/work.ts'
import {type Cell, cents, force, lengthAlone, list, number, subHeading, table} from './kit.ts'
import type {Section, SectionInput} from './section.ts'

/** What was measured on the finished thing, beside what was drawn, and what the difference does. */
export const asBuilt: Section = {
  name: 'as-built',
  title: 'As built',
  quiet: true,
  needs: ({plan}) => (plan.asBuilt?.length ? [] : ['measured']),
  content: ({plan}) => {
    const measures = plan.asBuilt ?? []
    const effects = measures.flatMap((measure) => measure.effects)
    return [
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
      ...(effects.length > 0 ? [subHeading('What that does'), list(effects)] : []),
    ]
  },
}

function row(
  {path, planned, measured, difference, tolerance, unit}: AsBuilt,
  plan: SectionInput['plan'],
): Cell[] {
  const written = (value: number | undefined) => (value === undefined ? '' : quantity(value, unit, plan))
  const isOut = tolerance !== undefined && difference !== undefined && Math.abs(difference) > tolerance
  const allowed = tolerance === undefined ? '' : [written(tolerance), isOut ? ', too far off' : ''].flat()
  return [
    {type: 'inlineCode', value: path},
    written(planned),
    written(measured),
    written(difference),
    allowed,
  ]
}

function quantity(value: number, unit: string, plan: SectionInput['plan']) {
  if (unit === 'mm') return lengthAlone(value, plan)
  if (unit === 'N') return force(value, plan)
  if (unit === 'cents') return cents(value, 1)
  return `${number(value, 1)} ${unit}`
}
