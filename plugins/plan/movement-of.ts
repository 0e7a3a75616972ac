import type {WoodRow} from '../tables/woods.ts'

/**
 * Give a wood's change of width per 1 % of moisture, [radial, tangential], between 6 and 14 %: as printed, or from its
 * shrinkage S in % by C = 1/(3000/S − 20). Sugar maple, S 9.9: 0.00353.
 * Source: Wood Handbook, FPL-GTR-190, Table 13-5; the rule is its exact form with 10 % at the start.
 */
export function movementOf(
  row: Pick<WoodRow, 'moves' | 'shrinkPercent'>,
): readonly [radial: number, tangential: number] | undefined {
  if (row.moves) return row.moves
  if (!row.shrinkPercent) return undefined
  const [radial, tangential] = row.shrinkPercent
  return [1 / (3000 / radial - 20), 1 / (3000 / tangential - 20)]
}
