import type {Plan} from '../../plan/shape/plan.ts'
import {handOf} from '../instrument/hand.ts'
import {placedBox} from '../instrument/placed-box.ts'
import type {Span} from '../kit/lanes.ts'
import {figureOf} from '../words.ts'
import {offSpans} from './off-spans.ts'
import {type StationKey, stations} from './stations.ts'

/** The dimensions down the right of an instrument: head, nut to box to bridge to tail, scale length and overall. */
export function spansAlong(plan: Plan): Span[] {
  const places = stations(plan)
  const find = (key: StationKey) => places.find((place) => place.key === key)
  const span = (fromKey: StationKey, toKey: StationKey): Span[] => {
    const [from, to] = [find(fromKey), find(toKey)]
    return from && to && Math.abs(to.stationMm - from.stationMm) > 0.01
      ? [
          {
            from: from.stationMm,
            to: to.stationMm,
            fromEdge: from.halfWidthMm,
            toEdge: to.halfWidthMm,
            figure: figureOf(Math.abs(to.stationMm - from.stationMm), plan),
          },
        ]
      : []
  }
  return [
    ...span('head', 'nut'),
    ...span('nut', 'box'),
    ...span('box', 'bridge'),
    ...span('bridge', 'boxTail'),
    ...span('nut', 'bridge'),
    ...span('head', 'tail'),
  ]
}

/** The dimensions across: the box, and sound holes off the centre line. They start at the box's tail edge. */
export function spansAcross(plan: Plan): Span[] {
  const {neck} = plan.outline ?? {}
  const box = placedBox(plan)
  const tail = Math.max(box?.tailMm ?? 0, neck?.tailMm ?? 0)
  const width = (mm: number, edge: number): Span => ({
    from: -mm / 2,
    to: mm / 2,
    fromEdge: edge,
    toEdge: edge,
    figure: figureOf(mm, plan),
  })
  return [
    ...offSpans(plan.box?.soundHoles ?? [], handOf(plan), plan, tail, 3),
    ...(box ? [width(box.widthMm, box.tailMm)] : []),
    ...(neck && neck.tailWidthMm !== neck.nutWidthMm ? [width(neck.tailWidthMm, neck.tailMm)] : []),
  ]
}
