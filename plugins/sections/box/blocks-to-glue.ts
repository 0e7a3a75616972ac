import type {BlockContent} from 'mdast'
import type {Build} from '../../build-file/build.ts'
import type {Block} from '../../plan/shape/box.ts'
import type {Plan} from '../../plan/shape/plan.ts'
import {type Cell, lengthAlone, table} from '../kit.ts'

/** List the blocks to glue inside: wood, size, and where their middles lie along the box and off the centre line. */
export function blocksToGlue(plan: Plan, {values}: Build): BlockContent[] {
  const blocks = plan.box?.blocks ?? []
  if (!blocks.length) return []
  const at = (mm: number) => lengthAlone(mm, plan)
  const row = (block: Block, i: number): Cell[] => [
    `Block ${i + 1}`,
    values.box?.blocks?.[i]?.wood?.value ?? 'any',
    [
      at(block.lengthMm),
      ' × ',
      at(block.widthMm),
      ...(block.thicknessMm === undefined ? [] : [' × ', at(block.thicknessMm)]),
    ],
    at(block.alongMm),
    at(block.offMm),
    block.glued ?? 'under the top',
  ]
  return [
    table({
      caption: 'Blocks to glue inside the box',
      columns: [
        {head: 'Block'},
        {head: 'Wood'},
        {head: 'Along × across × thick'},
        {head: 'Middle from the head-side edge', align: 'right'},
        {head: 'Off the centre line', align: 'right'},
        {head: 'Glued'},
      ],
      rows: blocks.map(row),
      note: 'Their grain runs along the longer side. Clamp each until its glue has set, on a face that has been scraped bare.',
    }),
  ]
}
