import type {BuildValues} from '../../build-file/schema.ts'
import type {HeadProfile} from './head-profile.ts'
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
