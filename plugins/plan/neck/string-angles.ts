import type {NeckConcern} from './concern.ts'
import {type HeadShape, headPoint} from './head.ts'

/** The angles that a string may make behind the nut, in degrees: common practice, no source. */
export const stringAngleDeg = {least: 4, most: 20} as const

/** The angles at which a head is usually sawn, in degrees: common practice, no source. */
export const scarfAngleDeg = {least: 7, most: 18} as const

/** Where one string runs behind the nut: from its height there to its post, along the head's face (all mm). */
export interface StringRun {
  nutMm: number
  postMm: number
  /** Where it meets the post, above the head's face. */
  postHeightMm: number
}

/** Give the angle (degrees) at which a string goes down behind the nut to its post; negative where it rises. */
export function angleBehindNut(head: HeadShape, {nutMm, postMm, postHeightMm}: StringRun): number {
  const {behindMm, depthMm} = headPoint(head, postMm)
  return (Math.atan2(nutMm + depthMm - postHeightMm, behindMm) * 180) / Math.PI
}

/**
 * Give each string's own angle behind the nut (degrees), in the order of the strings, and where one is too steep the
 * head's angle, or a straight head's drop, at which all would do. Absent without posts, their string height or the
 * action at the nut.
 */
export const stringAngles: NeckConcern = ({model: {head}, settled, soFar}) => {
  const {tuners, action} = soFar
  const postHeightMm = settled.values.tuners?.['string-height']?.mm
  if (!head || !tuners || !action || postHeightMm === undefined) return {}
  if (tuners.some(({stationMm}) => stationMm >= 0)) return {}
  const nutMm = action.nutMm + (action.crownMm ?? 0)
  const runs = tuners.map(({stationMm}) => ({nutMm, postMm: -stationMm, postHeightMm}))
  const angles = (shape: HeadShape) => runs.map((run) => angleBehindNut(shape, run))
  const own = angles(head)
  const isEasy = (shape: HeadShape) => angles(shape).every((deg) => deg <= stringAngleDeg.most)
  const gentler = isEasy(head) ? undefined : gentlerHead(head, isEasy, settled.rulerMm)
  return {stringAngleDeg: own, ...extremes(own), ...(gentler && {gentlerHead: gentler})}
}

/** Name the strings that go down too little and too much. */
function extremes(angles: readonly number[]) {
  const [low, high] = [Math.min(...angles), Math.max(...angles)]
  const {least, most} = stringAngleDeg
  return {
    ...(low < least && {flattest: {string: angles.indexOf(low), angleDeg: low, leastDeg: least}}),
    ...(high > most && {steepest: {string: angles.indexOf(high), angleDeg: high, mostDeg: most}}),
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
    if (isEasy({...head, dropMm, stepMm: head.stepMm - head.dropMm + dropMm})) return {dropMm}
  return undefined
}
