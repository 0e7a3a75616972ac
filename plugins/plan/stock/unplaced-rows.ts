import type {Part} from './part.ts'
import type {Unplaced} from './unplaced-parts.ts'

/** The parts of one row that found no piece: the first of them, how many more there are, and what is near it. */
export interface UnplacedRow extends Omit<Unplaced, 'partId'> {
  part: Part
  more: number
}

/** Gather the parts that found no piece by the row of the file, or of the design, that they come from. */
export function unplacedRows(parts: readonly Part[], unplaced: readonly Unplaced[]): UnplacedRow[] {
  const byId = new Map(parts.map((part) => [part.id, part]))
  const rows = new Map<string, UnplacedRow>()
  for (const {partId, ...near} of unplaced) {
    const part = byId.get(partId)!
    const row = rows.get(part.of)
    if (row) row.more++
    else rows.set(part.of, {...near, part, more: 0})
  }
  return [...rows.values()]
}
