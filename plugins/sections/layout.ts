import {type NamedKey, namedStations} from '../drawings/hero/names.ts'
import {instrumentOf} from '../drawings/instrument/instrument.ts'
import type {Station, StationKind} from '../plan/layout/layout.ts'
import {placeName} from '../words/places.ts'
import {fold, link, note, paragraph, strong} from './kit.ts'
import {type Cell, table} from './kit-table.ts'
import {fromNut, length, lengthAlone} from './measures.ts'
import type {Section, SectionInput} from './section.ts'

/** Every station in order, from the nut, from the head end and from the tail end, to the maker's ruler. */
export const layout: Section = {
  name: 'layout',
  title: 'Layout',
  needs: ({plan}) => (plan.layout || plan.scale?.longestMm !== undefined ? [] : ['scale.length']),
  content: ({plan, isOnPage = () => true}) => {
    const stations = plan.layout ?? []
    if (stations.length === 0) return longest(plan)
    const named = new Set<string>(
      isOnPage('drawing') ? namedStations(instrumentOf(plan)).map(({key}) => key) : [],
    )
    const keys = stations.map(rowKey).map((key, at, all) => (all.indexOf(key) === at ? key : ''))
    const ids = keys.map((key) => (named.has(key) ? `at-${key}` : undefined))
    return [
      ...longest(plan),
      ...fold(`All ${stations.length} stations`, [
        table({
          caption: 'Every station, from the head end to the tail end',
          columns: columns(stations).map(({head, align}) => ({head, ...(align && {align})})),
          rows: stations.map((station, at) =>
            columns(stations).map(({cell}, column) => {
              const said = cell(station, plan)
              return column === 0 && ids[at] ? link(`#on-${keys[at]}`, said as string) : said
            }),
          ),
          rowId: (row) => ids[row],
          rowClass: (row) => (stations[row]?.what.kind === 'nut' ? 'nut-line' : undefined),
        }),
        note(
          'All from one end of one rule, never from mark to mark. Behind the nut, measure along the head’s own face. ',
          'What the ruler rounds is under the lines.',
        ),
      ]),
    ]
  },
}

/** Name the place on the drawing that a station is named at; empty where it is not. */
export function rowKey({what, stationMm}: Station, _: number, all: readonly Station[]): NamedKey | '' {
  if (what.kind === 'box edge') return what.end === 'head' ? 'boxHead' : 'boxTail'
  if (what.kind !== 'line') return keyOfKind[what.kind] ?? ''
  const bridgeMm = all.find((one) => one.what.kind === 'bridge')?.stationMm ?? 0
  return Math.abs(stationMm - bridgeMm / 2) < 0.5 ? 'octave' : ''
}

const keyOfKind: Partial<Record<StationKind, NamedKey>> = {
  'head end': 'headEnd',
  nut: 'nut',
  bridge: 'bridge',
  anchor: 'anchors',
  'tail end': 'tailEnd',
  'sound hole': 'hole',
}

/** Where no scale length is given yet: the longest that would do. */
function longest(plan: SectionInput['plan']) {
  const mm = plan.scale?.longestMm
  if (mm === undefined) return []
  const said = 'The longest scale that this stick and this box allow is '
  return [
    paragraph(
      said,
      strong(length(mm, plan, 'down')),
      '. Give it, or a shorter one, as ',
      strong('scale.length'),
      ', and every station follows.',
    ),
  ]
}

interface Column {
  head: string
  align?: 'right'
  cell: (station: Station, plan: SectionInput['plan']) => Cell
}

/** Leave out the columns that no station has. */
function columns(stations: readonly Station[]): Column[] {
  const measured = (head: string, key: 'fromHeadMm' | 'fromTailMm'): Column[] =>
    stations.every((station) => station[key] === undefined)
      ? []
      : [{head, align: 'right', cell: (station, plan) => lengthAlone(station[key] ?? 0, plan)}]
  return [
    {
      head: 'Where',
      cell: ({what, proposed}) => (proposed ? `${placeName(what)} (proposed)` : placeName(what)),
    },
    {head: 'From the nut', align: 'right', cell: ({stationMm}, plan) => fromNut(stationMm, plan, true)},
    ...measured('From the head end', 'fromHeadMm'),
    ...measured('From the tail end', 'fromTailMm'),
  ]
}
