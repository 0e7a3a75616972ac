import {hypotenuse} from '../action/fretted-string.ts'

export interface Rectangle {
  fromMm: number
  toMm: number
  leftMm: number
  rightMm: number
}
export interface Circle {
  stationMm: number
  offMm: number
  diameterMm: number
}

/** Make a rectangle about its middle: mm from the nut line along, mm off the centre line across. */
export function rectangle(stationMm: number, offMm: number, lengthMm: number, widthMm: number): Rectangle {
  return {
    fromMm: stationMm - lengthMm / 2,
    toMm: stationMm + lengthMm / 2,
    leftMm: offMm - widthMm / 2,
    rightMm: offMm + widthMm / 2,
  }
}

/**
 * Measure from a round hole's rim to a rectangle, in mm; negative where it reaches into it, by as much as it does
 * past the nearest side.
 */
export function gapToRectangle({stationMm, offMm, diameterMm}: Circle, area: Rectangle): number {
  const along = Math.max(area.fromMm - stationMm, stationMm - area.toMm)
  const across = Math.max(area.leftMm - offMm, offMm - area.rightMm)
  const outside = hypotenuse(Math.max(along, 0), Math.max(across, 0))
  return outside + Math.min(Math.max(along, across), 0) - diameterMm / 2
}

/** Measure from a round hole's rim inside a rectangle to the nearest of its sides, in mm; negative where it is over it. */
export function gapToSides({stationMm, offMm, diameterMm}: Circle, area: Rectangle): number {
  const least = Math.min(
    stationMm - area.fromMm,
    area.toMm - stationMm,
    offMm - area.leftMm,
    area.rightMm - offMm,
  )
  return least - diameterMm / 2
}

/** Measure between the rims of two round holes, in mm; negative where they meet. */
export function gapBetween(a: Circle, b: Circle): number {
  return hypotenuse(a.stationMm - b.stationMm, a.offMm - b.offMm) - (a.diameterMm + b.diameterMm) / 2
}
