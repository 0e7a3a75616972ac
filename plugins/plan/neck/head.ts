import type {BuildValues} from '../../build-file/schema.ts'
import {inch} from '../../tables/units.ts'
import type {Scale} from '../scale.ts'
import {sideOf} from '../sides.ts'
import type {Placed} from '../tuners.ts'
import type {HeadLayout, Post} from './head-layout.ts'
import type {HeadProfile} from './head-profile.ts'
import type {Layup} from './layers.ts'
import type {NeckModel} from './model.ts'
import {neckWidthAt} from './taper.ts'

/** The head seen from above; lengths in mm, along its own face. */
export interface Head {
  joint: HeadShape['joint']
  angleDeg: number
  lengthMm: number
  ledgeMm: number
  /** Where its face steps down behind the nut line, and how far. */
  steps: HeadShape['steps']
  hollow?: HeadShape['hollow']
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
export const tunerThicknessMm = {least: inch(3 / 8), most: inch(3 / 4)}

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
    steps: head.steps,
    hollow: head.hollow,
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
