import {writeLength} from '../../build-file/quantities/write-length.ts'
import type {Ruler} from '../lengths.ts'
import {only, type Wording} from './wording.ts'

export function anchorNearEdge(
  {edgeMm, woodMm, widestMm}: {edgeMm: number; woodMm: number; widestMm: number | undefined},
  ruler: Ruler,
): Wording {
  const widest = widestMm === undefined ? undefined : writeLength(widestMm, ruler, 'down')
  const left = edgeMm <= 0 ? 'nothing' : `only ${writeLength(edgeMm, ruler, 'down')}`
  return {
    message: `the outer anchors leave ${left} of wood at the neck’s edge; keep ${writeLength(woodMm, ruler)}${widest ? `: ${widest} between neighbours would do` : ', or take a wider neck'}`,
    expected: only(widest),
  }
}

export function anchorsCrowded(
  {
    bodyMm,
    spacing,
    betweenMm,
    closestMm,
  }: {bodyMm: number; spacing: string | undefined; betweenMm: number; closestMm: number},
  ruler: Ruler,
): Wording {
  const closest = writeLength(closestMm, ruler, 'up')
  return {
    message: `anchors ${writeLength(bodyMm, ruler)} across, ${spacing} apart, ${betweenMm < 0 ? 'run into each other' : 'leave hardly any wood between them'}; ${closest} between neighbours would do`,
    expected: [closest],
  }
}

/** Either the thickest string does not go through, or a ball end does. */
export function stringHole(
  {hole, ...facts}: {hole: string} & ({stringMm: number} | {ballMm: number}),
  ruler: Ruler,
): Wording {
  if ('stringMm' in facts) {
    const least = writeLength(facts.stringMm, ruler, 'up')
    return {
      message: `a string hole of ${hole} is too small for the thickest string; ${least} would do`,
      expected: [least],
    }
  }
  const most = writeLength(facts.ballMm - ruler.rulerMm, ruler, 'down')
  return {message: `a ball end slips through a string hole of ${hole}; ${most} holds it`, expected: [most]}
}
