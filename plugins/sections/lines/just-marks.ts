import type {BlockContent} from 'mdast'
import type {Plan} from '../../plan/shape/plan.ts'
import {fractions, number, strong, subHeading, table} from '../kit.ts'

/** List where a slide finds the pure intervals, for marks on the side of a fretless neck. */
export function justMarks({scale}: Plan): BlockContent[] {
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
