import type {UnitRow} from '../../tables/units.ts'

/** Find the unit that a word names, whatever its case. */
export function findUnit(word: string, rows: readonly UnitRow[]): UnitRow | undefined {
  const wanted = word.toLowerCase()
  return rows.find((row) => row.words.some((spelling) => spelling.toLowerCase() === wanted))
}
