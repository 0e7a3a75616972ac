import type {BuildValues} from '../../build-file/schema.ts'
import type {PlanPart} from '../part.ts'
import type {Block, Box} from '../shape/box.ts'
import {stationOf} from '../station-of.ts'
import {blockMend} from './block-mend.ts'

/**
 * Place the blocks inside the box, in mm from the nut line and off the centre line, and say how far each reaches into
 * a wall or into a neck that runs through.
 */
export const boxBlocks: PlanPart = ({values, rulerMm}, soFar) => {
  const blocks = (values.box?.blocks ?? []).flatMap((block, i) => placed(block, i, soFar.box, rulerMm))
  return blocks.length ? {box: {...soFar.box, blocks}} : {}
}

type BlockValues = NonNullable<NonNullable<BuildValues['box']>['blocks']>[number]

function placed(block: BlockValues, i: number, box: Box | undefined, rulerMm: number): Block[] {
  const stationMm = stationOf(block, box)
  if (stationMm === undefined || box?.atMm === undefined || !block.length || !block.width) return []
  const sizes = {
    of: `box.blocks.${i + 1}`,
    stationMm,
    alongMm: stationMm - box.atMm,
    offMm: block.off?.mm ?? 0,
    lengthMm: block.length.mm,
    widthMm: block.width.mm,
    ...(block.thickness && {thicknessMm: block.thickness.mm}),
    ...(block.glued && {glued: block.glued.value}),
  }
  const over = {...overWall(sizes, box), ...overNeck(sizes, box)}
  const wouldDo = blockMend({...sizes, ...over}, box, block.at ? 'at' : 'along', rulerMm)
  return [{...sizes, ...over, ...(wouldDo && {wouldDo})}]
}

function overWall({stationMm, offMm, lengthMm, widthMm, thicknessMm = 0}: Block, box: Box | undefined) {
  const {inside, outside, atMm} = box ?? {}
  if (!inside || !outside || atMm === undefined) return {}
  const overWallMm = Math.max(
    atMm + outside.sidesMm - (stationMm - lengthMm / 2),
    stationMm + lengthMm / 2 - (atMm + outside.lengthMm - outside.sidesMm),
    Math.abs(offMm) + widthMm / 2 - inside.widthMm / 2,
    thicknessMm - inside.heightMm,
  )
  return {overWallMm}
}

/** A block under the top meets a neck that runs through where it is thicker than the daylight between the two. */
function overNeck({stationMm, offMm, lengthMm, widthMm, thicknessMm, glued}: Block, box: Box | undefined) {
  const neck = box?.neck
  if (neck?.joins !== 'through' || glued !== 'under the top' || thicknessMm === undefined) return {}
  const isClearAcross = Math.abs(offMm) - widthMm / 2 >= neck.widthMm / 2
  const isClearAlong = neck.tailMm !== undefined && stationMm - lengthMm / 2 >= neck.tailMm
  return isClearAcross || isClearAlong ? {} : {overNeckMm: thicknessMm - (neck.gapMm ?? 0)}
}
