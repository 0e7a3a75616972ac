import type {BuildValues} from '../../build-file/schema.ts'
import {inch, radians} from '../../tables/units.ts'
import type {Scale} from '../scale.ts'
import {sideOf} from '../sides.ts'
import type {Placed} from '../tuners.ts'
import type {HeadLayout, Post} from './head-layout.ts'
import type {Layup} from './layers.ts'
import type {NeckModel} from './model.ts'
import {neckWidthAt} from './taper.ts'

/** The head seen from above; lengths in mm, along its own face. */
export interface Head {
  joint: HeadShape['joint']
  angleDeg: number
  lengthMm: number
  ledgeMm: number
  thicknessMm: number
  widthMm?: number | undefined
  /** The thinnest head that the tuners fit. */
  leastMm?: number | undefined
  /** The thickest. */
  mostMm?: number | undefined
  /** The thickest that the stick and a plate on it come to; absent where it is sawn out of a thicker one. */
  comesToMm?: number | undefined
  retainer?: string | undefined
  /** The first, small hole for a post. */
  pilotMm?: number | undefined
}

/** What tuners with a post through the head fit (mm): common practice, no source. */
const tunerThicknessMm = {least: inch(3 / 8), most: inch(3 / 4)}

/** The first, small hole of a post hole that is drilled in two steps (mm): common practice, no source. */
const pilotMm = inch(1 / 8)

/** Look at the head from above: how wide and thick it is, and may be for its tuners. All in mm. */
export function planHead(
  values: BuildValues,
  {head}: NeckModel,
  layout: HeadLayout | undefined,
): Head | undefined {
  if (!head) return undefined
  return {
    joint: head.joint,
    angleDeg: head.angleDeg,
    lengthMm: head.lengthMm,
    ledgeMm: head.ledgeMm,
    thicknessMm: head.thicknessMm,
    widthMm: layout?.widthMm,
    leastMm: values.tuners && tunerThicknessMm.least,
    mostMm: values.tuners && tunerThicknessMm.most,
    comesToMm: head.comesToMm,
    retainer: values.head?.retainer?.value,
    pilotMm: values.tuners?.['post-hole'] && pilotMm,
  }
}

/** Lay posts, buttons and strings out on the head's face; undefined without places or the size of a post hole. */
export function headLayout(
  {tuners, strings}: BuildValues,
  model: NeckModel | undefined,
  placed: readonly Placed[] | undefined,
  scale: Scale | undefined,
): HeadLayout | undefined {
  const {head, taper} = model ?? {}
  const holeMm = tuners?.['post-hole']?.mm
  const widthMm = taper && neckWidthAt(0, taper)
  if (holeMm === undefined || widthMm === undefined || !head || !placed) return undefined
  const side = tuners?.side?.value
  const posts = placed.map(
    ({stationMm, offMm}, i): Post => ({
      alongMm: -stationMm,
      offMm,
      side: side === 'bass' || side === 'treble' ? side : sideOf(offMm, placed.length),
      nutOffMm: scale?.nutOffMm?.[i],
      stringMm: strings?.[i]?.gauge?.mm ?? 0,
    }),
  )
  return {posts, holeMm, buttonMm: tuners?.button?.mm, widthMm, lengthMm: head.lengthMm}
}

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
  /** What the joint leaves, a plate counted; absent where the head is sawn out of the solid. */
  comesToMm?: number | undefined
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
  const comesToMm = leftMm + (head.plate?.thickness?.mm ?? 0)
  return {
    joint,
    angleDeg,
    lengthMm: head.length.mm,
    ledgeMm,
    dropMm,
    stepMm: sum(ending) + dropMm,
    sawnMm,
    thicknessMm: head.thickness?.mm ?? comesToMm,
    comesToMm: joint === 'solid' ? undefined : comesToMm,
  }
}

/**
 * Place a point of the head's face, `alongMm` from the nut line along it: how far behind the nut line it lies, along
 * the playing face, and how deep under that face's plane (mm).
 */
export function headPoint(head: HeadShape, alongMm: number): {behindMm: number; depthMm: number} {
  const slopeMm = Math.max(alongMm - head.ledgeMm, 0)
  const leanRad = radians(head.angleDeg)
  const isDown = slopeMm > 0 || head.joint !== 'straight'
  return {
    behindMm: alongMm - slopeMm + slopeMm * Math.cos(leanRad),
    depthMm: isDown ? head.stepMm + slopeMm * Math.sin(leanRad) : 0,
  }
}
