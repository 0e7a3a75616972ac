import type {BuildValues} from '../../build-file/schema.ts'
import type {WoodsBeside} from './box-bodies.ts'

/** Name the woods that the plan has no place for. */
export function woodsBeside({box, head}: BuildValues): WoodsBeside {
  const blocks = (box?.blocks ?? []).map((block, i) => [`box.blocks.${i + 1}`, block.wood?.value] as const)
  return {
    box: box?.wood?.value,
    top: box?.top?.wood?.value,
    plate: head?.plate?.wood?.value,
    blocks: Object.fromEntries([...blocks, ['box.end-block', box?.['end-block']?.wood?.value]]),
  }
}
