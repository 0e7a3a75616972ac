import type {BuildValues} from '../../build-file/schema/schema.ts'
import {inch} from '../../tables/units.ts'
import type {NeckInBox} from '../joint/neck-in-box.ts'
import type {BoxPlace, BoxSizes} from '../kit/box-place.ts'
import type {WouldDo} from '../kit/would-do.ts'
import type {BoxAir} from './box-air.ts'
import type {Block} from './box-blocks.ts'
import type {BridgeSeat} from './bridge-seat.ts'
import type {Lid} from './lid.ts'
import type {SoundHole} from './sound-holes.ts'

/** What is known of the box; each part is absent until what it follows from is there. */
export interface Box extends Known<BoxAir>, Known<WayIn>, Known<BoxSizes>, Known<BoxPlace> {
  /** Where it would lie for the bridge to stand well, where it does not. */
  wouldDo?: WouldDo | undefined
  neck?: NeckInBox | undefined
  soundHoles?: SoundHole[] | undefined
  blocks?: Block[] | undefined
  /** Where the bridge stands on the top. */
  bridgeSeat?: BridgeSeat | undefined
  /** How the top gives way under it. */
  lid?: Lid | undefined
}

type Known<T> = {[K in keyof T]?: T[K] | undefined}

export interface WayIn {
  topHeld: 'glued' | 'screwed' | 'hinged'
  /** The top is glued, and no hole lets a hand in. */
  isShut: boolean
}

/** Give the box as it is put together; undefined where nothing is known of it. */
export function wholeBox(box: Box): Box | undefined {
  return Object.values(box).some((part) => part !== undefined) ? box : undefined
}

/** A sound hole this wide lets two fingers and a jack through (mm): common practice, no source. */
const handMm = inch(2)

/** Say how the top is held, and whether the box, once it is closed, lets nobody in any more. */
export function planWayIn({box}: BuildValues): WayIn | undefined {
  const topHeld = box?.top?.held?.value
  if (!topHeld) return undefined
  const isWide = box?.holes?.some(({diameter}) => (diameter?.mm ?? 0) >= handMm) ?? false
  return {topHeld, isShut: topHeld === 'glued' && !isWide}
}
