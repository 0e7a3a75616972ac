import type {BuildValues} from '../../build-file/schema/schema.ts'
import {inch} from '../../tables/units.ts'
import type {Settled} from '../kit/settled.ts'
import {toMark, type WouldDo} from '../kit/would-do.ts'
import type {NeckModel} from '../neck-shape/model.ts'
import {neckWidthAt} from '../neck-shape/taper.ts'
import type {Scale} from '../scale/scale.ts'

/** What strings keep from the neck's edge, and from each other for fingers (mm): common practice, no source. */
export const stringKeepsMm = {edge: inch(3 / 32), neighbour: inch(1 / 4)}

/** What is left at each side of the strings where the spacing is assumed from the width (mm). */
const assumedSideMm = inch(3 / 16)
const slackMm = 1e-6

/** From the strings to the neck's edge and to each other, in mm. */
export interface Edges {
  /** From an outer string to the edge. */
  nutMm: number
  edgeLeastMm: number
  /** Between strings, where fingers go. */
  neighbourLeastMm: number
  lastLineMm?: number | undefined
  /** Between the closest neighbours. */
  neighbourNutMm?: number | undefined
  neighbourLastLineMm?: number | undefined
  nearEdge?: TooNear[] | undefined
  tooClose?: TooNear[] | undefined
}

interface TooNear {
  where: Across['where']
  gapMm: number
  wouldDo?: WouldDo | undefined
}

/**
 * Measure from the outer strings to the neck's edge, and between neighbours, at nut and last line (both run straight
 * between the two), and where that is too little, say which spacing or width would do, to a mark of the ruler. Strings
 * are too close only where fingers go between them.
 */
export function planEdges(settled: Settled, {taper}: NeckModel, scale: Scale | undefined): Edges | undefined {
  const across = scale && acrossNeck(scale, (stationMm) => neckWidthAt(stationMm, taper))
  if (!across) return undefined
  const {nut, last} = across
  const places = [nut, last].filter((place) => place !== undefined)
  const nearEdge = places.flatMap(({where, edgeMm}): TooNear[] =>
    edgeMm < stringKeepsMm.edge - slackMm
      ? [{where, gapMm: edgeMm, wouldDo: fromEdge(settled, across, where)}]
      : [],
  )
  const isFingered = settled.values.play?.value !== 'slide'
  const tooClose = places.flatMap(({where, closestMm}): TooNear[] =>
    isFingered && closestMm !== undefined && closestMm < stringKeepsMm.neighbour - slackMm
      ? [{where, gapMm: closestMm, wouldDo: apart(settled, across, where)}]
      : [],
  )
  return {
    nutMm: nut.edgeMm,
    edgeLeastMm: stringKeepsMm.edge,
    neighbourLeastMm: stringKeepsMm.neighbour,
    lastLineMm: last?.edgeMm,
    neighbourNutMm: nut.closestMm,
    neighbourLastLineMm: last?.closestMm,
    nearEdge: oneEach(nearEdge, settled.values),
    tooClose: oneEach(tooClose, settled.values),
  }
}

/** Keep one where nut and bridge share a spacing, since mending the nut mends both; undefined of none. */
function oneEach(found: TooNear[], {spacing}: BuildValues): TooNear[] | undefined {
  if (found.length === 0) return undefined
  const sharesSpacing = spacing?.bridge?.assumed || spacing?.nut?.assumed
  return sharesSpacing && found[0]!.where === 'nut' ? found.slice(0, 1) : found
}

const widthPath = ({neck}: BuildValues) => (neck?.width?.tail ? 'neck.width.nut' : 'neck.width')

/** The widest spacing that keeps from the edge, or, where fingers would then be cramped, a wider neck. */
function fromEdge({values, rulerMm}: Settled, across: AcrossNeck, where: string): WouldDo | undefined {
  const {nut, last, part} = across
  const widestMm = nut.widthMm - 2 * stringKeepsMm.edge
  if (where !== 'nut' && last)
    return {
      path: 'spacing.bridge',
      mm: toMark(
        nut.spreadMm + (last.widthMm - 2 * stringKeepsMm.edge - nut.spreadMm) / part,
        rulerMm,
        'down',
      ),
    }
  const cramps = values.play?.value !== 'slide' && widestMm < narrowestMm(across)
  if (widestMm > 0 && !cramps) return {path: 'spacing.nut', mm: toMark(widestMm, rulerMm, 'down')}
  return {path: widthPath(values), mm: toMark(nut.spreadMm + 2 * stringKeepsMm.edge, rulerMm, 'up')}
}

const narrowestMm = ({nut, gaps}: AcrossNeck) =>
  nut.spreadMm + gaps * (stringKeepsMm.neighbour - (nut.closestMm ?? stringKeepsMm.neighbour))

/** The narrowest spacing that leaves room for fingers, or a wider neck where the spacing follows from it. */
function apart({values, rulerMm}: Settled, across: AcrossNeck, where: string): WouldDo | undefined {
  const {nut, last, part, gaps, bridgeSpreadMm} = across
  if (where !== 'nut' && last)
    return {
      path: 'spacing.bridge',
      mm: toMark(bridgeSpreadMm + (gaps * (stringKeepsMm.neighbour - last.closestMm!)) / part, rulerMm, 'up'),
    }
  const mm = toMark(narrowestMm(across), rulerMm, 'up')
  if (mm <= nut.widthMm - 2 * stringKeepsMm.edge + slackMm) return {path: 'spacing.nut', mm}
  if (!values.spacing?.nut?.assumed) return undefined
  return {path: widthPath(values), mm: toMark(mm + 2 * assumedSideMm, rulerMm, 'up')}
}

/** The strings across the neck at one place (mm): from an outer one to the edge, and between closest neighbours. */
export interface Across {
  where: 'nut' | 'last line'
  widthMm: number
  spreadMm: number
  edgeMm: number
  closestMm: number | undefined
}

export interface AcrossNeck {
  nut: Across
  last: Across | undefined
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
    last: lastWidthMm === undefined ? undefined : measure('last line', lastOffMm, lastWidthMm),
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
    closestMm: gaps.length > 0 ? Math.min(...gaps) : undefined,
  }
}
