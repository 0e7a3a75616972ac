import type {BuildValues} from '../../build-file/schema.ts'
import {type Rectangle, rectangle} from '../box/gap.ts'
import {neckTaper} from '../neck-taper.ts'
import {neckWidthAt} from '../neck-width-at.ts'
import type {Block, Box} from '../shape/box.ts'

/** A piece that a screw goes through or into, and its outline where the screw enters it. */
export interface Piece {
  name: string
  mm: number | undefined
  outline?: Rectangle
  /** The grain runs along the neck; else across it. */
  isGrainAlong?: boolean
}
/** Which way a screw is driven: up towards the playing face, down from it, or along the neck through a wall. */
export type Way = 'up' | 'down' | 'along'

export interface Spot {
  stationMm: number
  offMm: number
}

export interface Around {
  way: Way
  spot: Spot
  values: BuildValues
  box: Box | undefined
  /** The block that is there, or where none is, the first: it stands in for the one that is meant. */
  block: Block | undefined
  there: Block | undefined
}

/** Find a piece by its name in the build file: how thick it is (mm) the way the screw goes, and its outline there. */
export function screwPiece(name: string, {way, spot, values, box, block, there}: Around): Piece {
  const {outside, neck} = box ?? {}
  const neckMm = values.neck?.thickness?.mm
  switch (name) {
    case 'neck': {
      if (way === 'along') return {name, mm: undefined}
      const isInside = box?.atMm !== undefined && spot.stationMm > box.atMm && neck?.joins === 'through'
      return {name, mm: (isInside && neck?.heightInsideMm) || neckMm, ...neckOutline(spot, values)}
    }
    case 'block':
      return {name, mm: block && blockDepth(block, way), ...(there && way !== 'along' && blockOutline(there))}
    case 'top':
      return {name, mm: outside?.topMm}
    case 'back':
      return {name, mm: outside?.backMm}
    case 'side':
      return {name, mm: way === 'along' ? outside?.sidesMm : outside && outside.depthMm - outside.topMm}
    default:
      return {name, mm: name === 'heel' ? undefined : 0}
  }
}

function blockDepth({thicknessMm, lengthMm, widthMm, glued}: Block, way: Way): number | undefined {
  if (way !== 'along') return thicknessMm
  return glued === 'at the ends' ? lengthMm : glued === 'on the sides' ? widthMm : Math.min(lengthMm, widthMm)
}

function blockOutline({stationMm, offMm, lengthMm, widthMm}: Block) {
  return {outline: rectangle(stationMm, offMm, lengthMm, widthMm), isGrainAlong: lengthMm >= widthMm}
}

function neckOutline({stationMm}: Spot, values: BuildValues) {
  const taper = neckTaper(values)
  const widthMm = taper && neckWidthAt(stationMm, taper)
  if (widthMm === undefined) return {}
  const toMm = taper?.tailStationMm ?? Number.MAX_VALUE
  return {
    outline: {fromMm: -Number.MAX_VALUE, toMm, leftMm: -widthMm / 2, rightMm: widthMm / 2},
    isGrainAlong: true,
  }
}
