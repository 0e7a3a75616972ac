import {type Ends, type Fret, type FrettedString, sharpness} from './fretted-string.ts'
import type {FrettedStrings} from './fretted-strings.ts'
import {type Fit, leastSquares, rootMeanSquare} from './least-squares.ts'

/** What a string is off at its lines; sharp is positive. */
export interface Intonation {
  name: string
  /** By line, nut and saddle where the scale length puts them. */
  plainCents: number[]
  /** By line, with the saddle set back. */
  compensatedCents: number[]
}

/** How far each string is set back at the saddle. */
export interface Setbacks {
  setbacks: Setback[]
  /** Over all strings and their first twelve lines, with nothing set back. */
  drawnWorstCents: number
  /** The most that a note over those lines moves, saddle set back, once neck and top have crept: sharp is positive. */
  creepCents?: number | undefined
}

/** How much further (mm) neck and top give way in time: the neck's hollow at the octave, the top under the bridge. */
export interface Creep {
  hollowMm: number
  sinkMm: number
}

export interface Setback {
  name: string
  /** The saddle’s setback alone; positive: longer string. */
  setbackMm: number
  /** The same where the string slides over nut and saddle, so that what lies behind them stretches with it. */
  slidingMm?: number | undefined
  /** The saddle’s place then, from the nut line. */
  stationMm: number
  rmsCents: number
  /** Over the same lines, of either sign. */
  worstCents: number
  /** The same with nothing set back. */
  plainWorstCents: number
  /** With nothing set back. */
  plainRmsCents: number
  together: {
    saddleMm: number
    /** Negative moves the nut towards the lines. */
    nutMm: number
    rmsCents: number
  }
}

/**
 * Set each string of a fretted build back at the saddle (mm, positive: longer) so that the cents over its first twelve
 * lines are least in the mean square, with the nut where it is; and saddle and nut together. Then tell the cents at
 * every line with nothing set back, and with the saddle set back. Fretless builds have none: the slide or the finger
 * stops the string wherever the note is.
 *
 * Source: as centsSharp.
 */
export function planIntonation(
  fretted: FrettedStrings | undefined,
  creep: Creep,
): {setbacks: Setbacks; intonation: Intonation[]} | undefined {
  if (!fretted) return undefined
  const found = fretted.strings.flatMap((one) => setBack(one, fretted) ?? [])
  if (found.length === 0) return undefined
  const setbacks = found.map(({setback}) => setback)
  const drawnWorstCents = furthest(setbacks.map(({plainWorstCents}) => plainWorstCents))
  const isMoved = creep.hollowMm !== 0 || creep.sinkMm !== 0
  const creepCents = isMoved ? sharpest(found.flatMap((one) => moved(one, fretted.heard, creep))) : undefined
  return {
    setbacks: {setbacks, drawnWorstCents, creepCents},
    intonation: found.map(({intonation}) => intonation),
  }
}

/** Of cents, the one furthest from none. */
const sharpest = (values: readonly number[]) =>
  values.reduce((most, one) => (Math.abs(one) > Math.abs(most) ? one : most), 0)

/** Tell by how many cents each line moves once neck and top have crept: a lower saddle over a hollower neck. */
function moved(
  {string, setback}: {string: FrettedString; setback: Setback},
  heard: readonly Fret[],
  {hollowMm, sinkMm}: Creep,
): number[] {
  const ends = {saddleMm: setback.setbackMm, nutMm: 0}
  const later = {...string, riseMm: string.riseMm - sinkMm, reliefMm: string.reliefMm + hollowMm}
  const before = cents(string, heard, ends)
  return cents(later, heard, ends).map((one, i) => one - before[i]!)
}

function setBack({name, string, slides}: FrettedStrings['strings'][number], {frets, heard}: FrettedStrings) {
  const alone = leastSquares((at) => fitOf(string, heard, at), [0])
  const both = leastSquares((at) => fitOf(string, heard, at), alone ? [...alone, 0] : [0, 0])
  if (!alone || !both) return undefined
  const sliding = slides && leastSquares((at) => fitOf(slides, heard, at), alone)
  const [setbackMm, saddleMm, nutMm] = [alone[0]!, both[0]!, both[1]!]
  const plainCents = cents(string, frets, {saddleMm: 0, nutMm: 0})
  const compensatedCents = cents(string, frets, {saddleMm: setbackMm, nutMm: 0})
  if (![...plainCents, ...compensatedCents].every(Number.isFinite)) return undefined
  const plain = plainCents.slice(0, heard.length)
  const left = compensatedCents.slice(0, heard.length)
  const setback: Setback = {
    name,
    setbackMm,
    slidingMm: sliding?.[0],
    stationMm: string.scaleMm + setbackMm,
    rmsCents: rootMeanSquare(left),
    worstCents: furthest(left),
    plainRmsCents: rootMeanSquare(plain),
    plainWorstCents: furthest(plain),
    together: {saddleMm, nutMm, rmsCents: rootMeanSquare(cents(string, heard, {saddleMm, nutMm}))},
  }
  const intonation: Intonation = {name, plainCents, compensatedCents}
  return {setback, intonation, string}
}

/** The largest of the values, of either sign. */
export function furthest(values: readonly number[]): number {
  return Math.max(...values.map(Math.abs))
}

/** The cents at each fret, sharp positive. */
function cents(string: FrettedString, frets: readonly Fret[], ends: Ends): number[] {
  return frets.map((fret) => sharpness(string, fret, ends).cents)
}

/** The cents at each fret of a string whose saddle, and nut where that is moved too, are set back so far (mm). */
function fitOf(string: FrettedString, frets: readonly Fret[], [saddleMm, nutMm]: readonly number[]): Fit {
  const [errors, bySaddle, byNut]: [number[], number[], number[]] = [[], [], []]
  for (const fret of frets) {
    const sharp = sharpness(string, fret, {saddleMm: saddleMm!, nutMm: nutMm ?? 0})
    errors.push(sharp.cents)
    bySaddle.push(sharp.perSaddleMm)
    byNut.push(sharp.perNutMm)
  }
  return {errors, slopes: nutMm === undefined ? [bySaddle] : [bySaddle, byNut]}
}
