import type {BuildValues, JournalSettings} from '../build-file/schema.ts'
import type {Plan} from './plan.ts'

/** A build with everything assumed that the trade has a usual value for: what the parts of the plan read. */
export interface Settled {
  slug: string
  /** As written, or assumed; an assumed value says so (`assumed: true`). */
  values: BuildValues
  units: 'in' | 'mm'
  rulerMm: number
  /** Frequency of A4. */
  referenceHz: number
  /** What the days of the journal add up to. */
  minutes?: number
  /** What the journal says was done: the headings of its days, and the tasks that are ticked. */
  told?: readonly string[]
}

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
  by?: string
  /** The day it came into the shop. */
  on?: string
}

/**
 * Compute one concern of the plan from the settled build and the parts before it (see parts.ts for the order).
 * Pure; a result whose inputs are missing is left out, never null or zero.
 */
export type PlanPart = (settled: Settled, soFar: Plan, context: Context) => Partial<Plan>
