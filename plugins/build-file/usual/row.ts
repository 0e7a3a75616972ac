import {inch} from '../../tables/units.ts'
import type {BuildValues} from '../schema/schema.ts'

/** A value that is assumed where the file leaves it out: the trade's usual one, and why. */
export interface AssumptionRow {
  path: string
  /** The path that it is listed under, where that is a shorter one. */
  listed?: string
  /**
   * In words as a maker would write it, or in mm; nothing where it does not apply.
   * A path with `*` is asked once for each item of its list, counted from 0.
   */
  value: (values: BuildValues, item: number) => string | {mm: number} | undefined
  why: string
  /** For the key reference. */
  says: string
}

/** Why a usual value is taken, unless its row says more. */
export const practice = 'common practice, no source'

export const inches = (count: number) => ({mm: inch(count)})

export const hasStrings = (v: BuildValues) => (v.strings?.length ?? 0) > 0
export const hasNeck = (v: BuildValues) => Boolean(v.neck ?? v.box ?? v.scale)
export const isFretted = (v: BuildValues) => v.scale?.fretted?.value === true
export const slides = (v: BuildValues) =>
  v.play?.value === 'slide' || (v.play?.value === 'both' && !isFretted(v))
/** Millimetres to a value only where everything it is made of is known. */
export const known = (mm: number | undefined) => (mm !== undefined && Number.isFinite(mm) ? {mm} : undefined)
