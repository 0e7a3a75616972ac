import type {Plan} from '../../plan/shape/plan.ts'
import type {Line} from '../../plan/shape/scale.ts'
import {type Cell, cents, fractions, measure, strong, table} from '../kit.ts'

interface Column {
  head: string
  align?: 'right'
  cell: (line: Line, plan: Plan) => Cell
}

/** List every line: its mark on the ruler, its exact place, what the mark is off, and its pitch where that is not equal. */
export function lineTable(plan: Plan) {
  const {lines = [], dots = [], fretted} = plan.scale ?? {}
  const dotted = new Set(dots.map(({label}) => label))
  const columns: Column[] = [
    {
      head: fretted ? 'Fret' : 'Line',
      cell: ({label}) => [...fractions(label), ...(dotted.has(label) ? [' •'] : [])],
    },
    {head: 'Mark at', align: 'right', cell: ({mark}) => strong(...fractions(mark))},
    {head: 'Exactly', align: 'right', cell: ({fromNutMm}) => exactly(fromNutMm, plan)},
    {head: 'The mark is off', align: 'right', cell: ({markErrorCents}) => cents(markErrorCents, 1)},
    {head: 'From the line before', align: 'right', cell: ({fromPreviousMm}) => exactly(fromPreviousMm, plan)},
    ...(lines.some(({offEqualCents = 0}) => Math.abs(offEqualCents) > 1e-6) ? pitchColumns : []),
  ]
  return table({
    caption: `${fretted ? 'Fret slots' : 'Marker lines'} from the nut line`,
    columns: columns.map(({head, align}) => ({head, ...(align && {align})})),
    rows: lines.map((line) => columns.map(({cell}) => cell(line, plan))),
    note: [
      ...(dotted.size > 0 ? ['• carries a dot. '] : []),
      'Sharp is +, flat is −. The last step is to check by, never to mark from.',
    ],
  })
}

const pitchColumns: Column[] = [
  {head: 'Above the open string', align: 'right', cell: ({cents: above}) => `${above.toFixed(1)} cents`},
  {head: 'Off equal semitones', align: 'right', cell: ({offEqualCents = 0}) => cents(offEqualCents, 1)},
]

/** To a thousandth of an inch and a hundredth of a millimetre, finer than any mark. */
function exactly(mm: number, {units}: Plan) {
  const inches = `${(mm / 25.4).toFixed(3)} in`
  const millimetres = `${mm.toFixed(2)} mm`
  return units === 'in' ? measure(inches, millimetres) : measure(millimetres, inches)
}
