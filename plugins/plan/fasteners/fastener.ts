import type {HoleBit} from '../kit/bits.ts'
import type {WouldDo} from '../kit/would-do.ts'
import type {Way} from './screw-pieces.ts'

/** A screw, in mm and N: its bits, what it goes through, what it holds and what the strings ask of it. */
export interface Fastener {
  /** The row of the build file it comes from. */
  of: string
  /** The file does not have it. */
  proposed?: true | undefined
  stationMm: number
  offMm: number
  /** Below the box's top, of one along the neck. */
  downMm?: number | undefined
  /** Its gauge number. */
  size: number
  lengthMm: number
  /** From the head on. */
  through: string[]
  into: string
  /** Up towards the playing face, down from it, or along the neck. */
  way: Way
  head?: 'flat' | 'round' | undefined
  /** What the tip sits in. */
  wood?: string | undefined
  /** What the pilot is sized by. */
  hardness: 'soft' | 'hard'
  shankMm: number
  /** Mid-thread average of a tapered screw. */
  rootMm: number
  /** The larger one of the design tables. */
  rootDesignMm?: number | undefined
  clearanceMm: number
  clearanceBit: HoleBit
  pilotMm: number
  pilotBit: HoleBit
  pilotBitMm: number
  /** Across a flat head. */
  countersinkMm?: number | undefined
  /** Wood under the head. */
  underHeadMm: number
  /** Without block or washer. */
  leastUnderHeadMm: number
  /** A block or a washer spreads its head. */
  hasPad: boolean
  joinsNeck: boolean
  /** It holds a top that comes off. */
  holdsTop?: true | undefined
  /** A neck on the top covers its head: how far off the centre line it would be free. */
  covered?: {wouldDo: WouldDo} | undefined
  /** It is drawn along the grain of what holds it. */
  isEndGrain: boolean
  /** Its whole thread. */
  ownThreadMm: number
  /** The file says more thread than the screw is long. */
  isThreadTooLong: boolean
  /** Thread that bites. */
  threadMm: number
  leastThreadMm: number
  /** The shortest with enough thread. */
  shortestMm: number
  /** Negative: it comes out. */
  tipToFaceMm?: number | undefined
  /** The longest that stays 1/8 in below the far face. */
  longestMm?: number | undefined
  withdrawalN: number
  /** What the strings draw it by. */
  loadN?: number | undefined
  /** What that is above a third of what it holds. */
  overN?: number | undefined
  /** The joint is glued as well. */
  isGlued: boolean
  /** The glue would hold without it: at the end of a box only as far as end grain does. */
  isGlueEnough: boolean
  /** The smallest gauge that holds three times the load. */
  sizeForLoad?: number | undefined
  offBox?: WouldDo | undefined
  /** It is to go through or into a block, and none is there. */
  astray?: {wouldDo?: WouldDo | undefined} | undefined
}
