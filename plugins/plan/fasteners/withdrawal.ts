/** A stretch of thread in one wood: ovendry mass over volume at 12 % moisture, and mm. */
export interface Bite {
  g12: number
  mm: number
}

/** What a thread in end grain still holds of what it does across the grain: Wood Handbook, ch. 8, from memory. */
const endGrain = 0.75

/**
 * Give the pull (N) that draws a wood screw of this shank (mm) out of the woods its thread sits in: Σ 108.25 G² D L.
 * Ultimate load, side grain, seasoned wood. Source: Wood Handbook, FPL-GTR-282, Eq. 8-10.
 */
export function withdrawalN(shankMm: number, bites: readonly Bite[], isEndGrain = false): number {
  const sideN = bites.reduce((sum, {g12, mm}) => sum + 108.25 * g12 ** 2 * shankMm * mm, 0)
  return isEndGrain ? sideN * endGrain : sideN
}
