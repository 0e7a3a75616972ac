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
    ...top
  }: {
    pushN: number
    stressMpa: number
    mayCarryMpa: number
    isAcrossGrain: boolean | undefined
  } & ThickerTop,
  ruler: Ruler,
): Wording {
  const {mend, expected} = thickerTop(top, ruler)
  const way = isAcrossGrain ? ' across its grain' : ''
  return {
    message: `the strings press the bridge with ${forceWords(pushN, ruler)}, which stresses the top${way} by ${number(stressMpa, 1)} MPa, more than the ${number(mayCarryMpa, 1)} it may carry for years; ${mend}`,
    expected,
  }
}

export function topSinks(
  {
    sinkAfterCreepMm,
    lostMm,
    mayLoseMm,
    ...top
  }: {sinkAfterCreepMm: number; lostMm: number; mayLoseMm: number} & ThickerTop,
  ruler: Ruler,
): Wording {
  const {mend, expected} = thickerTop(top, ruler)
  const [sinks, lost, most] = [sinkAfterCreepMm, lostMm, mayLoseMm].map((mm) => writeLength(mm, ruler))
  return {
    message: `the top sinks ${sinks} under the bridge in time, and the strings by ${lost} at the octave, where they can lose ${most}; ${mend}`,
    expected,
  }
}

/** A top that would do, and the thickest that a neck under it has wood to spare for (mm). */
interface ThickerTop {
  wouldDo?: WouldDo | undefined
  mostMm?: number | undefined
}

/** Propose a thicker top; not where the neck, which is cut down for it, would be too thin then. */
function thickerTop({wouldDo, mostMm = Number.POSITIVE_INFINITY}: ThickerTop, ruler: Ruler) {
  const other = 'a block glued under it, or a flatter angle behind the bridge, would do'
  if (!wouldDo) return {mend: other, expected: undefined}
  const text = writeLength(wouldDo.mm, ruler)
  if (wouldDo.mm <= mostMm + 1e-6) return {mend: `${text} thick would do`, expected: [text]}
  return {
    mend: `${text} thick would do, under which this neck would be cut too thin; so take a thicker neck too, or ${other}`,
    expected: undefined,
  }
}
