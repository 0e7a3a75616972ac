import type {JournalSettings} from '../build-file/schema.ts'

/** A piece of wood that this build may cut, as of its date. */
export interface Piece {
  id: string
  wood: string
  lengthMm: number
  widthMm: number
  thicknessMm: number
  /** From where to where it is clear, from one end. */
  clearMm?: readonly [number, number] | undefined
  cost?: number | undefined
  /** The day it came into the shop; absent: it was always there. */
  bought?: string | undefined
  remark?: string | undefined
}

/** What a plan depends on besides the build itself. */
export interface Context {
  journal: JournalSettings
  pieces: readonly Piece[]
  /** Pieces of the rack that this build cannot have: cut by an earlier build, or not there yet. */
  gone?: readonly GonePiece[]
}

export interface GonePiece {
  id: string
  why: 'cut' | 'later'
  /** The build that cut it, or that it is left over from. */
  by?: string | undefined
  /** The day it came into the shop. */
  on?: string | undefined
}
