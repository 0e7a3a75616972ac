import type {Plan} from '../../plan/shape/plan.ts'
import {type Inline, length, lengthAlone, mass} from '../kit.ts'

/** Say how the neck is shaped, what is left under the nut, and what it weighs. */
export function shapeInWords(plan: Plan): Inline[][] {
  return [...rounded(plan), ...underNut(plan), ...weighs(plan)]
}

function rounded(plan: Plan): Inline[][] {
  const {roundOver} = plan.neck ?? {}
  if (!roundOver) return []
  const {radiusMm, fromMm, toMm, runInMm, flatMm} = roundOver
  const flat: Inline[] =
    flatMm > 0
      ? ['; ', lengthAlone(flatMm, plan, 'down'), ' of flat side is left for the cutter’s bearing']
      : []
  return [
    [
      'Round the back edges over with a ',
      length(radiusMm, plan),
      ' radius, from ',
      ...place(fromMm, plan),
      ' to ',
      ...place(toMm, plan),
      '. The cutter needs ',
      lengthAlone(runInMm, plan, 'up'),
      ' at each end to come to full depth',
      ...flat,
      '.',
    ],
  ]
}

function place(stationMm: number, plan: Plan): Inline[] {
  const words = stationMm < 0 ? ' behind the nut' : ' from the nut'
  return [lengthAlone(Math.abs(stationMm), plan), words]
}

function underNut(plan: Plan): Inline[][] {
  const {nutSeat} = plan.neck ?? {}
  if (!nutSeat) return []
  return [
    [
      'The nut’s groove, ',
      lengthAlone(nutSeat.grooveMm, plan),
      ' deep, leaves ',
      lengthAlone(nutSeat.leftMm, plan, 'down'),
      ' of wood under it.',
    ],
  ]
}

function weighs(plan: Plan): Inline[][] {
  const {massKg, balanceMm} = plan.neck ?? {}
  if (massKg === undefined || balanceMm === undefined) return []
  const side = balanceMm >= 0 ? ' towards the bridge from the nut.' : ' behind the nut.'
  return [
    [
      'With its head it weighs about ',
      mass(massKg, plan),
      ' bare, and balances ',
      length(Math.abs(balanceMm), plan),
      side,
    ],
  ]
}
