import {nearestMark} from '../../build-file/quantities/nearest-mark.ts'
import type {PlanPart} from '../part.ts'
import type {Station} from '../shape/layout.ts'
import {stations} from './stations.ts'

/**
 * List every station of the instrument in order, head end to tail end: mm from the nut line, from the head end and
 * from the tail end, with the nearest mark of the maker's ruler. Absent without a scale length.
 */
export const layout: PlanPart = ({values, units, rulerMm}, soFar) => {
  if (soFar.scale?.lengthMm === undefined) return {}
  const headMm = values.head?.length?.mm
  const lengthMm = soFar.neck?.budget?.lengthMm ?? values.neck?.length?.mm
  const tailMm = headMm === undefined || lengthMm === undefined ? undefined : lengthMm - headMm
  const ruler = {units, rulerMm}
  const layout = stations(values, soFar, tailMm).map(({kind, what, stationMm, offMm}) => {
    const mark = nearestMark(stationMm, ruler)
    const station: Station = {kind, what, stationMm, mark: mark.text, markErrorMm: mark.mm - stationMm}
    if (offMm) station.offMm = offMm
    if (headMm !== undefined) station.fromHeadMm = stationMm + headMm
    if (tailMm !== undefined) station.fromTailMm = tailMm - stationMm
    return station
  })
  return {layout: layout.sort((a, b) => a.stationMm - b.stationMm)}
}
