import type {Settled} from '../part.ts'
import {roughSize} from './rough-size.ts'
import type {WantedPart} from './wanted-part.ts'
import {woodRow} from './wood-row.ts'

/** List the blocks inside the box, sized as sawn (mm); the grain runs along the longer side. */
export function blockParts(settled: Settled): WantedPart[] {
  const blocks = settled.values.box?.blocks ?? []
  return blocks.flatMap((block, i) => {
    if (!block.length || !block.width || !block.thickness) return []
    const [lengthMm, widthMm] = [block.length.mm, block.width.mm].sort((a, b) => b - a) as [number, number]
    return [
      {
        name: blocks.length > 1 ? `block ${i + 1}` : 'block',
        of: `box.blocks.${i + 1}`,
        ...woodRow(block),
        ...roughSize({lengthMm, widthMm, thicknessMm: block.thickness.mm}, settled),
      },
    ]
  })
}
