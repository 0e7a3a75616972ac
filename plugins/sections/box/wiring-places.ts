import type {Plan} from '../../plan/shape/plan.ts'
import {type Inline, length} from '../kit.ts'

/** Say where pickup and jack go, the thread that its wall asks for and the room behind it; `written` is the disc's size as the file has it. */
export function wiringPlaces(plan: Plan, written = ''): [string, ...Inline[]][] {
  const {pickup, box} = plan
  const {stationMm, diameterMm, under, jack} = pickup ?? {}
  const at = (mm: number) => length(mm, plan)
  const rows: [string, ...Inline[]][] = [
    [
      'Pickup',
      `${pickup?.kind ?? 'pickup'}`,
      ...(diameterMm === undefined
        ? []
        : [', ', /[a-z]/i.test(written) ? written : at(diameterMm), ' across']),
      ...(under ? [`, under the ${under}`] : []),
      ...(stationMm === undefined ? [] : [', its middle ', at(stationMm), ' from the nut']),
    ],
  ]
  if (!jack) return rows
  const {stationMm: jackMm, wallMm, leastThreadMm, threadMm, roomMm, isProposed, face} = jack
  const along =
    jackMm !== undefined && box?.atMm !== undefined && face !== 'tail end'
      ? [', ', at(jackMm - box.atMm), ' from the box’s head-side edge']
      : []
  rows.push([
    'Jack',
    `in the ${wallNames[face] ?? face}`,
    ...along,
    isProposed ? '; the file does not place it, and there is room here' : '',
  ])
  if (wallMm !== undefined && leastThreadMm !== undefined)
    rows.push([
      'Its thread',
      ...(threadMm === undefined ? [] : [at(threadMm), '; ']),
      'the wall of ',
      at(wallMm),
      ' and its nut need ',
      at(leastThreadMm),
    ])
  if (roomMm !== undefined) rows.push(['Room behind it', at(roomMm), ', from the wall’s outer face'])
  return rows
}

const wallNames: Readonly<Record<string, string>> = {
  'side bass': 'bass side',
  'side treble': 'treble side',
  'tail end': 'tail wall',
}
