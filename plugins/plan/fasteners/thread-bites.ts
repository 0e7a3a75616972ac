import type {Wood} from '../wood-facts.ts'
import type {Layer} from './screw-layers.ts'
import type {Bite} from './withdrawal.ts'

/**
 * Say what a thread of so many mm bites, layer by layer from where it enters, the wood its tip ends in, and whether
 * that is bored as hard or soft. Of a loose wood, the lightest that it may mean.
 */
export function threadBites(
  layers: readonly Layer[],
  threadMm: number,
): {
  bites: Bite[]
  tip: Wood | undefined
  hardness: 'hard' | 'soft'
} {
  let leftMm = threadMm
  let tip = layers[0]?.wood
  const bites = layers.map(({wood, mm}) => {
    const bite = Math.min(mm, leftMm)
    if (bite > 1e-6) tip = wood
    leftMm -= bite
    const g12 = wood?.loose && wood.range ? wood.range.densityKgM3[0] / 1120 : (wood?.g12 ?? 0)
    return {g12, mm: bite}
  })
  return {bites, tip, hardness: isHard(tip) ? 'hard' : 'soft'}
}

/** A wood whose name leaves its kind open is bored as a hardwood from half the weight of water up. */
function isHard(wood: Wood | undefined): boolean {
  if (!wood) return true
  return wood.kind === undefined || wood.kind === 'sheet' ? wood.g12 >= 0.5 : wood.kind === 'hardwood'
}
