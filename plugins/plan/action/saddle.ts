import {degrees} from '../../tables/units.ts'
import {sharpness} from './fretted-string.ts'
import type {FrettedStrings} from './fretted-strings.ts'
import {furthest, type Setback} from './intonation.ts'
import {type Fit, leastSquares, rootMeanSquare} from './least-squares.ts'

/** Straight saddles under all strings. */
export interface Saddles {
  /** The slanted one that fits best. */
  slantedSaddle: StraightSaddle
  /** The same, square to the neck. */
  squareSaddle: StraightSaddle
}

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
export function planSaddles(
  fretted: FrettedStrings | undefined,
  setbacks: readonly Setback[] | undefined,
  offsMm: readonly number[] | undefined,
): Saddles | undefined {
  if (!fretted || fretted.strings.length < 2 || !setbacks || !offsMm) return undefined
  const [first, last] = [offsMm[0]!, offsMm.at(-1)!]
  const spreadMm = last - first
  if (spreadMm <= 0) return undefined
  const along = fretted.strings.map(({at}) => (offsMm[at]! - first) / spreadMm)
  const start = setbacks[0]?.setbackMm ?? 0
  const slanted = leastSquares((at) => fitOf(fretted, along, at), [start, start])
  const square = leastSquares((at) => fitOf(fretted, along, at), [start])
  if (!slanted || !square) return undefined
  const slant = saddle(fretted, along, slanted[0]!, slanted[1]!)
  const angleDeg = degrees(Math.atan2(slant.firstMm - slant.lastMm, spreadMm))
  return {
    slantedSaddle: {...slant, angleDeg},
    squareSaddle: {...saddle(fretted, along, square[0]!, square[0]!), angleDeg: 0},
  }
}

/**
 * The cents of every string at its first lines, one string after the other, over a saddle set back by so much (mm) at its
 * two ends; by one number, where it is square.
 */
function fitOf(
  {strings, heard}: FrettedStrings,
  along: readonly number[],
  [firstMm, lastMm]: readonly number[],
): Fit {
  const [errors, byFirst, byLast]: [number[], number[], number[]] = [[], [], []]
  for (const [i, {string}] of strings.entries()) {
    const part = lastMm === undefined ? 0 : along[i]!
    const saddleMm = firstMm! + ((lastMm ?? firstMm!) - firstMm!) * part
    for (const fret of heard) {
      const sharp = sharpness(string, fret, {saddleMm, nutMm: 0})
      errors.push(sharp.cents)
      byFirst.push(sharp.perSaddleMm * (1 - part))
      byLast.push(sharp.perSaddleMm * part)
    }
  }
  return {errors, slopes: lastMm === undefined ? [byFirst] : [byFirst, byLast]}
}

function saddle(
  fretted: FrettedStrings,
  along: readonly number[],
  firstMm: number,
  lastMm: number,
): Omit<StraightSaddle, 'angleDeg'> {
  const left = fitOf(fretted, along, [firstMm, lastMm]).errors
  const lines = fretted.heard.length
  return {
    firstMm,
    lastMm,
    rmsCents: rootMeanSquare(left),
    worstCents: furthest(left),
    strings: fretted.strings.map(({name}, i) => {
      const own = left.slice(i * lines, (i + 1) * lines)
      const setbackMm = firstMm + (lastMm - firstMm) * along[i]!
      return {name, setbackMm, rmsCents: rootMeanSquare(own), worstCents: furthest(own)}
    }),
  }
}
