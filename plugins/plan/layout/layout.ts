import {nearestMark} from '../../build-file/quantities/nearest-mark.ts'
import type {PlanPart} from '../part.ts'
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
  const inOrder = stations(values, soFar, tailMm).sort((a, b) => a.stationMm - b.stationMm)
  return {
    layout: inOrder.map((place) => {
      const mark = nearestMark(place.stationMm, {units, rulerMm})
      return {
        ...place,
        ...(headMm !== undefined && {fromHeadMm: place.stationMm + headMm}),
        ...(tailMm !== undefined && {fromTailMm: tailMm - place.stationMm}),
        mark: mark.text,
        markErrorMm: mark.mm - place.stationMm,
      }
    }),
  }
}
