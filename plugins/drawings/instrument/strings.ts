import {nutAboveFaceMm} from '../../plan/action/action.ts'
import {type Point, path, type Shape} from '../kit/shapes.ts'
import {type Instrument, placed} from './instrument.ts'
import {headPoint} from './profile.ts'

/** Draw each string as it runs from its post over nut and bridge to its anchor, as far as these are known. In mm. */
export function stringsFront(instrument: Instrument): Shape[] {
  const {bridge, scale, tuners = [], anchors = []} = instrument.plan
  const {nutOffMm = [], bridgeOffMm = []} = scale ?? {}
  return nutOffMm.map((nutOff, i) => {
    const bridgeOff = bridgeOffMm[i]
    const stops = [
      tuners[i],
      {stationMm: 0, offMm: nutOff},
      bridge && bridgeOff !== undefined ? {stationMm: bridge.stationMm, offMm: bridgeOff} : undefined,
      anchors[i],
    ]
    return path(
      'string',
      ...stops.filter((stop) => stop !== undefined).map((stop) => placed(instrument, stop)),
    )
  })
}

/** Draw each string from its post to `toMm` past the nut line, on its way to the bridge. In mm. */
export function stringsAtHead(instrument: Instrument, toMm: number): Shape[] {
  const {bridge, scale, tuners = []} = instrument.plan
  const part = bridge ? toMm / bridge.stationMm : 0
  return (scale?.nutOffMm ?? []).map((nutOff, i) => {
    const post = tuners[i]
    const off = nutOff + ((scale?.bridgeOffMm?.[i] ?? nutOff) - nutOff) * part
    return path(
      'string',
      ...(post ? [placed(instrument, post)] : []),
      [instrument.x(nutOff), 0],
      [instrument.x(off), toMm],
    )
  })
}

/** Draw the strings' underside from the farthest post over nut and bridge to the anchors, from the side. In mm. */
export function stringSide({head, plan}: Instrument): Shape[] {
  const {outline, action, bridge, tuners = [], anchors = []} = plan
  if (!action || !bridge) return []
  const points: Point[] = [
    [-nutAboveFaceMm(action), 0],
    [-action.bridgeHeightMm, bridge.stationMm],
  ]
  const farMm = tuners.reduce((least, {stationMm}) => Math.min(least, stationMm), 0)
  if (head && farMm < 0) points.unshift(headPoint(head, -farMm, outline?.tuners?.stringHeightMm ?? 0))
  const anchor = anchors[0]
  if (anchor) points.push([-(outline?.anchors?.heightMm ?? 0), anchor.stationMm])
  return [path('string', ...points)]
}
