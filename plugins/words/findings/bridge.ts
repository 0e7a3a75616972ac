import {writeLength} from '../../build-file/quantities/write-length.ts'
import type {Ruler} from '../lengths.ts'
import {forceWords, number} from '../quantities.ts'
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

export function bridgeWiderThanBox(
  {length, widthMm}: {length: string | undefined; widthMm: number},
  ruler: Ruler,
): Wording {
  const text = writeLength(widthMm, ruler, 'down')
  return {
    message: `a bridge ${length} long stands out over the sides of a box ${text} wide; ${text} is the longest that it carries`,
    expected: [text],
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

export function topTooWeak(
  {
    pushN,
    stressMpa,
    mayCarryMpa,
    isAcrossGrain,
    wouldDo,
  }: {
    pushN: number
    stressMpa: number
    mayCarryMpa: number
    isAcrossGrain: boolean | undefined
    wouldDo?: WouldDo | undefined
  },
  ruler: Ruler,
): Wording {
  const text = wouldDo && writeLength(wouldDo.mm, ruler)
  const way = isAcrossGrain ? ' across its grain' : ''
  return {
    message: `the strings press the bridge with ${forceWords(pushN, ruler)}, which stresses the top${way} by ${number(stressMpa, 1)} MPa, more than the ${number(mayCarryMpa, 1)} it may carry for years; ${text ? `${text} thick would do` : 'a block glued under it, or a flatter angle behind the bridge, would do'}`,
    expected: only(text),
  }
}

export function topSinks(
  {
    sinkAfterCreepMm,
    lostMm,
    mayLoseMm,
    wouldDo,
  }: {sinkAfterCreepMm: number; lostMm: number; mayLoseMm: number; wouldDo?: WouldDo | undefined},
  ruler: Ruler,
): Wording {
  const text = wouldDo && writeLength(wouldDo.mm, ruler)
  const [sinks, lost, most] = [sinkAfterCreepMm, lostMm, mayLoseMm].map((mm) => writeLength(mm, ruler))
  return {
    message: `the top sinks ${sinks} under the bridge in time, and the strings by ${lost} at the octave, where they can lose ${most}; ${text ? `${text} thick would do` : 'a block glued under it, or a flatter angle behind the bridge, would do'}`,
    expected: only(text),
  }
}
