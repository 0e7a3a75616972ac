import type {PlanPart} from '../part.ts'
import type {WouldDo} from '../would-do.ts'
import type {Block} from './box-blocks.ts'
import type {BridgeSeat} from './bridge-seat.ts'
import type {NeckInBox} from './neck-in-box.ts'
import type {SoundHole} from './sound-holes.ts'

export interface Box {
  /** Its head-side edge, from the nut. */
  atMm?: number | undefined
  /** Its tail edge, from the nut. */
  tailMm?: number | undefined
  /** The bridge line along the box, 0 at the head side. */
  bridgeFraction?: number | undefined
  /** Where bridge.from-tail would put the head-side edge, where box.at places it too. */
  atByTailMm?: number | undefined
  /** The path of the build file that says where it lies. */
  placedBy?: string | undefined
  /** Where it would lie for the bridge to stand well, where it does not. */
  wouldDo?: WouldDo | undefined
  outside?:
    | {
        lengthMm: number
        widthMm: number
        depthMm: number
        sidesMm: number
        topMm: number
        backMm: number
      }
    | undefined
  inside?:
    | {
        lengthMm: number
        widthMm: number
        heightMm: number
      }
    | undefined
  neck?: NeckInBox | undefined
  soundHoles?: SoundHole[] | undefined
  blocks?: Block[] | undefined
  /** Where the bridge stands on the top. */
  bridgeSeat?: BridgeSeat | undefined
  /** glued, screwed or hinged. */
  topHeld?: string | undefined
  /** The top is glued, and no hole lets a hand in. */
  isShut?: boolean | undefined
  /** The air inside: less the neck and the blocks. */
  volumeL?: number | undefined
  holeAreaMm2?: number | undefined
  /** Both ends of each hole flanged, in a box that does not give. */
  resonanceHz?: number | undefined
  /** As thin walls lower it. */
  resonanceLowHz?: number | undefined
  nearestNote?: string | undefined
  /** The resonance above that note. */
  nearestCents?: number | undefined
  /** Where that note falls on the neck; label 0 is the open string. */
  nearestLines?:
    | {
        string: string
        label: string
        cents: number
      }[]
    | undefined
}

/**
 * Say where the box lies, in mm from the nut line: its head-side and tail edges, and the bridge line along it
 * (0 at the head side, 1 at the tail). `box.at` places it, or else `bridge.from-tail`; where the file gives both,
 * `atByTailMm` is where the second would put the head-side edge. Absent without a scale length or a place.
 */
export const boxPlace: PlanPart = ({values}, soFar) => {
  const {box, bridge} = values
  const lengthMm = box?.length?.mm
  const bridgeMm = values.scale?.length?.mm
  const fromTail = bridge?.['from-tail']
  const atByTailMm =
    fromTail && bridgeMm !== undefined && lengthMm !== undefined
      ? bridgeMm + fromTail.mm - lengthMm
      : undefined
  const atMm = box?.at?.mm ?? atByTailMm
  if (!box || atMm === undefined) return {}
  return {
    box: {
      ...soFar.box,
      atMm,
      placedBy: box.at || !fromTail || fromTail.assumed ? 'box.at' : 'bridge.from-tail',
      ...(lengthMm !== undefined && {tailMm: atMm + lengthMm}),
      ...(lengthMm !== undefined && bridgeMm !== undefined && {bridgeFraction: (bridgeMm - atMm) / lengthMm}),
      ...(box.at && atByTailMm !== undefined && !fromTail?.assumed && {atByTailMm}),
    },
  }
}

/** Give the box's sizes in mm, outside and inside; the inside is absent where its walls leave none. */
export const boxSizes: PlanPart = ({values: {box}}, soFar) => {
  if (!box?.length || !box.width || !box.depth || !box.sides || !box.top?.thickness || !box.back) return {}
  const outside = {
    lengthMm: box.length.mm,
    widthMm: box.width.mm,
    depthMm: box.depth.mm,
    sidesMm: box.sides.mm,
    topMm: box.top.thickness.mm,
    backMm: box.back.mm,
  }
  const inside = {
    lengthMm: outside.lengthMm - 2 * outside.sidesMm,
    widthMm: outside.widthMm - 2 * outside.sidesMm,
    heightMm: outside.depthMm - outside.topMm - outside.backMm,
  }
  const isHollow = Object.values(inside).every((mm) => mm > 0)
  return {box: {...soFar.box, outside, ...(isHollow && {inside})}}
}

/** A sound hole this wide lets two fingers and a jack through (mm): common practice, no source. */
const handMm = 2 * 25.4

/** Say how the top is held, and whether the box, once it is closed, lets nobody in any more. */
export const wayIn: PlanPart = ({values}, soFar) => {
  const held = values.box?.top?.held?.value
  if (!held) return {}
  const isWide = values.box?.holes?.some(({diameter}) => (diameter?.mm ?? 0) >= handMm) ?? false
  return {box: {...soFar.box, topHeld: held, isShut: held === 'glued' && !isWide}}
}
