import {nutAboveFaceMm} from '../../plan/nut-above-face.ts'
import type {Plan} from '../../plan/shape/plan.ts'
import {circle, type Point, path, box as rectangle, type Shape} from '../kit/shape.ts'
import {boxSide, toBox} from './box-side.ts'
import {headPoint} from './head-side.ts'
import {neckSide} from './neck-side.ts'
import {scarfSide} from './scarf-joint.ts'

/**
 * Draw the instrument from the side, hanging from its nut line at 0, strings to the left: mm behind the playing face
 * and down. Drawn alike for either hand.
 */
export function side(plan: Plan): Shape[] {
  if (!plan.outline?.neck) return []
  return [
    ...boxSide(plan),
    ...neckSide(plan),
    ...scarfSide(plan),
    ...nutSide(plan),
    ...bridgeSide(plan),
    ...postsSide(plan),
    ...stringSide(plan),
  ]
}

function nutSide({outline, action}: Plan): Shape[] {
  const {kind, alongMm, grooveMm} = outline?.nut ?? {kind: 'flat', alongMm: 0, grooveMm: 0}
  if (alongMm === 0) return []
  if (kind === 'rod' || kind === 'bolt') return [circle('nut', [grooveMm - alongMm / 2, 0], alongMm / 2)]
  return [rectangle('nut', [-(action?.nutMm ?? 0), -alongMm], [grooveMm, 0])]
}

function bridgeSide(plan: Plan): Shape[] {
  const {outline, action, bridge} = plan
  if (!outline?.bridge || !action || !bridge) return []
  const {stationMm, on} = bridge
  const half = outline.bridge.footMm / 2
  const under = on === 'top' ? toBox(plan, 0, stationMm)[0] : -(action.bridgeStandsMm ?? 0)
  const crown = -action.bridgeHeightMm
  return half > 0
    ? [rectangle('nut', [crown, stationMm - half], [under, stationMm + half])]
    : [path('nut', [crown, stationMm], [under, stationMm])]
}

function postsSide({outline, tuners = []}: Plan): Shape[] {
  const head = outline?.head
  const {postHoleMm, stringHeightMm = postHoleMm} = outline?.tuners ?? {}
  if (!head || !postHoleMm || !stringHeightMm) return []
  const half = postHoleMm / 2
  const posts = tuners.filter(({stationMm}) => stationMm < 0)
  return posts.map(({stationMm}) =>
    path(
      'edge',
      headPoint(head, -stationMm - half),
      headPoint(head, -stationMm - half, stringHeightMm * 1.4),
      headPoint(head, -stationMm + half, stringHeightMm * 1.4),
      headPoint(head, -stationMm + half),
    ),
  )
}

/** Draw the string's underside from the farthest post over nut and bridge to its anchor. */
function stringSide({outline, action, bridge, tuners = [], anchors = []}: Plan): Shape[] {
  if (!action || !bridge) return []
  const points: Point[] = [
    [-nutAboveFaceMm(action), 0],
    [-action.bridgeHeightMm, bridge.stationMm],
  ]
  const farMm = tuners.reduce((least, {stationMm}) => Math.min(least, stationMm), 0)
  if (outline?.head && farMm < 0)
    points.unshift(headPoint(outline.head, -farMm, outline.tuners?.stringHeightMm ?? 0))
  const anchor = anchors[0]
  if (anchor) points.push([-(outline?.anchors?.heightMm ?? 0), anchor.stationMm])
  return [path('string', ...points)]
}
