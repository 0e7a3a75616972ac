import type {Plan} from '../../plan/plan.ts'
import {type Point, path, type Shape} from '../kit/shapes.ts'
import type {Hand} from './hand.ts'

/** Draw each string as it runs from its post over nut and bridge to its anchor, as far as these are known. In mm. */
export function stringsFront({bridge, scale, tuners = [], anchors = []}: Plan, hand: Hand): Shape[] {
  const {nutOffMm = [], bridgeOffMm = []} = scale ?? {}
  return nutOffMm.map((nutOff, i) => {
    const points: Point[] = []
    const post = tuners[i]
    const bridgeOff = bridgeOffMm[i]
    const anchor = anchors[i]
    if (post) points.push([hand.x(post.offMm), post.stationMm])
    points.push([hand.x(nutOff), 0])
    if (bridge && bridgeOff !== undefined) points.push([hand.x(bridgeOff), bridge.stationMm])
    if (anchor) points.push([hand.x(anchor.offMm), anchor.stationMm])
    return path('string', ...points)
  })
}
