import type {BuildValues} from '../../build-file/schema/schema.ts'

/** Where the box lies, in mm from the nut line. */
export interface BoxPlace {
  /** Its head-side edge. */
  atMm: number
  /** Its tail edge. */
  tailMm?: number | undefined
  /** The bridge line along the box, 0 at the head side. */
  bridgeFraction?: number | undefined
  /** Where bridge.from-tail would put the head-side edge, where box.at places it too. */
  atByTailMm?: number | undefined
  /** The path of the build file that says where it lies. */
  placedBy: 'box.at' | 'bridge.from-tail'
}

/** Its sizes in mm; the inside is absent where its walls leave none. */
export interface BoxSizes {
  outside: {
    lengthMm: number
    widthMm: number
    depthMm: number
    sidesMm: number
    topMm: number
    backMm: number
  }
  inside?: {lengthMm: number; widthMm: number; heightMm: number} | undefined
}

/**
 * Say where the box lies. `box.at` places it, or else `bridge.from-tail`; where the file gives both, `atByTailMm` is
 * where the second would put the head-side edge. Undefined without a scale length or a place.
 */
export function planBoxPlace({box, bridge, scale}: BuildValues): BoxPlace | undefined {
  const lengthMm = box?.length?.mm
  const bridgeMm = scale?.length?.mm
  const fromTail = bridge?.['from-tail']
  const atByTailMm =
    fromTail && bridgeMm !== undefined && lengthMm !== undefined
      ? bridgeMm + fromTail.mm - lengthMm
      : undefined
  const atMm = box?.at?.mm ?? atByTailMm
  if (!box || atMm === undefined) return undefined
  return {
    atMm,
    tailMm: lengthMm === undefined ? undefined : atMm + lengthMm,
    bridgeFraction:
      lengthMm === undefined || bridgeMm === undefined ? undefined : (bridgeMm - atMm) / lengthMm,
    atByTailMm: box.at && !fromTail?.assumed ? atByTailMm : undefined,
    placedBy: box.at || !fromTail || fromTail.assumed ? 'box.at' : 'bridge.from-tail',
  }
}

/** Give the box's sizes, once the file has all of them. */
export function planBoxSizes({box}: BuildValues): BoxSizes | undefined {
  if (!box?.length || !box.width || !box.depth || !box.sides || !box.top?.thickness || !box.back)
    return undefined
  const outside = {
    lengthMm: box.length.mm,
    widthMm: box.width.mm,
    depthMm: box.depth.mm,
    sidesMm: box.sides.mm,
    topMm: box.top.thickness.mm,
    backMm: box.back.mm,
  }
  const inside = {
    lengthMm: outside.lengthMm - 2 * outside.sidesMm,
    widthMm: outside.widthMm - 2 * outside.sidesMm,
    heightMm: outside.depthMm - outside.topMm - outside.backMm,
  }
  const isHollow = Object.values(inside).every((mm) => mm > 0)
  return {outside, inside: isHollow ? inside : undefined}
}

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
