import {writeLength} from '../../build-file/quantities/write-length.ts'
import type {BoardOverBox} from '../../plan/neck/board.ts'
import type {Budget} from '../../plan/neck-shape/budget.ts'
import type {Ruler} from '../lengths.ts'
import {tailNeeds} from '../neck.ts'
import {only, type Wording, type WouldDo} from './wording.ts'

/** `onlyTheBox` is what it falls short of; `needs` the stick past the bridge, of a neck that goes so far. */
export function neckTooShort(
  {
    neededMm,
    shortMm,
    onlyTheBox,
    needs,
  }: {neededMm: number; shortMm: number; onlyTheBox: boolean; needs: Budget['needs'] | undefined},
  ruler: Ruler,
): Wording {
  const wanted = writeLength(neededMm, ruler, 'up')
  const short = writeLength(shortMm, ruler, 'up')
  const past = needs ? `what ${tailNeeds[needs]} past the bridge` : 'the way to the box'
  return {
    message: onlyTheBox
      ? `the neck ends ${short} before the box does; ${wanted} reaches to its tail edge`
      : `the neck is ${short} too short for head, scale and ${past}; ${wanted} would do`,
    expected: [wanted],
  }
}

/** Where it is a line that the strings stand too near, `label` names it; else the bow is more than frets bear. */
export function bowTooLarge(
  found: {
    label?: string
    bowMm?: number
    actionMm?: number
    mostMm?: number
    wouldDo?: WouldDo | undefined
  },
  ruler: Ruler,
): Wording {
  const {label, bowMm = 0, actionMm = 0, mostMm = 0, wouldDo} = found
  const text = wouldDo && writeLength(wouldDo.mm, ruler)
  const bow = `in time the strings bow the neck by ${writeLength(bowMm, ruler)}`
  const over =
    label === undefined
      ? `${bow}, more than the ${writeLength(mostMm, ruler)} that frets bear`
      : actionMm < ruler.rulerMm
        ? `${bow} at line ${label}, where a top that sinks under the bridge leaves them no height`
        : `${bow} at line ${label}, more than the ${writeLength(actionMm, ruler)} they stand above it there`
  return {
    message: `${over}; ${text ? `${wouldDo.path} ${text} would do` : 'a stiffer neck or lighter strings would do'}`,
    expected: only(text),
  }
}

/** `overMm` is negative where they are too thin. */
export function laminationsOff(
  {
    laminationsMm,
    overMm,
    wantedMm,
    wouldDo,
  }: {laminationsMm: number; overMm: number; wantedMm: number; wouldDo?: WouldDo | undefined},
  ruler: Ruler,
): Wording {
  const text = wouldDo && writeLength(wouldDo.mm, ruler, 'up')
  const off = overMm > 0 ? `${writeLength(overMm, ruler)} more` : `${writeLength(-overMm, ruler, 'up')} less`
  return {
    message: `the laminations come to ${writeLength(laminationsMm, ruler)}, ${off} than the ${writeLength(wantedMm, ruler)} that the stick is to be${text ? `; ${text} here would do` : ''}`,
    expected: only(text),
  }
}

export function roundOverTooLarge(
  {
    radiusMm,
    flatMm,
    bearingNeedsMm,
    largestMm,
  }: {radiusMm: number; flatMm: number; bearingNeedsMm: number; largestMm: number},
  ruler: Ruler,
): Wording {
  const found =
    flatMm <= 0
      ? 'is larger than the neck is thick'
      : flatMm >= bearingNeedsMm - 1e-6
        ? 'is more than half the neck’s width'
        : `leaves ${writeLength(flatMm, ruler, 'down')} of flat side, and the cutter’s bearing needs ${writeLength(bearingNeedsMm, ruler, 'up')} to run on`
  const largest = largestMm >= ruler.rulerMm ? writeLength(largestMm, ruler, 'down') : undefined
  return {
    message: `a round-over of ${writeLength(radiusMm, ruler)} ${found}${largest ? `; ${largest} is the largest that would do` : ''}`,
    expected: only(largest),
  }
}

export function thinUnderNut(
  {leftMm, leastMm, deepestMm}: {leftMm: number; leastMm: number; deepestMm: number},
  ruler: Ruler,
): Wording {
  const least = writeLength(leastMm, ruler, 'up')
  const deepest = deepestMm >= ruler.rulerMm ? writeLength(deepestMm, ruler, 'down') : undefined
  return {
    message: `the nut’s groove leaves ${writeLength(leftMm, ruler, 'down')} of wood under it, where ${least} keeps the neck from breaking there; ${deepest ? `a groove ${deepest} deep would do` : 'make the neck thicker'}`,
    expected: only(deepest),
  }
}

export function boardOverBox({endMm, edgeMm}: BoardOverBox, ruler: Ruler): Wording {
  const edge = writeLength(edgeMm, ruler, 'down')
  return {
    message: `the fingerboard ends ${writeLength(endMm, ruler)} from the nut, over the box, where the neck is cut down and its end would be sawn off; ${edge} stops at the box`,
    expected: [edge],
  }
}

export function boardRadiusTooSmall(
  {radiusMm, wouldDoMm}: {radiusMm: number; wouldDoMm: number},
  ruler: Ruler,
): Wording {
  const text = writeLength(wouldDoMm, ruler, 'up')
  return {
    message: `a radius of ${writeLength(radiusMm, ruler)} leaves nothing of the fingerboard’s edges; ${text} leaves half its thickness`,
    expected: [text],
  }
}
