import type {Block, Box} from '../shape/box.ts'
import {toMark} from '../to-mark.ts'

/**
 * Say what one change of a block that reaches into a wall, or into a neck that runs through, would make it fit (mm, to
 * a mark of the ruler): a smaller size where the box is too small for it, else another place.
 */
export function blockMend(
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
