import {writeLength} from '../../build-file/quantities/write-length.ts'
import type {Ruler} from '../lengths.ts'
import {only, type Wording, type WouldDo} from './wording.ts'

export function bridgeOffBox(
  {
    stationMm,
    isOnTop,
    isPastHead,
    wouldDo,
  }: {stationMm: number; isOnTop: boolean; isPastHead: boolean; wouldDo: WouldDo | undefined},
  ruler: Ruler,
): Wording {
  const text = wouldDo && writeLength(wouldDo.mm, ruler)
  const what = isOnTop ? 'the bridge’s foot' : 'the bridge line'
  return {
    message: `${what}, ${writeLength(stationMm, ruler)} from the nut, lies past the box’s ${isPastHead ? 'head-side' : 'tail'} edge${text ? `; ${wouldDo.path} ${text} would do` : ''}`,
    expected: only(text),
  }
}

export function bridgeNearTail(
  {
    fromTailWallMm,
    leastFromTailWallMm,
    wouldDo,
  }: {fromTailWallMm: number; leastFromTailWallMm: number; wouldDo: WouldDo | undefined},
  ruler: Ruler,
): Wording {
  const text = wouldDo && writeLength(wouldDo.mm, ruler)
  const least = writeLength(leastFromTailWallMm, ruler)
  const where =
    fromTailWallMm <= 0
      ? 'the bridge’s foot stands on the tail wall'
      : `the bridge’s foot is ${writeLength(fromTailWallMm, ruler, 'down')} from the tail wall`
  return {
    message: `${where}, where the top is too stiff to sound; ${text ? `${wouldDo.path} ${text} leaves it ${least}` : `it needs ${least}`}`,
    expected: only(text),
  }
}

export function bridgePlace(
  {
    fraction,
    belongs: {from, to},
    wouldDo,
  }: {fraction: number; belongs: {from: number; to: number}; wouldDo: WouldDo | undefined},
  ruler: Ruler,
): Wording {
  const text = wouldDo && writeLength(wouldDo.mm, ruler)
  return {
    message: `the bridge stands ${Math.round(fraction * 100)} % of the way along the box; most sound best between ${from * 100} and ${to * 100} %${text ? `: ${wouldDo.path} ${text} would do` : ''}`,
    expected: only(text),
  }
}
