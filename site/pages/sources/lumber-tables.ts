import {writeLength} from '../../../plugins/build-file/quantities/write-length.ts'
import {fractions} from '../../../plugins/sections/kit/fraction.ts'
import {
  hardwoodThicknesses,
  lumberSources,
  softwoodThicknesses,
  softwoodWidths,
} from '../../../plugins/tables/lumber.ts'
import {right, type SourceTable} from './source-table.ts'

const inches = (mm: number) => fractions(writeLength(mm, {units: 'in', rulerMm: 25.4 / 16}))

/** Name what boards are sold as, and what they are dressed to. */
const dressed = (caption: string, rows: readonly {nominal: string; mm: number}[]): SourceTable['table'] => ({
  caption,
  columns: [{head: 'Sold as'}, right('Dressed to')],
  rows: rows.map(({nominal, mm}) => [nominal, inches(mm)]),
})

/** The tables that boards to buy are chosen from. */
export const lumberTables: readonly SourceTable[] = [
  {
    title: 'Softwood boards, thickness',
    source: lumberSources.softwood,
    table: dressed('Dry, in inches', softwoodThicknesses),
  },
  {
    title: 'Softwood boards, width',
    source: lumberSources.softwood,
    table: dressed('Dry, in inches', softwoodWidths),
  },
  {
    title: 'Hardwood boards, thickness',
    source: `${lumberSources.hardwood}; 1/2, 3/4 and from 10/4 on from memory`,
    table: dressed('Surfaced two sides', hardwoodThicknesses),
  },
]
