import {noticeableCents, noticeableSource} from '../../tables/hearing.ts'
import type {Settled} from '../part.ts'
import type {Measure} from './measure.ts'

const practice = 'common practice, no source'
/** A pull read off a balance is this part of it out (common practice, no source). */
const pullFraction = 0.1
const angleDeg = 0.5

/**
 * Say how far a measure may be off, in its own unit, and where that comes from: the file's `tolerances`, or else the
 * usual one; a mark of the ruler for a length. The air's note has no usual one: walls and leaks lower it at will.
 */
export function toleranceOf(
  {path, planned, unit}: Measure,
  {values, rulerMm}: Settled,
): {tolerance: number; toleranceFrom: string} | undefined {
  const given = values.tolerances?.[path] as {mm?: number; deg?: number} | undefined
  const own = unit === 'deg' ? given?.deg : unit === 'mm' ? given?.mm : undefined
  if (own !== undefined) return {tolerance: own, toleranceFrom: 'the build file'}
  if (unit === 'mm') return {tolerance: rulerMm, toleranceFrom: practice}
  if (unit === 'deg') return {tolerance: angleDeg, toleranceFrom: practice}
  if (unit === 'cents') return {tolerance: noticeableCents, toleranceFrom: noticeableSource}
  if (unit === 'N' && planned !== undefined)
    return {tolerance: pullFraction * planned, toleranceFrom: practice}
  return undefined
}
