import type {RootContent} from 'mdast'
import type {Plan} from '../../plan/shape/plan.ts'
import {angle, length, lengthAlone, table} from '../kit.ts'

/** List each string's post and the angle at which the string goes down to it behind the nut. */
export function postTable(plan: Plan): RootContent[] {
  const {tuners, neck} = plan
  if (!tuners) return []
  const angles = neck?.stringAngleDeg
  return [
    table({
      caption: 'Posts, along the head’s own face, and how the strings go down to them',
      columns: [
        {head: 'String'},
        {head: 'Behind the nut line', align: 'right'},
        {head: 'Off the centre line', align: 'right'},
        ...(angles ? [{head: 'Goes down at', align: 'right' as const}] : []),
      ],
      rows: tuners.map(({name, stationMm, offMm}, i) => [
        name ?? `${i + 1}`,
        length(-stationMm, plan),
        lengthAlone(offMm, plan),
        ...(angles ? [angle(angles[i] ?? 0)] : []),
      ]),
    }),
  ]
}
