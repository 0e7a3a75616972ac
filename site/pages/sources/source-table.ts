import type {TableOptions} from '../../../plugins/sections/kit/table.ts'

/** A table that the computations use, as its page shows it; `source` says where all rows come from that name none. */
export interface SourceTable {
  title: string
  source?: string
  table: Pick<TableOptions, 'caption' | 'columns' | 'rows'>
}

export const right = (head: string) => ({head, align: 'right'}) as const

export const noSource = 'common practice, no source'
