import type {PlanPart} from './part.ts'
import {stationOf} from './station-of.ts'

/**
 * Place the strings' anchors in a row square to the neck, even about the centre line: mm from the nut line and off
 * it, in the order of the strings. Absent without a place, or without a spacing where there is more than one.
 */
export const stringAnchors: PlanPart = ({values}, soFar) => {
  const {anchors, strings = []} = values
  const stationMm = stationOf(anchors ?? {}, soFar.box)
  const spacingMm = strings.length === 1 ? 0 : anchors?.spacing?.mm
  if (stationMm === undefined || spacingMm === undefined || strings.length === 0) return {}
  return {
    anchors: strings.map((_, i) => {
      const name = soFar.strings?.[i]?.name
      return {
        ...(name !== undefined && {name}),
        stationMm,
        offMm: (i - (strings.length - 1) / 2) * spacingMm,
      }
    }),
  }
}
