import type {BuildValues} from '../../build-file/schema/schema.ts'
import {inch} from '../../tables/units.ts'
import {sideOf} from '../kit/sides.ts'
import type {HeadShape} from '../neck-shape/head-shape.ts'
import type {NeckModel} from '../neck-shape/model.ts'
import {neckWidthAt} from '../neck-shape/taper.ts'
import type {Scale} from '../scale/scale.ts'
import type {Placed} from '../strings/tuners.ts'
import type {HeadLayout, Post} from './head-layout.ts'

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
