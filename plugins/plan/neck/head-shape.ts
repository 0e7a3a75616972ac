import type {BuildValues} from '../../build-file/schema.ts'
import type {Layup} from './neck-layers.ts'

/** How the head leans and how thick it is; lengths in mm, along its own face from the nut line. */
export interface HeadShape {
  joint: 'scarf' | 'solid' | 'straight'
  angleDeg: number
  lengthMm: number
  /** Flat behind the nut line before the face goes down. */
  ledgeMm: number
  /** What is cut off the face of a straight head. */
  dropMm: number
  /** How far the face steps down besides: off a fingerboard's end, and on a straight head what is cut away. */
  stepMm: number
  /** The layers that are there when the scarf is sawn. */
  sawnMm: number
  /** Face to back, as the file has it or as the joint leaves it. */
  thicknessMm: number
}

const slackMm = 1e-6

/**
 * Gather the head's shape; undefined without a joint and a length. A scarf or solid head without an angle is straight.
 * A layer that ends at the ledge is sloped off with a head that leans, and is a step on one that does not.
 */
export function headShape({head}: BuildValues, {layers}: Layup): HeadShape | undefined {
  if (!head?.joint || !head.length) return undefined
  const angleDeg = head.joint.value === 'straight' ? 0 : (head.angle?.deg ?? 0)
  const joint = angleDeg > 0 ? head.joint.value : 'straight'
  const ledgeMm = Math.min(head.ledge?.mm ?? 0, head.length.mm)
  const sum = (some: typeof layers) => some.reduce((total, {thicknessMm}) => total + thicknessMm, 0)
  const sawnMm = sum(layers.filter(({isSawn}) => isSawn))
  const runOn = layers.filter(({fromMm}) => fromMm < -ledgeMm - slackMm)
  const dropMm = joint === 'straight' ? (head.drop?.mm ?? 0) : 0
  const ending = layers.filter((layer) =>
    joint === 'straight' ? !runOn.includes(layer) : layer.fromMm > -ledgeMm + slackMm && !layer.isSawn,
  )
  const leftMm = joint === 'straight' ? Math.max(sum(runOn) - dropMm, 0) : sawnMm
  return {
    joint,
    angleDeg,
    lengthMm: head.length.mm,
    ledgeMm,
    dropMm,
    stepMm: sum(ending) + dropMm,
    sawnMm,
    thicknessMm: head.thickness?.mm ?? leftMm + (head.plate?.thickness?.mm ?? 0),
  }
}

/**
 * Place a point of the head's face, `alongMm` from the nut line along it: how far behind the nut line it lies, along
 * the playing face, and how deep under that face's plane (mm).
 */
export function headPoint(head: HeadShape, alongMm: number): {behindMm: number; depthMm: number} {
  const slopeMm = Math.max(alongMm - head.ledgeMm, 0)
  const leanRad = (head.angleDeg * Math.PI) / 180
  const isDown = slopeMm > 0 || head.joint !== 'straight'
  return {
    behindMm: alongMm - slopeMm + slopeMm * Math.cos(leanRad),
    depthMm: isDown ? head.stepMm + slopeMm * Math.sin(leanRad) : 0,
  }
}
