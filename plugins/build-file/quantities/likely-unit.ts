import type {UnitRow} from '../../tables/units.ts'
import {nearest} from '../nearest.ts'
import {findUnit} from './find-unit.ts'

/** Name the unit that a misspelt word most likely means; nothing for one letter, which may mean any. */
export function likelyUnit(word: string, rows: readonly UnitRow[]): string | undefined {
  if (word.length < 2 || word.length > 20) return undefined
  const close = nearest(
    word,
    rows.flatMap((row) => row.words),
  )
  return close && findUnit(close, rows)?.words[0]
}
