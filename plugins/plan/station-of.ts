interface Place {
  at?: {mm: number}
  along?: {mm: number}
}

/**
 * Turn a place by `at` or by `along` into mm from the nut line; undefined where neither is given, or where the box
 * that `along` is measured on lies nowhere yet.
 */
export function stationOf(
  {at, along}: Place,
  box: {atMm?: number | undefined} | undefined,
): number | undefined {
  if (at) return at.mm
  return along && box?.atMm !== undefined ? box.atMm + along.mm : undefined
}
