import type {Scale} from '../shape/scale.ts'

/** The strings across the neck at one place (mm): from an outer one to the edge, and between closest neighbours. */
export interface Across {
  where: 'nut' | 'last line'
  widthMm: number
  spreadMm: number
  edgeMm: number
  closestMm?: number
}

export interface AcrossNeck {
  nut: Across
  last?: Across
  /** How far the last line is along the scale, 0 to 1. */
  part: number
  gaps: number
  bridgeSpreadMm: number
}

/** Measure across the neck at the nut and at the last line, strings running straight from nut to bridge (mm). */
export function acrossNeck(
  {nutOffMm, bridgeOffMm, lengthMm, lines}: Scale,
  widthAt: (stationMm: number) => number | undefined,
): AcrossNeck | undefined {
  const nutWidthMm = widthAt(0)
  if (!nutOffMm?.length || !bridgeOffMm || nutWidthMm === undefined) return undefined
  const stationMm = lines?.at(-1)?.fromNutMm
  const part = stationMm !== undefined && lengthMm ? stationMm / lengthMm : 0
  const lastWidthMm = part > 0 ? widthAt(stationMm!) : undefined
  const lastOffMm = nutOffMm.map((off, i) => off + part * (bridgeOffMm[i]! - off))
  return {
    nut: measure('nut', nutOffMm, nutWidthMm),
    ...(lastWidthMm !== undefined && {last: measure('last line', lastOffMm, lastWidthMm)}),
    part,
    gaps: nutOffMm.length - 1,
    bridgeSpreadMm: spread(bridgeOffMm),
  }
}

const spread = (offs: readonly number[]) => Math.max(...offs) - Math.min(...offs)

function measure(where: Across['where'], offs: readonly number[], widthMm: number): Across {
  const gaps = offs.slice(1).map((off, i) => Math.abs(off - offs[i]!))
  return {
    where,
    widthMm,
    spreadMm: spread(offs),
    edgeMm: widthMm / 2 - Math.max(...offs.map(Math.abs)),
    ...(gaps.length > 0 && {closestMm: Math.min(...gaps)}),
  }
}
