import {
  across,
  circle,
  cross,
  loop,
  type Point,
  path,
  rectangle,
  rectangleAbout,
  type Shape,
} from '../kit/shapes.ts'
import {bridgeFront} from './hardware.ts'
import {type DrilledHole, type Instrument, placed} from './instrument.ts'
import {toBox} from './profile.ts'

/** Draw the box's outline from the front, broken where the neck lies over its edges, and its sound holes. In mm. */
export function boxFront(instrument: Instrument): Shape[] {
  const {box} = instrument
  if (!box) return []
  const half = box.widthMm / 2
  return [
    path('outline', [-half, box.atMm], [-half, box.tailMm]),
    path('outline', [half, box.atMm], [half, box.tailMm]),
    ...boxEnd(instrument, half, box.atMm),
    ...boxEnd(instrument, half, box.tailMm),
    ...soundHoles(instrument),
  ]
}

/** Draw an end of the box: whole, or hidden where the neck or its fingerboard lies over it. */
function boxEnd({neck, halfMm}: Instrument, wide: number, station: number): Shape[] {
  const whole = [across('outline', wide, station)]
  if (!neck || neck.joins === 'end') return whole
  const overToMm =
    neck.joins === 'on top' ? neck.tailMm : (neck.fingerboard?.toMm ?? Number.NEGATIVE_INFINITY)
  if (overToMm < station) return whole
  const half = halfMm(station)
  return [
    path('outline', [-wide, station], [-half, station]),
    across('hidden', half, station),
    path('outline', [half, station], [wide, station]),
  ]
}

const soundHoles = (instrument: Instrument): Shape[] =>
  (instrument.plan.box?.soundHoles ?? []).map((hole) =>
    circle('outline', placed(instrument, hole), hole.diameterMm / 2),
  )

/** Draw the blocks inside the box, along and across it. In mm. */
export const blocks = (instrument: Instrument, ink: 'outline' | 'hidden'): Shape[] =>
  (instrument.plan.box?.blocks ?? []).map((block) =>
    rectangleAbout(ink, placed(instrument, block), block.widthMm, block.lengthMm),
  )

/**
 * Draw the top of a box that was turned over (`fromInside`), with the sides cut: walls, blocks, screws and holes; the
 * neck and the bridge dashed where the top hides them.
 */
export function boxInside(instrument: Instrument): Shape[] {
  const {box, topHoles, plan} = instrument
  if (!box) return []
  const {atMm, tailMm, widthMm, sidesMm} = box
  const half = widthMm / 2
  return [
    rectangle('outline', [-half, atMm], [half, tailMm]),
    rectangle('outline', [-half + sidesMm, atMm + sidesMm], [half - sidesMm, tailMm - sidesMm]),
    ...neckUnder(instrument),
    ...(plan.bridge?.on === 'top' ? bridgeFront(instrument, 'hidden') : []),
    ...blocks(instrument, 'outline'),
    ...soundHoles(instrument),
    ...topHoles.flatMap((hole) => drilled(instrument, hole)),
  ]
}

function neckUnder({neck, box, halfMm}: Instrument): Shape[] {
  if (!neck || !box || neck.joins === 'end') return []
  const [from, to] = [box.atMm + box.sidesMm, Math.min(neck.tailMm, box.tailMm - box.sidesMm)]
  if (to <= from) return []
  const ink = neck.joins === 'through' ? 'edge' : 'hidden'
  const edges = [-1, 1].map((side) => path(ink, [side * halfMm(from), from], [side * halfMm(to), to]))
  return neck.tailMm < box.tailMm - box.sidesMm ? [...edges, across(ink, halfMm(to), to)] : edges
}

function drilled(instrument: Instrument, hole: DrilledHole): Shape[] {
  const at = placed(instrument, hole)
  const radius = hole.diameterMm / 2
  return [circle('edge', at, radius), ...cross('dimension', at, 1.8 * radius)]
}

/** Draw the box from the side: its outline; top, back, ends and the end block dashed behind its side. In mm. */
export function boxSide(instrument: Instrument): Shape[] {
  const {box, plan} = instrument
  if (!box) return []
  const {atMm, tailMm, depthMm, sidesMm, topMm, backMm} = box
  const ends = (plan.box?.blocks ?? []).filter(({of}) => of === 'box.end-block')
  const corners = ([d1, d2]: Point, [s1, s2]: Point): Point[] => [
    toBox(instrument, d1, s1),
    toBox(instrument, d2, s1),
    toBox(instrument, d2, s2),
    toBox(instrument, d1, s2),
  ]
  return [
    loop('outline', ...corners([0, depthMm], [atMm, tailMm])),
    loop('hidden', ...corners([topMm, depthMm - backMm], [atMm + sidesMm, tailMm - sidesMm])),
    ...ends.map(({thicknessMm = 0, lengthMm}) =>
      loop('hidden', ...corners([topMm, topMm + thicknessMm], [atMm + sidesMm, atMm + sidesMm + lengthMm])),
    ),
  ]
}
