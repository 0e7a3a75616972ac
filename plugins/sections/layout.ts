import type {Station} from '../plan/layout.ts'
import {placeName} from '../words/places.ts'
import {note, paragraph, strong} from './kit.ts'
import {type Cell, table} from './kit-table.ts'
import {fromNut, length, lengthAlone} from './measures.ts'
import type {Section, SectionInput} from './section.ts'

/** Every station in order, from the nut, from the head end and from the tail end, to the maker's ruler. */
export const layout: Section = {
  name: 'layout',
  title: 'Layout',
  needs: ({plan}) => (plan.layout || plan.scale?.longestMm !== undefined ? [] : ['scale.length']),
  content: ({plan}) => {
    const stations = plan.layout ?? []
    if (stations.length === 0) return longest(plan)
    return [
      ...longest(plan),
      table({
        caption: 'Every station, from the head end to the tail end',
        columns: columns(stations).map(({head, align}) => ({head, ...(align && {align})})),
        rows: stations.map((station) => columns(stations).map(({cell}) => cell(station, plan))),
        rowClass: (row) => (stations[row]?.what.kind === 'nut' ? 'nut-line' : undefined),
      }),
      note(
        'All from one end of one rule, never from mark to mark. Behind the nut, measure along the head’s own face. ',
        'What the ruler rounds is under the lines.',
      ),
    ]
  },
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
    {head: 'Where', cell: ({what}) => placeName(what)},
    {head: 'From the nut', align: 'right', cell: ({stationMm}, plan) => fromNut(stationMm, plan, true)},
    ...measured('From the head end', 'fromHeadMm'),
    ...measured('From the tail end', 'fromTailMm'),
  ]
}
