import type {BlockContent} from 'mdast'
import type {Plan} from '../plan/plan.ts'
import type {Line} from '../plan/scale/lines.ts'
import {noticeableSource} from '../tables/hearing.ts'
import {inchMm} from '../tables/units.ts'
import {exactBoth, lengthWords} from '../words/lengths.ts'
import {cents, centsOff, number} from '../words/quantities.ts'
import {figures, fold, holds, type Inline, paragraph, source, strong, subHeading} from './kit.ts'
import {type Cell, table} from './kit-table.ts'
import {fractions, length, measure} from './measures.ts'
import type {Section} from './section.ts'

/** Where every fret or marker line goes, what the ruler makes of it, and how finely to mark. */
export const lines: Section = {
  name: 'lines',
  title: 'Lines',
  needs: ({plan: {scale}}) => {
    if (scale?.lengthMm === undefined) return ['scale.length']
    return scale.lines?.length ? [] : ['scale.lines']
  },
  content: ({plan}) => {
    const [just, tried] = [justMarks(plan), rulersTried(plan)]
    const name = holds(
      [`${(plan.scale?.lines ?? []).length} exact places`, ['always']],
      ['what the ruler leaves over', ['always']],
      ['pure intervals', just],
    )
    return [
      ...markingInWords(plan).map((said) => paragraph(...said)),
      ...fold(name, [paragraph(...measuredFrom(plan)), lineTable(plan), ...just, ...tried]),
    ]
  },
}

/** Say what the lines divide, and how they are measured. */
const measuredFrom = (plan: Plan): Inline[] => [
  'They divide ',
  length(plan.scale?.lengthMm ?? 0, plan),
  ', all measured from the nut line with one rule.',
]

/** Say what is to be marked, what the ruler does to it at worst, and whether ears would notice. */
function markingInWords({scale, ...plan}: Plan): Inline[][] {
  const {
    lines = [],
    lengthMm,
    fretted,
    worstMarkErrorCents,
    worstMarkLabel,
    noticeableCents,
    rulerNeeded,
  } = scale ?? {}
  if (lengthMm === undefined || worstMarkErrorCents === undefined || noticeableCents === undefined) return []
  const things = fretted
    ? lines.length === 1
      ? 'fret slot'
      : 'fret slots'
    : lines.length === 1
      ? 'marker line'
      : 'marker lines'
  const ruler = fractions(
    lengthWords(plan.rulerMm, {...plan, rulerMm: plan.units === 'in' ? inchMm / 64 : 0.05}),
  )
  const isFine = worstMarkErrorCents <= noticeableCents
  const finer: Inline[] = rulerNeeded
    ? ['mark to ', strong(...fractions(rulerNeeded.text)), '.']
    : ['mark with dividers or a printed template.']
  return [
    [
      strong(`${lines.length} ${things}`),
      '. Marked to ',
      ...ruler,
      `, line ${worstMarkLabel} is the furthest off, ${centsOff(worstMarkErrorCents)}; ears notice about ${number(noticeableCents, 0)}. `,
      ...(isFine ? ['That is fine enough.'] : ['Finer would be heard: ', ...finer]),
    ],
  ]
}

interface Column {
  head: string
  align?: 'right'
  cell: (line: Line, plan: Plan) => Cell
}

/** List every line: its mark on the ruler, its exact place, what the mark is off, and its pitch where that is not equal. */
function lineTable(plan: Plan) {
  const {lines = [], dots = [], fretted} = plan.scale ?? {}
  const dotted = new Set(dots.map(({label}) => label))
  const columns: Column[] = [
    {
      head: fretted ? 'Fret' : 'Line',
      cell: ({label}) => [...fractions(label), ...(dotted.has(label) ? [' •'] : [])],
    },
    {head: 'Mark at', align: 'right', cell: ({mark}) => strong(...fractions(mark))},
    {head: 'Exactly', align: 'right', cell: ({fromNutMm}) => measure(...exactBoth(fromNutMm, plan))},
    {head: 'The mark is off', align: 'right', cell: ({markErrorCents}) => cents(markErrorCents, 1)},
    {
      head: 'From the line before',
      align: 'right',
      cell: ({fromPreviousMm}) => measure(...exactBoth(fromPreviousMm, plan)),
    },
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

/** List where a slide finds the pure intervals, for marks on the side of a fretless neck. */
function justMarks({scale}: Plan): BlockContent[] {
  const marks = scale?.justMarks ?? []
  if (marks.length === 0) return []
  return [
    subHeading('Pure intervals, for the side of the neck'),
    table({
      caption: 'Where the pure intervals lie',
      columns: [
        {head: 'Above the open string'},
        {head: 'Ratio', align: 'right'},
        {head: 'Mark at', align: 'right'},
        {head: 'Cents', align: 'right'},
      ],
      rows: marks.map(({name, ratio, mark, cents}) => [
        name,
        fractions(ratio),
        strong(...fractions(mark)),
        number(cents, 1),
      ]),
      note: 'A slide stops anywhere, so it can play these; the lines above are for equal semitones or what the file says.',
    }),
  ]
}

/** Fold away what other rulers would do to these lines at worst, and where the least that ears notice comes from. */
function rulersTried({scale}: Plan): BlockContent[] {
  const rulers = scale?.rulers ?? []
  if (rulers.length === 0) return []
  return [
    figures('Figures: how finely to mark', [
      table({
        caption: 'The furthest off that each ruler would leave a line',
        columns: [{head: 'Marked to'}, {head: 'Furthest off', align: 'right'}, {head: 'At line'}],
        rows: rulers.map(({text, worstCents, worstLabel}) => [
          fractions(text),
          centsOff(worstCents),
          fractions(worstLabel),
        ]),
      }),
      source(`about five cents is the least that is noticed: ${noticeableSource}.`),
    ]),
  ]
}
