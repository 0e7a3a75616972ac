import type {JournalSettings} from '../../build-file/schema/schema.ts'

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

/** Things alike on the rack that are no wood: tuners, sets of strings, screws. */
export interface Lot {
  id: string
  item: string
  /** How many stand there. */
  count: number
  /** What one cost. */
  each?: number | undefined
  /** The day they came into the shop. */
  bought?: string | undefined
}

/** What a plan depends on besides the build itself. */
export interface Context {
  journal: JournalSettings
  pieces: readonly Piece[]
  /** What else stands on the rack. */
  lots?: readonly Lot[]
  /** What is on the rack that this build cannot have: used by an earlier build, or not there yet. */
  gone?: readonly GonePiece[]
  /** What this build only reserves, and another one reserves too. */
  reserved?: readonly {id: string; by: string}[]
}

export interface GonePiece {
  id: string
  why: 'cut' | 'later'
  /** The build that cut it, or that it is left over from. */
  by?: string | undefined
  /** The day it came into the shop. */
  on?: string | undefined
}

/** Give the names of several alike, `A4.1` to `A4.6` of six; one alone has its own. */
export const namesOfEach = (id: string, count: number): string[] =>
  count > 1 ? Array.from({length: count}, (_, k) => `${id}.${k + 1}`) : [id]

/** Give the name that a piece is listed under, where it is one of several alike: `A4` of `A4.1`. */
export const listedAs = (id: string): string => id.replace(/\.\d+$/, '')
