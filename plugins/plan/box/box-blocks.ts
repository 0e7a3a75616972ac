import type {BuildValues} from '../../build-file/schema.ts'
import type {PlanPart} from '../part.ts'
import {stationOf} from '../station-of.ts'
import {toMark, type WouldDo} from '../would-do.ts'
import type {Box} from './box.ts'

export interface Block {
  of: string
  /** Its middle. */
  stationMm: number
  /** Its middle. */
  alongMm: number
  /** Its middle. */
  offMm: number
  /** Along the neck. */
  lengthMm: number
  /** Across the neck. */
  widthMm: number
  thicknessMm?: number | undefined
  /** under the top, on the sides or at the ends. */
  glued?: string | undefined
  /** How far it reaches into a wall; 0 or less: it fits inside. */
  overWallMm?: number | undefined
  /** How far it reaches into a neck that runs through. */
  overNeckMm?: number | undefined
  wouldDo?: WouldDo | undefined
}

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

/**
 * Say what one change of a block that reaches into a wall, or into a neck that runs through, would make it fit (mm, to
 * a mark of the ruler): a smaller size where the box is too small for it, else another place.
 */
function blockMend(
  {of, alongMm, offMm, lengthMm, widthMm, thicknessMm = 0, overWallMm = 0, overNeckMm = 0}: Block,
  {inside, outside, atMm, neck}: Box = {},
  placeKey: 'at' | 'along',
  rulerMm: number,
): Block['wouldDo'] {
  if (!inside || !outside || atMm === undefined || (overWallMm <= rulerMm && overNeckMm <= 0))
    return undefined
  const smaller = (key: string, mm: number) => {
    const marked = toMark(mm, rulerMm, 'down')
    return marked > 0 ? {path: `${of}.${key}`, mm: marked} : undefined
  }
  if (overWallMm <= rulerMm) return smaller('thickness', neck?.gapMm ?? 0)
  if (thicknessMm > inside.heightMm) return smaller('thickness', inside.heightMm)
  if (lengthMm > inside.lengthMm) return smaller('length', inside.lengthMm)
  if (widthMm > inside.widthMm) return smaller('width', inside.widthMm)
  const besideMm = (inside.widthMm - widthMm) / 2
  if (Math.abs(offMm) > besideMm)
    return {path: `${of}.off`, mm: Math.sign(offMm) * toMark(besideMm, rulerMm, 'down')}
  const least = outside.sidesMm + lengthMm / 2
  const most = outside.lengthMm - least
  const originMm = placeKey === 'at' ? atMm : 0
  const mm =
    alongMm < least ? toMark(originMm + least, rulerMm, 'up') : toMark(originMm + most, rulerMm, 'down')
  return {path: `${of}.${placeKey}`, mm}
}
