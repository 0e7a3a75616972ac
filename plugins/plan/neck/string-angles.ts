import {type Action, nutAboveFaceMm} from '../action/action.ts'
import {behindNut, type HeadShape} from '../neck-shape/head-shape.ts'
import type {Placed} from '../strings/tuners.ts'

/** How the strings go down behind the nut, in degrees. */
export interface StringAngles {
  /** Each string's own angle behind the nut. */
  stringAngleDeg: number[]
  /** The strings that touch the edge of the face on their way to their posts; counted from 0, `atMm` behind the nut. */
  overEdge?: {string: number; atMm: number}[] | undefined
  /** The string that goes down least, where that is too little; counted from 0. */
  flattest?: {string: number; angleDeg: number; leastDeg: number} | undefined
  /** The string that goes down most, where that is too much. */
  steepest?: {string: number; angleDeg: number; mostDeg: number} | undefined
  /** The head at which no string goes down too steeply. */
  gentlerHead?: {angleDeg?: number | undefined; dropMm?: number | undefined} | undefined
}

interface Strung {
  tuners: readonly Placed[] | undefined
  action: Action | undefined
  rulerMm: number
}

/** The angles that a string may make behind the nut, in degrees: common practice, no source. */
export const stringAngleDeg = {least: 4, most: 20} as const

/** The angles at which a head is usually sawn, in degrees: common practice, no source. */
export const scarfAngleDeg = {least: 7, most: 18} as const

/**
 * Give each string's own angle behind the nut (degrees), in the order of the strings, and where one is too steep the
 * head's angle, or a straight head's drop, at which all would do. Absent without posts, their string height or the
 * action at the nut.
 */
export function planStringAngles(
  head: HeadShape | undefined,
  postHeightMm: number | undefined,
  {tuners, action, rulerMm}: Strung,
): StringAngles | undefined {
  if (!head || !tuners || !action || postHeightMm === undefined) return undefined
  if (tuners.some(({stationMm}) => stationMm >= 0)) return undefined
  const nutMm = nutAboveFaceMm(action)
  const runs = tuners.map(({stationMm}) => ({nutMm, postMm: -stationMm, postHeightMm}))
  const angles = (shape: HeadShape) => runs.map((run) => behindNut(shape, run).angleDeg)
  const own = angles(head)
  const overEdge = runs.flatMap((run, string) => {
    const {overMm} = behindNut(head, run)
    return overMm === undefined ? [] : [{string, atMm: overMm}]
  })
  const isEasy = (shape: HeadShape) => angles(shape).every((deg) => deg <= stringAngleDeg.most)
  return {
    stringAngleDeg: own,
    overEdge: overEdge.length > 0 ? overEdge : undefined,
    ...extremes(own),
    gentlerHead: isEasy(head) ? undefined : gentlerHead(head, isEasy, rulerMm),
  }
}

/** Name the strings that go down too little and too much. */
function extremes(angles: readonly number[]): Pick<StringAngles, 'flattest' | 'steepest'> {
  const [low, high] = [Math.min(...angles), Math.max(...angles)]
  const {least, most} = stringAngleDeg
  return {
    flattest: low < least ? {string: angles.indexOf(low), angleDeg: low, leastDeg: least} : undefined,
    steepest: high > most ? {string: angles.indexOf(high), angleDeg: high, mostDeg: most} : undefined,
  }
}

/** Lean the head less by half degrees, or cut a straight one down less by marks of the ruler, until the strings run easily. */
function gentlerHead(head: HeadShape, isEasy: (shape: HeadShape) => boolean, rulerMm: number) {
  for (
    let deg = Math.ceil(head.angleDeg * 2 - 1) / 2;
    head.joint !== 'straight' && deg >= scarfAngleDeg.least;
    deg -= 0.5
  )
    if (isEasy({...head, angleDeg: deg})) return {angleDeg: deg}
  if (head.joint !== 'straight') return undefined
  for (let dropMm = Math.ceil(head.dropMm / rulerMm - 1) * rulerMm; dropMm >= 0; dropMm -= rulerMm)
    if (isEasy({...head, steps: [...head.steps, {alongMm: head.ledgeMm, downMm: dropMm - head.dropMm}]}))
      return {dropMm}
  return undefined
}
