import type {InkName} from '../kit/inks.ts'
import {across, arc, circle, type Point, path, rectangle, rectangleAbout, type Shape} from '../kit/shapes.ts'
import {type Instrument, outwards, placed} from './instrument.ts'
import {headPoint, toBox} from './profile.ts'

/** Draw the nut from the front, to scale: a rod or a bolt round its line, a flat nut behind it. In mm. */
export function nutFront({plan, neck}: Instrument): Shape[] {
  const half = (neck?.nutWidthMm ?? 0) / 2
  if (!half) return []
  const {kind, alongMm} = plan.outline?.nut ?? flatNut
  if (isRound(kind) && alongMm > 0) return [rectangle('nut', [-half, -alongMm / 2], [half, alongMm / 2])]
  const body = alongMm > 0 ? [rectangle('nut', [-half, -alongMm], [half, 0])] : []
  return [...body, across('nut', half, 0)]
}

/** Draw the nut from the side. In mm. */
export function nutSide({plan: {outline, nut}}: Instrument): Shape[] {
  const {kind, alongMm, grooveMm} = outline?.nut ?? flatNut
  if (alongMm === 0) return []
  if (isRound(kind)) return [circle('nut', [grooveMm - alongMm / 2, 0], alongMm / 2)]
  const heightMm = nut?.heightMm ?? 0
  return kind === 'zero-fret'
    ? dome(heightMm, alongMm / 2)
    : [rectangle('nut', [-heightMm, -alongMm], [grooveMm, 0])]
}

/** A fret's crown on the nut line, so high and half as wide as this: part of a circle over its chord. */
function dome(highMm: number, halfMm: number): Shape[] {
  if (highMm <= 0) return []
  const radius = (highMm ** 2 + halfMm ** 2) / (2 * highMm)
  const halfDeg = (2 * Math.atan2(highMm, halfMm) * 180) / Math.PI
  return [arc('nut', [radius - highMm, 0], radius, [180 - halfDeg, 180 + halfDeg])]
}

const flatNut = {kind: 'flat', alongMm: 0, grooveMm: 0}

const isRound = (kind: string) => kind === 'rod' || kind === 'bolt'

/** Draw the bridge from the front: its foot to scale, or else its line. In mm. */
export function bridgeFront({plan: {outline, bridge}}: Instrument, ink: InkName): Shape[] {
  if (!outline?.bridge || !bridge) return []
  const {lengthMm, footMm} = outline.bridge
  return footMm > 0
    ? [rectangleAbout(ink, [0, bridge.stationMm], lengthMm, footMm)]
    : [across(ink, lengthMm / 2, bridge.stationMm)]
}

/** Draw the bridge from the side, from the string down to what it stands on. In mm. */
export function bridgeSide(instrument: Instrument): Shape[] {
  const {outline, action, bridge} = instrument.plan
  if (!outline?.bridge || !action || !bridge) return []
  const {stationMm, on} = bridge
  const half = outline.bridge.footMm / 2
  const under = on === 'top' ? toBox(instrument, 0, stationMm)[0] : -(action.bridgeStandsMm ?? 0)
  const crown = -action.bridgeHeightMm
  return half > 0
    ? [rectangle('nut', [crown, stationMm - half], [under, stationMm + half])]
    : [path('nut', [crown, stationMm], [under, stationMm])]
}

/** Draw the tuners' post holes, and their buttons beside the head, to scale. In mm. */
export function tunersFront(instrument: Instrument): Shape[] {
  const {outline, tuners = []} = instrument.plan
  const wide = (instrument.head?.widthMm ?? 0) / 2
  const {postHoleMm = 0, buttonMm = 0} = outline?.tuners ?? {}
  return tuners.flatMap((tuner) => {
    const post = placed(instrument, tuner)
    const out = buttonSide(instrument, post)
    return [
      ...(postHoleMm > 0 ? [circle('edge', post, postHoleMm / 2)] : []),
      circle('dot', post, Math.max(postHoleMm / 8, 0.5)),
      ...(buttonMm > 0 ? button([out * wide, tuner.stationMm], out, buttonMm) : []),
    ]
  })
}

/** Draw posts and buttons as they are told apart from afar: a small ring, and a disc beside the head. In mm. */
export function tunersFromAfar(instrument: Instrument): Shape[] {
  const {outline, tuners = []} = instrument.plan
  const wide = (instrument.head?.widthMm ?? 0) / 2
  const {postHoleMm = 0, buttonMm = 0} = outline?.tuners ?? {}
  return tuners.flatMap((tuner) => {
    const post = placed(instrument, tuner)
    const x = buttonSide(instrument, post) * (wide + buttonMm * 0.65)
    return [
      ...(postHoleMm > 0 ? [circle('edge', post, postHoleMm / 2)] : []),
      ...(buttonMm > 0 ? [circle('edge', [x, tuner.stationMm], buttonMm * 0.4)] : []),
    ]
  })
}

/** To which side of the page the button of a post points. */
function buttonSide(instrument: Instrument, [x]: Point): -1 | 1 {
  const {side} = instrument.plan.outline?.tuners ?? {}
  return side === 'bass' || side === 'treble' ? outwards(instrument, side) : x < 0 ? -1 : 1
}

/** A tuner's button beside the head's edge, on its shaft. */
function button([edge, y]: Point, out: -1 | 1, size: number): Shape[] {
  const neck = edge + out * size * 0.35
  const shaft = (side: -1 | 1) => path('edge', [edge, y + side * size * 0.1], [neck, y + side * size * 0.1])
  return [
    shaft(-1),
    shaft(1),
    ...pill([neck, y - size / 2], [neck + out * size * 0.6, y + size / 2], size * 0.28),
  ]
}

/** An upright rectangle whose corners are round, by no more than half its shorter side. */
function pill([x1, top]: Point, [x2, bottom]: Point, cornerMm: number): Shape[] {
  const [left, right] = [Math.min(x1, x2), Math.max(x1, x2)]
  const r = Math.min(cornerMm, (right - left) / 2, (bottom - top) / 2)
  return [
    path('edge', [left + r, top], [right - r, top]),
    arc('edge', [right - r, top + r], r, [-90, 0]),
    path('edge', [right, top + r], [right, bottom - r]),
    arc('edge', [right - r, bottom - r], r, [0, 90]),
    path('edge', [right - r, bottom], [left + r, bottom]),
    arc('edge', [left + r, bottom - r], r, [90, 180]),
    path('edge', [left, bottom - r], [left, top + r]),
    arc('edge', [left + r, top + r], r, [180, 270]),
  ]
}

/** Draw the posts that stand out of the head, from the side. In mm. */
export function postsSide({head, plan: {outline, tuners = []}}: Instrument): Shape[] {
  const {postHoleMm, stringHeightMm = postHoleMm} = outline?.tuners ?? {}
  if (!head || !postHoleMm || !stringHeightMm) return []
  const half = postHoleMm / 2
  const topMm = stringHeightMm * 1.4
  const posts = tuners.filter(({stationMm}) => stationMm < 0)
  return posts.map(({stationMm}) =>
    path(
      'edge',
      headPoint(head, -stationMm - half),
      headPoint(head, -stationMm - half, topMm),
      headPoint(head, -stationMm + half, topMm),
      headPoint(head, -stationMm + half),
    ),
  )
}

/** Draw what holds the strings at the tail: a ferrule's or pin's body and the hole for the string. In mm. */
export function anchorsFront(instrument: Instrument): Shape[] {
  const {outline, anchors = []} = instrument.plan
  const {bodyMm, stringHoleMm = 0} = outline?.anchors ?? {}
  return anchors.flatMap((anchor) => {
    const at = placed(instrument, anchor)
    return [
      ...(bodyMm ? [circle('edge', at, bodyMm / 2)] : []),
      circle('dot', at, Math.max(stringHoleMm / 2, 0.5)),
    ]
  })
}
