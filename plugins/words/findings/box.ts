import {writeLength} from '../../build-file/quantities/write-length.ts'
import type {Ruler} from '../lengths.ts'
import {keyOf, only, type Wording, type WouldDo, type Written} from './wording.ts'

export function boxPlacesDisagree(
  {
    boxAt,
    fromTail,
    scale,
    atByTailMm,
  }: {boxAt: Written; fromTail: Written; scale: Written; atByTailMm: number},
  ruler: Ruler,
): Wording {
  const text = writeLength(atByTailMm, ruler)
  return {
    message: `box.at puts the box’s head-side edge ${boxAt} from the nut, but bridge.from-tail ${fromTail}, on a scale of ${scale}, puts it at ${text}; keep one of the two, or make them agree`,
    expected: [text],
  }
}

/** Either the sides take all of it, or top and back do. */
export function boxWithoutInside(
  found: {sides: Written; length: Written; width: Written} | {depth: Written},
): Wording {
  return {
    message:
      'depth' in found
        ? `top and back leave no room inside a box ${found.depth} deep; all box measures are outside`
        : `sides of ${found.sides ?? '3/16 in'} leave no room inside a box ${found.length} by ${found.width}; all box measures are outside`,
  }
}

export function blockOutside(
  {
    overWallMm,
    inside: {lengthMm, widthMm, heightMm},
    wouldDo,
  }: {
    overWallMm: number
    inside: {lengthMm: number; widthMm: number; heightMm: number}
    wouldDo?: WouldDo | undefined
  },
  ruler: Ruler,
): Wording {
  const text = wouldDo && writeLength(wouldDo.mm, ruler)
  const [length, width, height] = [lengthMm, widthMm, heightMm].map((mm) => writeLength(mm, ruler, 'down'))
  return {
    message: `this block reaches ${writeLength(overWallMm, ruler, 'up')} into a wall; inside, the box is ${length} long, ${width} wide and ${height} high${text ? `: ${keyOf(wouldDo)} ${text} would do` : ''}`,
    expected: only(text),
  }
}

export function blockUnderNeck(
  {overNeckMm, thicknessMm}: {overNeckMm: number; thicknessMm: number | undefined},
  ruler: Ruler,
): Wording {
  const text = thicknessMm === undefined ? undefined : writeLength(thicknessMm, ruler)
  return {
    message: `this block would stand ${writeLength(overNeckMm, ruler, 'up')} into the neck that runs through under the top; put it beside the neck${text ? `, or make it ${text} thick` : ''}`,
    expected: only(text),
  }
}

export function topShutsIn(): Wording {
  return {
    message:
      'with the top glued down nobody gets at the pickup and the jack any more; screw the top, or make a sound hole of 2 in for fingers',
    expected: ['screwed'],
  }
}
