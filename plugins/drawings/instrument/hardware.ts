import type {Plan} from '../../plan/plan.ts'
import type {InkName} from '../kit/inks.ts'
import {arc, box, circle, type Point, path, type Shape} from '../kit/shapes.ts'
import type {Hand} from './hand.ts'

/** Draw nut and bridge from the front, to scale: a rod or a bolt round its line, a flat nut behind it. In mm. */
export function nutAndBridge({outline, bridge}: Plan): Shape[] {
  const shapes: Shape[] = []
  const half = (outline?.neck?.nutWidthMm ?? 0) / 2
  if (half) {
    const {kind, alongMm} = outline?.nut ?? {kind: 'flat', alongMm: 0}
    const isRound = kind === 'rod' || kind === 'bolt'
    if (alongMm > 0)
      shapes.push(box('nut', [-half, isRound ? -alongMm / 2 : -alongMm], [half, isRound ? alongMm / 2 : 0]))
    if (!isRound || alongMm === 0) shapes.push(path('nut', [-half, 0], [half, 0]))
  }
  if (outline?.bridge && bridge) {
    const {lengthMm, footMm} = outline.bridge
    const [x, y] = [lengthMm / 2, bridge.stationMm]
    shapes.push(
      footMm > 0 ? box('nut', [-x, y - footMm / 2], [x, y + footMm / 2]) : path('nut', [-x, y], [x, y]),
    )
  }
  return shapes
}

/** Draw the tuners' post holes, and their buttons beside the head, to scale. In mm. */
export function tunersFront({outline, tuners = []}: Plan, hand: Hand): Shape[] {
  const wide = (outline?.head?.widthMm ?? 0) / 2
  const {side, postHoleMm = 0, buttonMm = 0} = outline?.tuners ?? {}
  return tuners.flatMap(({stationMm, offMm}) => {
    const post: Point = [hand.x(offMm), stationMm]
    const out = side === 'bass' ? hand.bass : side === 'treble' ? -hand.bass : post[0] < 0 ? -1 : 1
    return [
      ...(postHoleMm > 0 ? [circle('edge', post, postHoleMm / 2)] : []),
      circle('dot', post, Math.max(postHoleMm / 8, 0.5)),
      ...(buttonMm > 0 ? button(out, wide, stationMm, buttonMm) : []),
    ]
  })
}

function button(out: number, wide: number, station: number, size: number): Shape[] {
  const neck = wide + size * 0.35
  const shaft = (side: number) =>
    path('edge', [out * wide, station + side * size * 0.1], [out * neck, station + side * size * 0.1])
  return [
    shaft(-1),
    shaft(1),
    ...pill(
      'edge',
      [out * neck, station - size / 2],
      [out * (neck + size * 0.6), station + size / 2],
      size * 0.28,
    ),
  ]
}

/** Draw what holds the strings at the tail: a ferrule's or pin's body and the hole for the string. In mm. */
export function anchorsFront({outline, anchors = []}: Plan, hand: Hand): Shape[] {
  const {bodyMm, stringHoleMm = 0} = outline?.anchors ?? {}
  return anchors.flatMap(({stationMm, offMm}) => [
    ...(bodyMm ? [circle('edge', [hand.x(offMm), stationMm], bodyMm / 2)] : []),
    circle('dot', [hand.x(offMm), stationMm], Math.max(stringHoleMm / 2, 0.5)),
  ])
}

/** Draw an upright rectangle, in mm, whose corners are round, by no more than half its shorter side. */
function pill(ink: InkName, [x1, y1]: Point, [x2, y2]: Point, cornerMm: number): Shape[] {
  const [left, right, top, bottom] = [Math.min(x1, x2), Math.max(x1, x2), Math.min(y1, y2), Math.max(y1, y2)]
  const r = Math.min(cornerMm, (right - left) / 2, (bottom - top) / 2)
  return [
    path(ink, [left + r, top], [right - r, top]),
    arc(ink, [right - r, top + r], r, -90, 0),
    path(ink, [right, top + r], [right, bottom - r]),
    arc(ink, [right - r, bottom - r], r, 0, 90),
    path(ink, [right - r, bottom], [left + r, bottom]),
    arc(ink, [left + r, bottom - r], r, 90, 180),
    path(ink, [left, bottom - r], [left, top + r]),
    arc(ink, [left + r, top + r], r, 180, 270),
  ]
}
