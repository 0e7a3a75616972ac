import {noticeableCents, noticeableSource} from '../../../plugins/tables/hearing.ts'
import {diatonicFrets, justIntervals, tunings} from '../../../plugins/tables/intervals.ts'
import {noSource, right, type SourceTable} from './source-table.ts'

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
