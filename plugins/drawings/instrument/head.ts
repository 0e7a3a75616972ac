import type {HeadOutline} from '../../plan/outline.ts'
import type {Plan} from '../../plan/plan.ts'
import {type Point, path, type Shape} from '../kit/shapes.ts'

const rad = (deg: number) => (deg * Math.PI) / 180

/**
 * Find a point over the head as seen from the side: `alongMm` from the nut line along the head's own face (positive),
 * `upMm` above that face. Mm behind the playing face and down from the nut line.
 */
export function headPoint({angleDeg, ledgeMm, stepMm, steps}: HeadOutline, alongMm: number, upMm = 0): Point {
  const run = alongMm - ledgeMm
  if (run <= 0) return [(steps === 'at the nut' ? stepMm : 0) - upMm, -alongMm]
  const [sin, cos] = [Math.sin(rad(angleDeg)), Math.cos(rad(angleDeg))]
  return [stepMm + run * sin - upMm * cos, -ledgeMm - run * cos - upMm * sin]
}

/**
 * Outline neck and head from the side as one closed line: mm behind the playing face (to the right) and down from the
 * nut line. The back of a leaning head meets the back of the neck where their thicknesses make them meet; a fingerboard
 * that stops before the neck's end leaves a step.
 */
export function neckProfile({outline}: Plan): Point[] {
  const neck = outline?.neck
  if (!neck) return []
  const {thicknessMm: deep, tailMm, fingerboard: board} = neck
  const step: Point[] =
    board && board.toMm < tailMm
      ? [
          [board.thicknessMm, tailMm],
          [board.thicknessMm, board.toMm],
          [0, board.toMm],
        ]
      : [[0, tailMm]]
  return [...headProfile(outline.head, deep), [deep, tailMm], ...step]
}

/** The part of the profile from the playing face round the head to the neck's back. */
function headProfile(head: HeadOutline | undefined, deep: number): Point[] {
  if (!head)
    return [
      [0, 0],
      [deep, 0],
    ]
  const {ledgeMm, lengthMm, thicknessMm, stepMm, steps} = head
  const stepsAt = steps === 'at the nut' ? 0 : -ledgeMm
  const step: Point[] = [
    [0, stepsAt],
    [stepMm, stepsAt],
  ]
  return [
    ...(stepMm > 0 ? step : []),
    ...(stepMm > 0 && steps === 'at the ledge' ? [] : [headPoint(head, ledgeMm)]),
    headPoint(head, lengthMm),
    headPoint(head, lengthMm, -thicknessMm),
    ...back(head, deep),
  ]
}

/** Find where the back of the head turns into that of the neck. */
function back({angleDeg, ledgeMm, thicknessMm, stepMm}: HeadOutline, deep: number): Point[] {
  const [sin, cos] = [Math.sin(rad(angleDeg)), Math.cos(rad(angleDeg))]
  if (sin >= 0.01) {
    const run = (deep - stepMm - thicknessMm * cos) / sin
    return [[deep, -ledgeMm - run * cos + thicknessMm * sin]]
  }
  const rear = stepMm + thicknessMm
  if (Math.abs(rear - deep) < 0.01) return []
  return [
    [rear, -ledgeMm],
    [deep, -ledgeMm],
  ]
}

/**
 * Find a scarf's glue line from the side: along the neck's sawn-off back, from where the head's back begins to the
 * head's face, since the piece sawn off is turned over and glued under the neck's end. In mm.
 */
export function scarfLine(plan: Plan): [Point, Point] | undefined {
  const {outline, neck} = plan
  const {head, neck: stick} = outline ?? {}
  const faceMm = neck?.scarf?.faceMm
  if (!head || !stick || faceMm === undefined || head.ledgeMm + faceMm > head.lengthMm) return undefined
  const face = headPoint(head, head.ledgeMm + faceMm)
  const bend = neckProfile(plan).find(([x, y]) => Math.abs(x - stick.thicknessMm) < 0.01 && y < stick.tailMm)
  return bend && bend[1] > face[1] ? [[face[0], bend[1]], face] : undefined
}

/** Draw a scarf's glue line from the side. */
export function scarfSide(plan: Plan): Shape[] {
  const line = scarfLine(plan)
  return line ? [path('edge', ...line)] : []
}

/** Draw where a scarf's glue line comes out on the head's face, from the front. In mm. */
export function scarfFront({outline, neck}: Plan): Shape[] {
  const head = outline?.head
  if (!head || !neck?.scarf || head.joint !== 'scarf') return []
  const along = head.ledgeMm + neck.scarf.faceMm
  const half = head.widthMm / 2
  return along < head.lengthMm ? [path('edge', [-half, -along], [half, -along])] : []
}
