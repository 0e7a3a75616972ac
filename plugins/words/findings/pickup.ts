import {writeLength} from '../../build-file/quantities/write-length.ts'
import type {Ruler} from '../lengths.ts'
import {only, type Wording, type Written} from './wording.ts'

export function pickupInside(
  {
    diameter,
    under,
    against,
    largestMm,
  }: {diameter: Written; under: Written; against: Written; largestMm: number},
  ruler: Ruler,
): Wording {
  const largest = largestMm > 0 ? writeLength(largestMm, ruler, 'down') : undefined
  return {
    message: `a disc of ${diameter}${under ? ` under the ${under}` : ''} runs into ${against}${largest ? `; ${largest} is the widest that fits there` : '; put it elsewhere'}`,
    expected: only(largest),
  }
}

/** Either its body is too long for the room behind its wall, or its hole too wide for the box. */
export function jackInside(
  found: {body: Written; roomMm: number; face: Written} | {hole: Written; heightMm: number},
  ruler: Ruler,
): Wording {
  if ('hole' in found)
    return {
      message: `a hole of ${found.hole} is wider than the box is high inside, ${writeLength(found.heightMm, ruler, 'down')}; take a smaller jack`,
    }
  const room = writeLength(found.roomMm, ruler, 'down')
  return {
    message: `the jack reaches ${found.body} into the box, and there is ${room} behind the ${found.face}; take a shorter jack, or another wall`,
    expected: [room],
  }
}

export function jackTooShort(
  {
    thread,
    wallMm,
    leastThreadMm,
    thickestWallMm,
  }: {thread: Written; wallMm: number; leastThreadMm: number; thickestWallMm: number},
  ruler: Ruler,
): Wording {
  const least = writeLength(leastThreadMm, ruler, 'up')
  return {
    message: `a thread of ${thread} is too short for a wall of ${writeLength(wallMm, ruler)} and the nut: ${least} would do, or counterbore the wall from inside to ${writeLength(thickestWallMm, ruler, 'down')}, or set the jack in a plate`,
    expected: [least],
  }
}
