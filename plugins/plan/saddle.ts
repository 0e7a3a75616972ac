import {cents, type Fretting, frettedStrings, furthest} from './intonation.ts'
import {leastSquares, rootMeanSquare} from './least-squares.ts'
import type {PlanPart} from './part.ts'

export interface StraightSaddle {
  /** Setback at the first string. */
  firstMm: number
  /** Setback at the last string. */
  lastMm: number
  /** Off square to the neck; positive: further back at the first string. */
  angleDeg: number
  /** Over all strings. */
  rmsCents: number
  worstCents: number
  strings: {
    name: string
    setbackMm: number
    rmsCents: number
    worstCents: number
  }[]
}

/**
 * Lay one straight saddle under all the strings of a fretted build so that the cents over their first twelve lines are
 * least in the mean square, all strings together: slanted, and square to the neck. Setbacks are in mm at the first and
 * the last string, `angleDeg` is the slant off square; `leftCents` is how far each string stays off, and what is worst.
 * Absent with fewer than two strings, which need no straight line.
 */
export const straightSaddle: PlanPart = (settled, soFar) => {
  const fretting = frettedStrings(settled, soFar)
  const offsMm = soFar.scale?.bridgeOffMm
  if (!fretting || fretting.strings.length < 2 || !soFar.bridge?.setbacks || !offsMm) return {}
  const [first, last] = [offsMm[0]!, offsMm.at(-1)!]
  const spreadMm = last - first
  if (spreadMm <= 0) return {}
  const along = fretting.strings.map(({at}) => (offsMm[at]! - first) / spreadMm)
  const start = soFar.bridge.setbacks[0]?.setbackMm ?? 0
  const slanted = leastSquares((at) => allCents(fretting, along, at[0]!, at[1]!).flat(), [start, start])
  const square = leastSquares((at) => allCents(fretting, along, at[0]!, at[0]!).flat(), [start])
  if (!slanted || !square) return {}
  const slant = saddle(fretting, along, slanted[0]!, slanted[1]!)
  return {
    bridge: {
      ...soFar.bridge,
      slantedSaddle: {
        ...slant,
        angleDeg: (Math.atan2(slant.firstMm - slant.lastMm, spreadMm) * 180) / Math.PI,
      },
      squareSaddle: {...saddle(fretting, along, square[0]!, square[0]!), angleDeg: 0},
    },
  }
}

/** The cents of every string at its first lines, over a saddle set back by so much at its two ends. */
function allCents(
  {strings, heard}: Fretting,
  along: readonly number[],
  firstMm: number,
  lastMm: number,
): number[][] {
  return strings.map(({string}, i) =>
    cents(string, heard, {saddleMm: firstMm + (lastMm - firstMm) * along[i]!, nutMm: 0}),
  )
}

function saddle(
  fretting: Fretting,
  along: readonly number[],
  firstMm: number,
  lastMm: number,
): Omit<StraightSaddle, 'angleDeg'> {
  const left = allCents(fretting, along, firstMm, lastMm)
  return {
    firstMm,
    lastMm,
    rmsCents: rootMeanSquare(left.flat()),
    worstCents: furthest(left.flat()),
    strings: left.map((one, i) => ({
      name: fretting.strings[i]!.name,
      setbackMm: firstMm + (lastMm - firstMm) * along[i]!,
      rmsCents: rootMeanSquare(one),
      worstCents: furthest(one),
    })),
  }
}
