import type {PlanPart} from '../part.ts'
import {centsSharp, type Fret, type FrettedString, type Setback} from './fretted-string.ts'
import {frettedStrings} from './fretted-strings.ts'
import {leastSquares} from './least-squares.ts'
import {rootMeanSquare} from './root-mean-square.ts'

/**
 * Set each string of a fretted build back at the saddle (mm, positive: longer) so that the cents over its first twelve
 * lines are least in the mean square, with the nut where it is; and saddle and nut together. Then tell the cents at
 * every line with nothing set back, and with the saddle set back. Fretless builds have none: the slide or the finger
 * stops the string wherever the note is.
 *
 * Source: as centsSharp.
 */
export const setbacks: PlanPart = (settled, soFar) => {
  const fretting = frettedStrings(settled, soFar)
  if (!fretting || !soFar.bridge) return {}
  const {frets, heard} = fretting
  const found = fretting.strings.flatMap(({name, string}) => {
    const alone = leastSquares((at) => cents(string, heard, {saddleMm: at[0]!, nutMm: 0}), [0])
    const both = leastSquares(
      (at) => cents(string, heard, {saddleMm: at[0]!, nutMm: at[1]!}),
      alone ? [...alone, 0] : [0, 0],
    )
    if (!alone || !both) return []
    const [setbackMm, saddleMm, nutMm] = [alone[0]!, both[0]!, both[1]!]
    const intonation = {
      name,
      plainCents: cents(string, frets, {saddleMm: 0, nutMm: 0}),
      compensatedCents: cents(string, frets, {saddleMm: setbackMm, nutMm: 0}),
    }
    const plain = intonation.plainCents.slice(0, heard.length)
    const left = intonation.compensatedCents.slice(0, heard.length)
    const setback = {
      name,
      setbackMm,
      stationMm: string.scaleMm + setbackMm,
      rmsCents: rootMeanSquare(left),
      worstCents: furthest(left),
      plainRmsCents: rootMeanSquare(plain),
      plainWorstCents: furthest(plain),
      together: {saddleMm, nutMm, rmsCents: rootMeanSquare(cents(string, heard, {saddleMm, nutMm}))},
    }
    return intonation.plainCents.every(Number.isFinite) && intonation.compensatedCents.every(Number.isFinite)
      ? [{intonation, setback}]
      : []
  })
  if (found.length === 0) return {}
  return {
    bridge: {
      ...soFar.bridge,
      setbacks: found.map(({setback}) => setback),
      drawnWorstCents: furthest(found.map(({setback}) => setback.plainWorstCents)),
    },
    intonation: found.map(({intonation}) => intonation),
  }
}

/** The largest of the values, of either sign. */
export function furthest(values: readonly number[]): number {
  return Math.max(...values.map(Math.abs))
}

/** The cents at each fret, sharp positive. */
export function cents(string: FrettedString, frets: readonly Fret[], setback: Setback): number[] {
  return frets.map((fret) => centsSharp(string, fret, setback))
}
