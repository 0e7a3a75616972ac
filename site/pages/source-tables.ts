import {writeLength} from '../../plugins/build-file/quantities/write-length.ts'
import type {TableOptions} from '../../plugins/sections/kit-table.ts'
import {fractions} from '../../plugins/sections/measures.ts'
import {drillSource, letterDrillsIn, numberDrillsIn} from '../../plugins/tables/drills.ts'
import {noticeableCents, noticeableSource} from '../../plugins/tables/hearing.ts'
import {diatonicFrets, justIntervals, tunings} from '../../plugins/tables/intervals.ts'
import {
  hardwoodThicknesses,
  lumberSources,
  softwoodThicknesses,
  softwoodWidths,
} from '../../plugins/tables/lumber.ts'
import {screwSources, screws} from '../../plugins/tables/screws.ts'
import {inchMm} from '../../plugins/tables/units.ts'

/** A table that the computations use, as its page shows it; `source` says where all rows come from that name none. */
export interface SourceTable {
  title: string
  source?: string
  table: Pick<TableOptions, 'caption' | 'columns' | 'rows'>
}

export const right = (head: string) => ({head, align: 'right'}) as const

export const noSource = 'common practice, no source'

const bit = (inches: number) => fractions(writeLength(inches * inchMm, {units: 'in', rulerMm: inchMm / 64}))

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

const inches = (mm: number) => fractions(writeLength(mm, {units: 'in', rulerMm: inchMm / 16}))

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

/** The tables of notes. */
export const soundTables: readonly SourceTable[] = [
  {
    title: 'What an ear notices',
    source: noticeableSource,
    table: {
      caption: 'The least difference of pitch that listeners notice',
      columns: [right('Cents')],
      rows: [[String(noticeableCents)]],
    },
  },
  {
    title: 'Pure intervals',
    source: 'five-limit just intonation, as in any list of just ratios; the harmonic seventh 7/4 besides',
    table: {
      caption: 'Where a slide can stop in tune',
      columns: [{head: 'Interval'}, right('Ratio')],
      rows: justIntervals.map(({name, over, under}) => [name, `${over}:${under}`]),
    },
  },
  {
    title: 'Diatonic frets',
    source: `${noSource}; agrees with what reference works say of the Appalachian dulcimer`,
    table: {
      caption: 'Semitones above the open string; the next octave repeats them',
      columns: [right('Fret'), right('Semitones')],
      rows: diatonicFrets.map((semitones, at) => [String(at + 1), String(semitones)]),
    },
  },
  {
    title: 'Usual tunings',
    source: noSource,
    table: {
      caption: 'Semitones above the lowest string',
      columns: [{head: 'Tuning'}, {head: 'Semitones'}],
      rows: tunings.map(({name, semitones}) => [name, semitones.join(', ')]),
    },
  },
]
