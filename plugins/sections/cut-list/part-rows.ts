import type {Cuts, Part} from '../../plan/shape/stock.ts'
import {plainName} from './plain-name.ts'

/** Parts alike in size, wood and purpose, as one row of the list. */
export interface PartRow {
  part: Part
  count: number
  name: string
}

/** List parts by row of the build file: strips of one layer, or several of one listed part, stand together. */
export function partRows({parts}: Pick<Cuts, 'parts'>): PartRow[] {
  const rows = new Map<string, PartRow>()
  for (const part of parts) {
    const key = [part.of, part.wood, part.lengthMm, part.widthMm, part.thicknessMm].join('|')
    const row = rows.get(key)
    if (row) row.count++
    else rows.set(key, {part, count: 1, name: part.name})
  }
  return [...rows.values()].map((row) => (row.count > 1 ? {...row, name: plainName(row.name)} : row))
}
