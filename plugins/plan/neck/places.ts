/** Places (mm) nearer than this are one place: what lies between them is no stretch of wood. */
export const samePlaceMm = 1e-6

/** Sort places (mm) and keep one of those that are the same to within a millionth of a millimetre. */
export function distinctPlaces(placesMm: readonly number[]): number[] {
  const distinct: number[] = []
  for (const at of [...placesMm].sort((a, b) => a - b))
    if (!(at - (distinct.at(-1) ?? Number.NEGATIVE_INFINITY) < samePlaceMm)) distinct.push(at)
  return distinct
}
