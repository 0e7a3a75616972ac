import type {HeadOutline} from '../../plan/shape/outline.ts'
import type {Plan} from '../../plan/shape/plan.ts'
import type {Point} from '../kit/shape.ts'

const rad = (deg: number) => (deg * Math.PI) / 180

/**
 * Find a point over the head as seen from the side: `alongMm` from the nut line along the head's own face (positive),
 * `upMm` above that face. Mm behind the playing face and down from the nut line.
 */
export function headPoint({angleDeg, ledgeMm, dropMm}: HeadOutline, alongMm: number, upMm = 0): Point {
  if (alongMm <= ledgeMm) return [-upMm, -alongMm]
  const run = alongMm - ledgeMm
  const [sin, cos] = [Math.sin(rad(angleDeg)), Math.cos(rad(angleDeg))]
  return [dropMm + run * sin - upMm * cos, -ledgeMm - run * cos - upMm * sin]
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
  const {ledgeMm, lengthMm, thicknessMm, dropMm} = head
  const step: Point[] = dropMm > 0 ? [[dropMm, -ledgeMm]] : []
  return [
    [0, -ledgeMm],
    ...step,
    headPoint(head, lengthMm),
    headPoint(head, lengthMm, -thicknessMm),
    ...back(head, deep),
  ]
}

/** Find where the back of the head turns into that of the neck. */
function back({angleDeg, ledgeMm, thicknessMm, dropMm}: HeadOutline, deep: number): Point[] {
  const [sin, cos] = [Math.sin(rad(angleDeg)), Math.cos(rad(angleDeg))]
  if (sin >= 0.01) {
    const run = (deep - dropMm - thicknessMm * cos) / sin
    return [[deep, -ledgeMm - run * cos + thicknessMm * sin]]
  }
  const rear = dropMm + thicknessMm
  if (Math.abs(rear - deep) < 0.01) return []
  return [
    [rear, -ledgeMm],
    [deep, -ledgeMm],
  ]
}
