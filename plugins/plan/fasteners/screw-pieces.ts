import type {BuildValues} from '../../build-file/schema/schema.ts'
import type {Box} from '../box/box.ts'
import {type Block, blockValues} from '../box/box-blocks.ts'
import {type Rectangle, rectangle} from '../box/gap.ts'
import {type Wood, woodOf} from '../kit/woods.ts'
import {type NeckTaper, neckWidthAt} from '../neck-shape/taper.ts'

/** What a screw may go through. */
export interface Pieces {
  values: BuildValues
  box: Box
  taper: NeckTaper | undefined
}

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

export interface Around extends Pieces {
  way: Way
  spot: Spot
  /** The block that is there, or where none is, the first: it stands in for the one that is meant. */
  block: Block | undefined
  there: Block | undefined
}

/** Find a piece by its name in the build file: how thick it is (mm) the way the screw goes, and its outline there. */
export function screwPiece(name: string, {way, spot, values, box, taper, block, there}: Around): Piece {
  const {outside, neck} = box
  switch (name) {
    case 'neck': {
      if (way === 'along') return {name, mm: undefined, ...neckOutline(spot, taper, true)}
      const isInside = box.atMm !== undefined && spot.stationMm > box.atMm && neck?.joins === 'through'
      const mm = (isInside && neck?.heightInsideMm) || neckMmAt(spot, values, box)
      return {name, mm, ...neckOutline(spot, taper)}
    }
    case 'block':
      return {name, mm: block && blockDepth(block, way), ...(there && way !== 'along' && blockOutline(there))}
    case 'top':
      return {name, mm: outside?.topMm}
    case 'back':
      return {name, mm: outside?.backMm}
    case 'side':
      return {
        name,
        mm: way === 'along' ? outside?.sidesMm : outside && outside.depthMm - outside.topMm,
        ...(way === 'down' && wallOutline(spot, box)),
      }
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

/** Outline the upper edge of the wall that a screw is driven down into; nothing where it stands over none. */
function wallOutline({stationMm, offMm}: Spot, {atMm, tailMm, outside}: Box) {
  if (atMm === undefined || tailMm === undefined || !outside) return {}
  const {sidesMm, widthMm} = outside
  const [left, right] = [-widthMm / 2, widthMm / 2]
  const walls = [
    {outline: {fromMm: atMm, toMm: tailMm, leftMm: left, rightMm: left + sidesMm}, isGrainAlong: true},
    {outline: {fromMm: atMm, toMm: tailMm, leftMm: right - sidesMm, rightMm: right}, isGrainAlong: true},
    {outline: {fromMm: atMm, toMm: atMm + sidesMm, leftMm: left, rightMm: right}, isGrainAlong: false},
    {outline: {fromMm: tailMm - sidesMm, toMm: tailMm, leftMm: left, rightMm: right}, isGrainAlong: false},
  ]
  return (
    walls.find(
      ({outline: {fromMm, toMm, leftMm, rightMm}}) =>
        stationMm >= fromMm && stationMm <= toMm && offMm >= leftMm && offMm <= rightMm,
    ) ?? {}
  )
}

/** Outline the neck where a screw stands; one along it has no end of it near. */
function neckOutline({stationMm}: Spot, taper: NeckTaper | undefined, isAlong = false) {
  const widthMm = taper && neckWidthAt(stationMm, taper)
  if (widthMm === undefined) return {}
  const toMm = isAlong ? Number.MAX_VALUE : (taper?.tailStationMm ?? Number.MAX_VALUE)
  return {
    outline: {fromMm: -Number.MAX_VALUE, toMm, leftMm: -widthMm / 2, rightMm: widthMm / 2},
    isGrainAlong: true,
  }
}

/** A layer of the piece that holds a screw, and how thick it is in mm. */
export interface Layer {
  wood: Wood | undefined
  mm: number
}

/** Say how thick the neck is at a place: playing face to back, or less where a fingerboard or a cap has ended (mm). */
function neckMmAt(spot: Spot, values: BuildValues, box: Box): number | undefined {
  const wholeMm = box.neck?.thicknessMm ?? values.neck?.thickness?.mm
  const missing = neckSheets(values).filter((sheet) => !reaches(spot, sheet))
  return wholeMm && missing.reduce((mm, {thickness}) => mm - (thickness?.mm ?? 0), wholeMm)
}

/** Fingerboard and cap, from the playing face down; a cap is as long as the neck. */
const neckSheets = ({fingerboard, neck}: BuildValues) => [
  ...(fingerboard?.thickness ? [{...fingerboard, toMm: fingerboard.to?.mm}] : []),
  ...(neck?.cap?.thickness ? [{...neck.cap, toMm: undefined}] : []),
]

const reaches = ({stationMm}: Spot, {toMm = Number.POSITIVE_INFINITY}: {toMm?: number | undefined}) =>
  stationMm <= toMm

/**
 * List the woods of the piece that holds a screw, in the order the tip meets them: a neck's from its back, or from above
 * where it is driven down. A wood that nobody knows counts as an unknown one.
 */
export function screwLayers(
  into: string,
  {way, spot, values, box, block}: Omit<Around, 'there' | 'taper'>,
): Layer[] {
  const {neck} = values
  const everything = Number.MAX_VALUE
  if (into === 'block')
    return [{wood: found(block && blockValues(values, block)?.wood?.value), mm: everything}]
  if (into === 'top' && values.box?.top?.wood)
    return [{wood: found(values.box.top.wood.value), mm: everything}]
  if (into !== 'neck' && into !== 'heel') return [{wood: found(values.box?.wood?.value), mm: everything}]
  const laminations = neck?.laminations ?? []
  if (way === 'along')
    return [{wood: found(neck?.wood?.value ?? laminations.at(-1)?.wood?.value, neck), mm: everything}]
  // The layers are listed from the playing face; what they are over the thickness is planed off the back.
  let leftMm = neckMmAt(spot, values, box) ?? 0
  const sheets = neckSheets(values).filter((sheet) => reaches(spot, sheet))
  const stick = laminations.length ? laminations : [{...neck, thickness: {mm: everything}}]
  const fromFace = [...sheets, ...stick].map((layer) => {
    const mm = Math.min(layer.thickness?.mm ?? 0, leftMm)
    leftMm -= mm
    return {wood: found(layer.wood?.value, layer), mm}
  })
  return way === 'down' ? fromFace : fromFace.reverse()
}

function found(name: string | undefined, own: Parameters<typeof woodOf>[1] = {}): Wood | undefined {
  return woodOf(name, own) ?? woodOf('unknown')
}
