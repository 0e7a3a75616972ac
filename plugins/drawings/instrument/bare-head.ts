import type {HeadOutline} from '../../plan/shape/outline.ts'
import type {Plan} from '../../plan/shape/plan.ts'
import {type Point, path, type Shape} from '../kit/shape.ts'
import {handOf} from './hand.ts'
import {nutAndBridge, tunersFront} from './hardware-front.ts'
import {headFront} from './neck-front.ts'
import {neckWidth} from './neck-width.ts'
import {scarfFront} from './scarf-joint.ts'

/** How much of the neck is drawn with its head, in mm. */
export const stubMm = ({lengthMm}: HeadOutline): number => lengthMm * 0.16

/** Draw the head along its own face with posts, edges and string paths, and a stretch of neck below the nut line. */
export function bareHead(plan: Plan): Shape[] {
  const {outline, scale, bridge, tuners = []} = plan
  const {neck, head} = outline ?? {}
  if (!outline || !neck || !head) return []
  const hand = handOf(plan)
  const stub = stubMm(head)
  const half = neckWidth(neck, stub) / 2
  const {bridge: _, ...nutOnly} = plan
  const strings = (scale?.nutOffMm ?? []).map((nutOff, i) => {
    const post = tuners[i]
    const from: Point[] = post ? [[hand.x(post.offMm), post.stationMm]] : []
    const part = bridge ? stub / bridge.stationMm : 0
    const at = nutOff + ((scale?.bridgeOffMm?.[i] ?? nutOff) - nutOff) * part
    return path('string', ...from, [hand.x(nutOff), 0], [hand.x(at), stub])
  })
  return [
    ...headFront(outline),
    ...scarfFront(plan),
    path('outline', [-neck.nutWidthMm / 2, 0], [-half, stub]),
    path('outline', [neck.nutWidthMm / 2, 0], [half, stub]),
    broken(half, stub),
    ...nutAndBridge(nutOnly),
    ...tunersFront(plan, hand),
    ...strings,
  ]
}

/** The line where a drawing stops and the thing goes on (ISO 128: thin, with a zigzag). */
const broken = (half: number, y: number): Shape => {
  const step = half * 0.16
  return path(
    'dimension',
    [-half - step, y],
    [-step, y],
    [-step / 2, y - step],
    [step / 2, y + step],
    [step, y],
    [half + step, y],
  )
}
