import type {Plan} from '../../plan/plan.ts'
import {circle, type Point, path, box as rectangle, type Shape} from '../kit/shapes.ts'
import {placedBox, soundHolesFront} from './box.ts'
import {type Hand, handOf} from './hand.ts'
import {neckWidth} from './neck.ts'

/** A hole that is drilled in the top besides the sound holes, the widest one where two share a place. In mm. */
interface TopHole {
  stationMm: number
  offMm: number
  diameterMm: number
}

/** List what is drilled through or into the top: for screws and strings, not the sound holes. */
export function topHoles({holes = []}: Plan): TopHole[] {
  const places = new Map<string, TopHole>()
  for (const {face, what, stationMm, offMm, diameterMm} of holes) {
    if ((face !== 'top' && face !== 'top inside') || what === 'sound hole') continue
    const key = `${stationMm.toFixed(2)} ${offMm.toFixed(2)}`
    const known = places.get(key)
    if (!known || known.diameterMm < diameterMm) places.set(key, {stationMm, offMm, diameterMm})
  }
  return [...places.values()]
}

/** Seen from inside, left and right change places. */
export function insideHand(plan: Plan): Hand {
  const hand = handOf(plan)
  return {x: (offMm) => -hand.x(offMm) + 0, bass: hand.bass === 1 ? -1 : 1}
}

/**
 * Draw the box's top as it is seen from inside, with the sides cut: walls, blocks, screws and holes; the neck and the
 * bridge dashed where the top hides them. Mm from the nut line down the page, the head side up.
 */
export function boxInside(plan: Plan): Shape[] {
  const box = placedBox(plan)
  if (!box) return []
  const hand = insideHand(plan)
  const {atMm, tailMm, widthMm, sidesMm} = box
  const half = widthMm / 2
  return [
    rectangle('outline', [-half, atMm], [half, tailMm]),
    rectangle('outline', [-half + sidesMm, atMm + sidesMm], [half - sidesMm, tailMm - sidesMm]),
    ...neckUnder(plan),
    ...bridgeUnder(plan),
    ...blocks(plan, hand),
    ...soundHolesFront(plan, hand),
    ...topHoles(plan).flatMap((hole) => drilled(hole, hand)),
  ]
}

function neckUnder(plan: Plan): Shape[] {
  const neck = plan.outline?.neck
  const box = placedBox(plan)
  if (!neck || !box || neck.joins === 'end') return []
  const [from, to] = [box.atMm + box.sidesMm, Math.min(neck.tailMm, box.tailMm - box.sidesMm)]
  if (to <= from) return []
  const ink = neck.joins === 'through' ? 'edge' : 'hidden'
  const edge = (side: number): Point[] => [
    [(side * neckWidth(neck, from)) / 2, from],
    [(side * neckWidth(neck, to)) / 2, to],
  ]
  const end = neck.tailMm < box.tailMm - box.sidesMm ? [path(ink, edge(-1)[1]!, edge(1)[1]!)] : []
  return [path(ink, ...edge(-1)), path(ink, ...edge(1)), ...end]
}

function bridgeUnder({outline, bridge}: Plan): Shape[] {
  if (!outline?.bridge || bridge?.on !== 'top') return []
  const {lengthMm, footMm} = outline.bridge
  const [x, y] = [lengthMm / 2, bridge.stationMm]
  return [
    footMm > 0
      ? rectangle('hidden', [-x, y - footMm / 2], [x, y + footMm / 2])
      : path('hidden', [-x, y], [x, y]),
  ]
}

function blocks({box}: Plan, hand: Hand): Shape[] {
  return (box?.blocks ?? []).map(({stationMm, offMm, lengthMm, widthMm}) => {
    const x = hand.x(offMm)
    return rectangle(
      'outline',
      [x - widthMm / 2, stationMm - lengthMm / 2],
      [x + widthMm / 2, stationMm + lengthMm / 2],
    )
  })
}

function drilled({stationMm, offMm, diameterMm}: TopHole, hand: Hand): Shape[] {
  const [x, y, r] = [hand.x(offMm), stationMm, diameterMm / 2]
  return [
    circle('edge', [x, y], r),
    path('dimension', [x - 1.8 * r, y], [x + 1.8 * r, y]),
    path('dimension', [x, y - 1.8 * r], [x, y + 1.8 * r]),
  ]
}
