import type {BuildValues} from '../../build-file/schema/schema.ts'
import {degrees, radians} from '../../tables/units.ts'
import {distinctPlaces} from './bend.ts'
import type {Layup} from './layers.ts'

/** How the head leans and how thick it is; lengths in mm, along its own face from the nut line. */
export interface HeadShape extends HeadProfile {
  joint: 'scarf' | 'solid' | 'straight'
  lengthMm: number
  /** What is cut off the face of a straight head. */
  dropMm: number
  /** How far the face steps down in all. */
  stepMm: number
  /** The layers that are sawn through at the scarf. */
  sawnMm: number
  /** Face to back, as the file has it or as the joint leaves it. */
  thicknessMm: number
  /** What the joint leaves, a plate counted; absent where the head is sawn out of the solid. */
  comesToMm?: number | undefined
  /** A layer that lies hollow over the slope, since it ends behind where that starts. */
  hollow?: {of: string; byMm: number} | undefined
}

const slackMm = 1e-6

/**
 * Gather the head's shape; undefined without a joint and a length. A scarf or solid head without an angle is straight.
 * The layers that reach the middle of the head are the head's own; every other ends in a step, wherever it ends, and
 * the slope is sawn into what lies below. So a layer that ends a hair further or shorter changes nothing by a leap.
 */
export function headShape({head}: BuildValues, {layers}: Layup): HeadShape | undefined {
  if (!head?.joint || !head.length) return undefined
  const angleDeg = head.joint.value === 'straight' ? 0 : (head.angle?.deg ?? 0)
  const joint = angleDeg > 0 ? head.joint.value : 'straight'
  const lengthMm = head.length.mm
  const ledgeMm = Math.min(head.ledge?.mm ?? 0, lengthMm)
  const sum = (some: typeof layers) => some.reduce((total, {thicknessMm}) => total + thicknessMm, 0)
  const own = layers.filter(({reachesHead, isSawn}) => reachesHead && (isSawn || joint === 'straight'))
  const ending = layers.filter((layer) => !own.includes(layer))
  const dropMm = joint === 'straight' ? (head.drop?.mm ?? 0) : 0
  const drop = dropMm > 0 ? [{alongMm: ledgeMm, downMm: dropMm}] : []
  const hollow = ending.find((layer) => angleDeg > 0 && layer.fromMm < -ledgeMm - slackMm)
  const comesToMm = Math.max(sum(own) - dropMm, 0) + (head.plate?.thickness?.mm ?? 0)
  return {
    joint,
    angleDeg,
    lengthMm,
    ledgeMm,
    flatToMm: Math.max(ledgeMm, ...ending.map(({fromMm}) => -fromMm)),
    steps: [
      ...ending.map(({fromMm, thicknessMm}) => ({alongMm: Math.max(-fromMm, 0), downMm: thicknessMm})),
      ...drop,
    ],
    dropMm,
    stepMm: sum(ending) + dropMm,
    sawnMm: sum(own.filter(({isSawn}) => isSawn)),
    thicknessMm: head.thickness?.mm ?? comesToMm,
    comesToMm: joint === 'solid' ? undefined : comesToMm,
    hollow: hollow && {of: hollow.of, byMm: -hollow.fromMm - ledgeMm},
  }
}

/** The head's face behind the nut line as it goes down: mm along it from the nut line, towards the head end. */
export interface HeadProfile {
  angleDeg: number
  /** Where its slope starts. */
  ledgeMm: number
  /** A layer that lies flat over the start of the slope ends here; else at the ledge. */
  flatToMm: number
  /** Where the face steps down, and how far: the end of each layer, and what is cut off a straight head. */
  steps: readonly {alongMm: number; downMm: number}[]
}

/** A point of the face: how far behind the nut line it lies, and how deep under the playing face’s plane (mm). */
interface FacePoint {
  behindMm: number
  depthMm: number
}

/**
 * Place a point of the head's face, `alongMm` from the nut line along it. Where the face steps down, it is the upper
 * edge, or the foot of the step where that is asked for. Source: geometry.
 */
export function headPoint(
  {angleDeg, ledgeMm, flatToMm, steps}: HeadProfile,
  alongMm: number,
  at: 'edge' | 'foot' = 'edge',
): FacePoint {
  const isPast = (mm: number) => (at === 'foot' ? alongMm >= mm : alongMm > mm)
  const slopeMm = isPast(flatToMm) ? Math.max(alongMm - ledgeMm, 0) : 0
  const leanRad = radians(angleDeg)
  let depthMm = slopeMm * Math.sin(leanRad)
  for (const step of steps) if (isPast(step.alongMm)) depthMm += step.downMm
  return {behindMm: alongMm - slopeMm + slopeMm * Math.cos(leanRad), depthMm}
}

/** List the corners of the face from the nut line to a place along it (mm): both edges of each step, and the ledge's. */
export function headCorners(profile: HeadProfile, toMm: number): FacePoint[] {
  const {ledgeMm, flatToMm, steps} = profile
  const places = distinctPlaces([ledgeMm, flatToMm, ...steps.map(({alongMm}) => alongMm)])
  return places
    .filter((alongMm) => alongMm >= 0 && alongMm < toMm)
    .flatMap((alongMm) => {
      const [edge, foot] = [headPoint(profile, alongMm), headPoint(profile, alongMm, 'foot')]
      return foot.depthMm > edge.depthMm ? [edge, foot] : [edge]
    })
}

/** Where one string runs behind the nut: from its height there to its post, along the head's face (all mm). */
interface StringRun {
  nutMm: number
  postMm: number
  /** Where it meets the post, above the head's face. */
  postHeightMm: number
}

/**
 * Give the angle (degrees) at which a string goes down behind the nut; negative where it rises. It runs straight to its
 * post, or over the edge of the face that stands in its way: `overMm` is then how far behind the nut that lies.
 */
export function behindNut(
  profile: HeadProfile,
  {nutMm, postMm, postHeightMm}: StringRun,
): {angleDeg: number; overMm?: number | undefined} {
  const post = headPoint(profile, postMm)
  let leastRad = Math.atan2(nutMm + post.depthMm - postHeightMm, post.behindMm)
  let overMm: number | undefined
  for (const {behindMm, depthMm} of headCorners(profile, postMm)) {
    const rad = Math.atan2(nutMm + depthMm, behindMm)
    // At the nut line itself the string has only just left the nut.
    if (behindMm > slackMm && rad < leastRad - slackRad) [leastRad, overMm] = [rad, behindMm]
  }
  return {angleDeg: degrees(leastRad), overMm}
}

const slackRad = 1e-9
