import type {BuildValues} from '../../build-file/schema.ts'
import {neckWidthAt} from '../neck-width-at.ts'
import type {NeckConcern} from './concern.ts'

/** What strings keep from the neck's edge, and from each other for fingers (mm): common practice, no source. */
export const stringKeepsMm = {edge: (25.4 * 3) / 32, neighbour: 25.4 / 4} as const

/** What is left at each side of the strings where the spacing is assumed from the width (mm). */
const assumedSideMm = (25.4 * 3) / 16

/**
 * Measure from the outer strings to the neck's edge, and between neighbours, at nut and last line (both run straight
 * between the two), with the spacing or width that would do where it is too little. All in mm.
 */
export const neckEdges: NeckConcern = ({model: {taper}, settled: {values}, soFar: {scale}}) => {
  const {nutOffMm, bridgeOffMm, lengthMm, lines} = scale ?? {}
  const nutMm = neckWidthAt(0, taper)
  const last = lines?.at(-1)
  if (!nutOffMm || !bridgeOffMm || nutMm === undefined) return {}
  const lastWidthMm = last && neckWidthAt(last.fromNutMm, taper)
  const part = last && lengthMm ? last.fromNutMm / lengthMm : 0
  const lastOffMm = part > 0 ? nutOffMm.map((off, i) => off + part * (bridgeOffMm[i]! - off)) : undefined
  const edge = (offs: readonly number[], widthMm: number) => widthMm / 2 - Math.max(...offs.map(Math.abs))
  return {
    edges: {
      nutMm: edge(nutOffMm, nutMm),
      ...(lastOffMm && lastWidthMm !== undefined && {lastLineMm: edge(lastOffMm, lastWidthMm)}),
      ...(nutOffMm.length > 1 && {
        neighbourNutMm: closest(nutOffMm),
        ...(lastOffMm && {neighbourLastLineMm: closest(lastOffMm)}),
      }),
      ...wouldDo(values, {nutMm, lastWidthMm, part, nutOffMm, bridgeOffMm}),
    },
  }
}

const closest = (offs: readonly number[]) =>
  Math.min(...offs.slice(1).map((off, i) => Math.abs(off - offs[i]!)))
const spread = (offs: readonly number[]) => Math.max(...offs) - Math.min(...offs)

interface Across {
  nutMm: number
  lastWidthMm: number | undefined
  /** How far the last line is along the scale, 0 to 1. */
  part: number
  nutOffMm: readonly number[]
  bridgeOffMm: readonly number[]
}

/** Spacings at nut and bridge that just keep from the edges, and those that just keep strings apart. */
function wouldDo({spacing, neck}: BuildValues, {nutMm, lastWidthMm, part, nutOffMm, bridgeOffMm}: Across) {
  const widestNutMm = nutMm - 2 * stringKeepsMm.edge
  const nutSpreadMm = spread(nutOffMm)
  const gaps = nutOffMm.length - 1
  const narrowestNutMm = nutSpreadMm + gaps * (stringKeepsMm.neighbour - closest(nutOffMm))
  const bridgeFor = (lastSpreadMm: number) => nutSpreadMm + (lastSpreadMm - nutSpreadMm) / part
  const lastGapMm = closest(nutOffMm) + part * (closest(bridgeOffMm) - closest(nutOffMm))
  return {
    widestNutMm,
    ...(part > 0 &&
      lastWidthMm !== undefined && {widestBridgeMm: bridgeFor(lastWidthMm - 2 * stringKeepsMm.edge)}),
    ...(gaps > 0 && {narrowestNutMm}),
    ...(gaps > 0 &&
      part > 0 && {
        narrowestBridgeMm: spread(bridgeOffMm) + (gaps * (stringKeepsMm.neighbour - lastGapMm)) / part,
      }),
    ...(gaps > 0 &&
      spacing?.nut?.assumed && {
        widthMm: narrowestNutMm + 2 * assumedSideMm,
        widthPath: neck?.width?.tail ? 'neck.width.nut' : 'neck.width',
      }),
  }
}
