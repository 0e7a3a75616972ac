import {writeLength} from '../../build-file/quantities/write-length.ts'
import {inch} from '../../tables/units.ts'
import type {Ruler} from '../lengths.ts'
import {only, type Wording} from './wording.ts'

type Written = string | undefined

export function aboveTopDisagrees(
  {
    aboveTop,
    thickness,
    notch,
    byThicknessMm,
  }: {aboveTop: Written; thickness: Written; notch: Written; byThicknessMm: number},
  ruler: Ruler,
): Wording {
  const text = writeLength(byThicknessMm, ruler)
  return {
    message: `neck.above-top says ${aboveTop}, but a neck of thickness ${thickness ?? 'the laminations’ sum'}${notch ? `, let in by ${notch},` : ''} on top puts its playing face ${text} above it`,
    expected: only(byThicknessMm > 0 ? text : undefined),
  }
}

export function neckMissesBox(
  {aboveTop, thicknessMm, faceLevelMm}: {aboveTop: string; thicknessMm: number; faceLevelMm: number},
  ruler: Ruler,
): Wording {
  const level = writeLength(faceLevelMm, ruler)
  return {
    message: `a playing face ${aboveTop} above the top lifts the whole neck, ${writeLength(thicknessMm, ruler)} thick, over the box; joins: on top, or ${level} above the top, would do`,
    expected: [level],
  }
}

/** A neck of layers is lifted sooner than thinned. */
export function neckTooTall(
  {
    overMm,
    tallestMm,
    higherMm,
    isLayered,
  }: {overMm: number; tallestMm: number; higherMm: number; isLayered: boolean},
  ruler: Ruler,
): Wording {
  const tallest = tallestMm > 0 ? writeLength(tallestMm, ruler, 'down') : undefined
  const higher = writeLength(higherMm, ruler, 'up')
  return {
    message: `this neck runs through ${writeLength(overMm, ruler, 'up')} deeper than the inside of the box; ${tallest ? `a thickness of ${tallest} would do, or ` : ''}a playing face ${higher} above the top`,
    expected: [isLayered || !tallest ? higher : tallest],
  }
}

export function neckTouchesTop({neckGap}: {neckGap: Written}, ruler: Ruler): Wording {
  const expected = writeLength(inch(1 / 8), ruler, 'up')
  return {
    message: `with ${neckGap} of daylight the top would come down on the neck under the bridge, and not sound; cut ${expected} of daylight into the neck`,
    expected: [expected],
  }
}

export function notchTooDeep(
  {depth, leftMm, deepestMm}: {depth: Written; leftMm: number; deepestMm: number},
  ruler: Ruler,
): Wording {
  const deepest = deepestMm > 0 ? writeLength(deepestMm, ruler, 'down') : undefined
  const left = leftMm <= 0 ? 'nothing' : `only ${writeLength(leftMm, ruler, 'down')}`
  return {
    message: `a notch ${depth} deep leaves ${left} of the wall above the back${deepest ? `; ${deepest} is the deepest that holds` : ''}`,
    expected: only(deepest),
  }
}

export function notchTooNarrow(
  {width, neckWidthMm}: {width: string; neckWidthMm: number},
  ruler: Ruler,
): Wording {
  const expected = writeLength(neckWidthMm, ruler, 'up')
  return {
    message: `a notch ${width} wide is too narrow for the neck, ${expected} wide where it meets the box`,
    expected: [expected],
  }
}
