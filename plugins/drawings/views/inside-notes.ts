import type {Plan} from '../../plan/shape/plan.ts'
import {insideHand, topHoles} from '../instrument/box-inside.ts'
import {placedBox} from '../instrument/placed-box.ts'
import type {Note} from '../kit/notes.ts'
import {diameterOf, figureOf} from '../words.ts'

interface Row {
  name: string
  stationMm: number
  left: number
  count: number
}

const mostRows = 12

/** Name what is glued and drilled inside, a row at a time, with its distance from the box's head-side edge. */
export function insideNotes(plan: Plan): Note[] {
  const box = placedBox(plan)
  if (!box) return []
  const hand = insideHand(plan)
  const rows = new Map<string, Row>()
  const add = (name: string, stationMm: number, left: number) => {
    const key = `${name} ${stationMm.toFixed(2)}`
    const row = rows.get(key) ?? {name, stationMm, left, count: 0}
    rows.set(key, {...row, left: Math.min(left, row.left), count: row.count + 1})
  }
  for (const {stationMm, offMm, widthMm, lengthMm} of plan.box?.blocks ?? []) {
    const size = `${figureOf(widthMm, plan)} × ${figureOf(lengthMm, plan)}`
    add(`block ${size}`, stationMm, hand.x(offMm) - widthMm / 2)
  }
  for (const {stationMm, offMm, diameterMm} of topHoles(plan))
    add(diameterOf(diameterMm, plan), stationMm, hand.x(offMm) - diameterMm / 2)
  for (const {stationMm, offMm, diameterMm} of plan.box?.soundHoles ?? [])
    add(diameterOf(diameterMm, plan), stationMm, hand.x(offMm) - diameterMm / 2)
  const {bridge, outline} = plan
  if (bridge && bridge.stationMm > box.atMm && bridge.stationMm < box.tailMm)
    add('bridge line', bridge.stationMm, -(outline?.bridge?.lengthMm ?? 0) / 2)
  const sorted = [...rows.values()].sort((a, b) => a.stationMm - b.stationMm)
  return [
    {at: [-box.widthMm / 2, box.atMm], name: 'box, head side'},
    ...sorted.slice(0, mostRows).map(
      ({name, stationMm, left, count}): Note => ({
        at: [left, stationMm],
        name: count > 1 ? `${count} × ${name}` : name,
        figure: figureOf(stationMm - box.atMm, plan),
      }),
    ),
  ]
}
