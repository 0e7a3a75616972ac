import type {Cuts} from '../shape/stock.ts'

/** The parts of one row that found no piece: the row's path, its first such part in words, and what is near it. */
export interface UnplacedRow {
  of: string
  /** `inlay 1 and 2 more like it` */
  which: string
  /** `K1 comes nearest, and lacks 4 in of length` */
  near: string
  wouldDo?: Cuts['unplaced'][number]['wouldDo']
}

/** Gather the parts that found no piece by the row of the file, or of the design, that they come from. */
export function unplacedRows({parts, unplaced}: Cuts): UnplacedRow[] {
  const byId = new Map(parts.map((part) => [part.id, part]))
  const rows = new Map<string, Cuts['unplaced']>()
  for (const one of unplaced) {
    const {of} = byId.get(one.partId)!
    rows.set(of, [...(rows.get(of) ?? []), one])
  }
  return [...rows].map(([of, lacking]) => {
    const {partId, nearest, lacks, wouldDo} = lacking[0]!
    const {name} = byId.get(partId)!
    return {
      of,
      which: lacking.length > 1 ? `${name} and ${lacking.length - 1} more like it` : name,
      near: nearest ? `${nearest} comes nearest, and lacks ${lacks}` : lacks,
      ...(wouldDo && {wouldDo}),
    }
  })
}
