import type {PlanPart} from './part.ts'
import {stationOf} from './station-of.ts'

/**
 * Spread the rows of screws out, in the file's order: every `at` (or `along`) with every `off`, a screw each, in mm
 * from the nut line and off the centre line. One without `off` stands on the centre line.
 */
export const screwPlaces: PlanPart = ({values}, soFar) => {
  const screws = (values.screws ?? []).flatMap((row, i) => {
    const of = `screws.${i + 1}`
    const key = row.at ? 'at' : 'along'
    return (row[key] ?? []).flatMap((place, k) => {
      const stationMm = stationOf({[key]: place}, soFar.box)
      if (stationMm === undefined) return []
      const stationPath = `${of}.${key}.${k + 1}`
      if (!row.off?.length) return [{of, stationPath, offPath: `${of}.off`, stationMm, offMm: 0}]
      return row.off.map((off, j) => ({
        of,
        stationPath,
        offPath: `${of}.off.${j + 1}`,
        stationMm,
        offMm: off.mm,
      }))
    })
  })
  return screws.length ? {screws} : {}
}
