import {writeLength} from '../../../plugins/build-file/quantities/write-length.ts'
import {fractions} from '../../../plugins/sections/kit/fraction.ts'
import {drillSource, letterDrillsIn, numberDrillsIn} from '../../../plugins/tables/drills.ts'
import {screwSources, screws} from '../../../plugins/tables/screws.ts'
import {right, type SourceTable} from './source-table.ts'

const bit = (inches: number) => fractions(writeLength(inches * 25.4, {units: 'in', rulerMm: 25.4 / 64}))

/** The tables that screws and bits are chosen from. */
export const shopTables: readonly SourceTable[] = [
  {
    title: 'Wood screws',
    source: Object.values(screwSources).join('; '),
    table: {
      caption: 'By gauge number; bits in inches',
      columns: [
        right('Gauge'),
        right('Threads in an inch'),
        right('Root, in'),
        right('Pilot in softwood'),
        right('Pilot in hardwood'),
        right('Clearance'),
      ],
      rows: screws.map(({gauge, threadsPerInch, rootIn, pilotIn, shankHoleIn}) => [
        String(gauge),
        String(threadsPerInch),
        rootIn.toFixed(3),
        bit(pilotIn.soft),
        bit(pilotIn.hard),
        bit(shankHoleIn),
      ]),
    },
  },
  {
    title: 'Drill sizes',
    source: drillSource,
    table: {
      caption: 'Number and letter sizes, in inches',
      columns: [{head: 'Size'}, right('Diameter')],
      rows: [
        ...numberDrillsIn.map((diameter, at) => [`No. ${at + 1}`, diameter.toFixed(4)]),
        ...Object.entries(letterDrillsIn).map(([letter, diameter]) => [letter, diameter.toFixed(3)]),
      ],
    },
  },
]
