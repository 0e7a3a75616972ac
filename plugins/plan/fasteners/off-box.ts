import type {Box} from '../shape/box.ts'
import type {Fastener, ScrewPlace} from '../shape/holes.ts'
import {toMark} from '../to-mark.ts'

/** Say where a screw that is to pass the top or the back would meet it, where it stands past an edge of the box (mm). */
export function offBox(
  {stationMm, stationPath}: ScrewPlace,
  through: readonly string[],
  {atMm, tailMm, outside}: Box = {},
  rulerMm: number,
): Pick<Fastener, 'offBox'> {
  const isMet = !through.includes('top') && !through.includes('back')
  if (isMet || atMm === undefined || tailMm === undefined || !outside) return {}
  if (stationMm >= atMm && stationMm <= tailMm) return {}
  const originMm = stationPath.includes('.along') ? atMm : 0
  const mm =
    stationMm < atMm
      ? toMark(atMm + 2 * outside.sidesMm - originMm, rulerMm, 'up')
      : toMark(tailMm - 2 * outside.sidesMm - originMm, rulerMm, 'down')
  return {offBox: {path: stationPath, mm}}
}
