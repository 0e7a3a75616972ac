import type {HoleBit} from './bits.ts'

/** A hole to drill, in mm. */
export interface Hole {
  what: HoleUse
  face: Face
  stationMm: number
  /** On the box, from its head-side edge. */
  alongMm?: number | undefined
  offMm: number
  /** Below the top, in a wall; below the playing face, in the neck's end. */
  downMm?: number | undefined
  diameterMm: number
  /** Absent when it goes through. */
  depthMm?: number | undefined
  bit?: HoleBit | undefined
  backing?: Backing | undefined
  /** The path of the build file it comes from. */
  of: string
  /** The file does not place it: a place with room. */
  proposed?: true | undefined
}

/** What a hole is for: which string, what a screw passes there or what holds it. */
export type HoleUse =
  | {hole: 'tuner' | 'string' | 'pin' | 'ferrule'; string?: string | undefined}
  | {hole: 'sound' | 'jack' | 'strap button'}
  | {hole: 'clearance'; through: readonly string[]}
  | {hole: 'pilot'; into: string}

/** The face that a bit enters. */
export type Face = Wall | 'back' | 'head' | 'neck back' | 'neck end' | 'playing face' | 'top' | 'top inside'

/** A wall of the box. */
export type Wall = 'head end' | 'side bass' | 'side treble' | 'tail end'

/** What keeps the wood from breaking out where the bit leaves it; behind a strap button, what holds its screw. */
export type Backing = 'under top' | 'inside' | 'under head' | 'far side' | 'block'
