import type {BuildValues} from '../../build-file/schema/schema.ts'
import type {Box} from '../box/box.ts'
import type {Block} from '../box/box-blocks.ts'
import type {NeckTaper} from '../neck-shape/taper.ts'
import {
  type Around,
  type Layer,
  type Piece,
  type Pieces,
  type Spot,
  screwLayers,
  screwPiece,
  type Way,
} from './screw-pieces.ts'

export interface Route {
  passes: Piece[]
  holds: Piece & {layers: Layer[]}
  way: Way
  /** A block is named and none is there. */
  missesBlock: boolean
}

type ScrewRow = NonNullable<BuildValues['screws']>[number]

/**
 * Follow a screw from its head to its tip: the pieces it passes with their thickness (mm), the piece that holds its
 * thread, layer by layer, and which way it is driven: up towards the playing face, down from it, or along the neck
 * through a wall. Undefined where the file does not say what it goes through or into.
 */
export function screwRoute(row: ScrewRow, spot: Spot, pieces: Pieces): Route | undefined {
  const {values, box, taper} = pieces
  const through = row.through?.map(({value}) => value.toLowerCase())
  const into = row.into?.value.toLowerCase()
  if (!through || !into) return undefined
  const way = wayOf(through, into, neckReach(spot, values, taper))
  const there = blockAt(spot, way, box)
  const block = there ?? box.blocks?.[0]
  const around: Around = {values, box, taper, way, spot, block, there}
  return {
    passes: through.map((name) => screwPiece(name, around)),
    holds: {...screwPiece(into, around), layers: screwLayers(into, around)},
    way,
    missesBlock: !there && [...through, into].includes('block'),
  }
}

/** Whether the neck ends before this place, at the box; or runs on under its top; or neither. */
function neckReach(
  {stationMm}: Spot,
  values: BuildValues,
  taper: NeckTaper | undefined,
): 'ends' | 'under' | 'over' {
  const joins = values.neck?.joins?.value
  if (joins === 'through') return 'under'
  const tailMm = taper?.tailStationMm
  return joins === 'end' && (tailMm === undefined || stationMm >= tailMm - 1e-6) ? 'ends' : 'over'
}

function wayOf(through: readonly string[], into: string, neck: 'ends' | 'under' | 'over'): Way {
  const isIntoNeck = into === 'neck' || into === 'heel'
  if (through.includes('side') || (isIntoNeck && neck === 'ends')) return 'along'
  if (isIntoNeck && neck === 'under' && through.includes('top')) return 'down'
  if (into === 'neck' || into === 'heel' || into === 'top' || through.includes('back')) return 'up'
  return 'down'
}

/** The block over or under a place; along the neck, the nearest of those that the screw's line runs through. */
function blockAt({stationMm, offMm}: Spot, way: Way, box: Box): Block | undefined {
  const beside = (box.blocks ?? []).filter((block) => Math.abs(offMm - block.offMm) <= block.widthMm / 2)
  const awayMm = (block: Block) => Math.abs(stationMm - block.stationMm)
  const [nearest] = beside.sort((one, other) => awayMm(one) - awayMm(other))
  return nearest && (way === 'along' || awayMm(nearest) <= nearest.lengthMm / 2) ? nearest : undefined
}
