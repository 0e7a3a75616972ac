import type {BuildValues} from '../../build-file/schema/schema.ts'
import type {NeckInBox} from '../joint/neck-in-box.ts'
import {type BoxPlace, type BoxSizes, stationOf} from '../kit/box-place.ts'
import {toMark, type WouldDo} from '../kit/would-do.ts'

/** A block inside the box, in mm: its middle along the box and off the centre line. */
export interface Block {
  /** Its path in the build file. */
  of: string
  /** The file has none: one that fits. */
  proposed?: true | undefined
  stationMm: number
  alongMm: number
  offMm: number
  /** Along the neck. */
  lengthMm: number
  /** Across the neck. */
  widthMm: number
  thicknessMm?: number | undefined
  glued?: 'under the top' | 'on the sides' | 'at the ends' | undefined
  /** How far it reaches into a wall; 0 or less: it fits inside. */
  overWallMm?: number | undefined
  /** How far it reaches into a neck that runs through. */
  overNeckMm?: number | undefined
  wouldDo?: WouldDo | undefined
}

interface Around {
  place: BoxPlace | undefined
  sizes: BoxSizes | undefined
  neck: NeckInBox | undefined
  rulerMm: number
}

/**
 * Place the blocks inside the box, say how far each reaches into a wall or into a neck that runs through, and what
 * would make it fit.
 */
export function planBlocks(values: BuildValues, around: Around): Block[] | undefined {
  const {place} = around
  if (!place) return undefined
  const listed = (values.box?.blocks ?? []).flatMap((given, i): Block[] => {
    const stationMm = stationOf(given, place)
    if (stationMm === undefined || !given.length || !given.width) return []
    const block: Block = {
      of: `box.blocks.${i + 1}`,
      proposed: given.length.proposed,
      stationMm,
      alongMm: stationMm - place.atMm,
      offMm: given.off?.mm ?? 0,
      lengthMm: given.length.mm,
      widthMm: given.width.mm,
      thicknessMm: given.thickness?.mm,
      glued: given.glued?.value,
    }
    block.overWallMm = overWallMm(block, around)
    block.overNeckMm = overNeckMm(block, around.neck)
    block.wouldDo = mend(block, around, given.at ? 'at' : 'along')
    return [block]
  })
  const blocks = [...endBlock(values, around), ...listed]
  return blocks.length ? blocks : undefined
}

/** Place the block that a neck at the box's end is fastened to: in the middle of the head end, against its wall. */
function endBlock({box}: BuildValues, around: Around): Block[] {
  const {place, sizes} = around
  const {length, width, thickness} = box?.[endBlockKey] ?? {}
  if (!place || !sizes || !length || !width) return []
  const alongMm = sizes.outside.sidesMm + length.mm / 2
  const block: Block = {
    of: `box.${endBlockKey}`,
    proposed: length.proposed,
    stationMm: place.atMm + alongMm,
    alongMm,
    offMm: 0,
    lengthMm: length.mm,
    widthMm: width.mm,
    thicknessMm: thickness?.mm,
    glued: 'at the ends',
  }
  const {inside} = sizes
  if (!inside) return [block]
  const overs = [
    ['length', length.mm - inside.lengthMm],
    ['width', width.mm - inside.widthMm],
    ['thickness', (thickness?.mm ?? 0) - inside.heightMm],
  ] as const
  const [key, overWallMm] = overs.reduce((worst, one) => (one[1] > worst[1] ? one : worst))
  const most = {length: inside.lengthMm, width: inside.widthMm, thickness: inside.heightMm}[key]
  const mm = toMark(most, around.rulerMm, 'down')
  block.overWallMm = overWallMm
  block.wouldDo = overWallMm > around.rulerMm && mm > 0 ? {path: `box.${endBlockKey}.${key}`, mm} : undefined
  return [block]
}

const endBlockKey = 'end-block'

/** Find what the build file says of a block of the plan. */
export function blockValues({box}: BuildValues, {of}: Pick<Block, 'of'>) {
  if (of === `box.${endBlockKey}`) return box?.[endBlockKey]
  return box?.blocks?.[Number(of.split('.').at(-1)) - 1]
}

/** List every block that the build file has, placed or not. */
export const givenBlocks = ({box}: BuildValues) => [
  ...(box?.[endBlockKey] ? [box[endBlockKey]] : []),
  ...(box?.blocks ?? []),
]

function overWallMm({alongMm, offMm, lengthMm, widthMm, thicknessMm = 0}: Block, {sizes}: Around) {
  if (!sizes?.inside) return undefined
  const {inside, outside} = sizes
  return Math.max(
    outside.sidesMm - (alongMm - lengthMm / 2),
    alongMm + lengthMm / 2 - (outside.lengthMm - outside.sidesMm),
    Math.abs(offMm) + widthMm / 2 - inside.widthMm / 2,
    thicknessMm - inside.heightMm,
  )
}

/** A block under the top meets a neck that runs through where it is thicker than the daylight between the two. */
function overNeckMm(block: Block, neck: NeckInBox | undefined): number | undefined {
  const {stationMm, offMm, lengthMm, widthMm, thicknessMm, glued} = block
  if (neck?.joins !== 'through' || glued !== 'under the top' || thicknessMm === undefined) return undefined
  const isClearAcross = Math.abs(offMm) - widthMm / 2 >= neck.widthMm / 2
  const isClearAlong = neck.tailMm !== undefined && stationMm - lengthMm / 2 >= neck.tailMm
  return isClearAcross || isClearAlong ? undefined : thicknessMm - (neck.gapMm ?? 0)
}

/**
 * Say what one change of a block that reaches into a wall or the neck would make it fit (mm, to a mark of the ruler):
 * a smaller size where the box is too small for it, else another place.
 */
function mend(
  {of, alongMm, offMm, lengthMm, widthMm, thicknessMm = 0, overWallMm = 0, overNeckMm = 0}: Block,
  {place, sizes, neck, rulerMm}: Around,
  placeKey: 'at' | 'along',
): WouldDo | undefined {
  if (!place || !sizes?.inside || (overWallMm <= rulerMm && overNeckMm <= 0)) return undefined
  const {inside, outside} = sizes
  const smaller = (key: string, mm: number) => {
    const marked = toMark(mm, rulerMm, 'down')
    return marked > 0 ? {path: `${of}.${key}`, mm: marked} : undefined
  }
  if (overWallMm <= rulerMm) return smaller('thickness', neck?.gapMm ?? 0)
  if (thicknessMm > inside.heightMm) return smaller('thickness', inside.heightMm)
  if (lengthMm > inside.lengthMm) return smaller('length', inside.lengthMm)
  if (widthMm > inside.widthMm) return smaller('width', inside.widthMm)
  const besideMm = (inside.widthMm - widthMm) / 2
  // In the middle it is 0, and not less than nothing.
  if (Math.abs(offMm) > besideMm)
    return {path: `${of}.off`, mm: Math.sign(offMm) * toMark(besideMm, rulerMm, 'down') + 0}
  const least = outside.sidesMm + lengthMm / 2
  const most = outside.lengthMm - least
  const originMm = placeKey === 'at' ? place.atMm : 0
  const mm =
    alongMm < least ? toMark(originMm + least, rulerMm, 'up') : toMark(originMm + most, rulerMm, 'down')
  return {path: `${of}.${placeKey}`, mm}
}
