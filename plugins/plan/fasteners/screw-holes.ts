import type {Box} from '../box/box.ts'
import type {Face, Hole, Wall} from '../kit/hole.ts'
import {sideOf} from '../kit/sides.ts'
import type {Fastener} from './fastener.ts'

/** List two holes a screw, of a build of so many strings: clearance through what it passes, pilot into what holds it. */
export function screwHoles(
  fasteners: readonly Fastener[] | undefined,
  box: Box,
  strings: number | undefined,
): Hole[] {
  return (fasteners ?? []).flatMap((screw): Hole[] => {
    const {stationMm, offMm, of, lengthMm, tipToFaceMm = 1, downMm, proposed} = screw
    const {aboveTopMm = 0} = box.neck ?? {}
    const faces = facesOf(screw, box, strings)
    const isOneGo = faces.clearance === faces.pilot
    const place = {stationMm, offMm, of, proposed}
    return [
      {
        what: {hole: 'clearance', through: screw.through},
        face: faces.clearance,
        ...place,
        downMm,
        diameterMm: screw.clearanceMm,
        depthMm: isOneGo ? screw.underHeadMm : undefined,
        bit: screw.clearanceBit,
        backing: isOneGo ? undefined : 'far side',
      },
      {
        what: {hole: 'pilot', into: screw.into},
        face: faces.pilot,
        ...place,
        downMm: downMm === undefined || faces.pilot !== 'neck end' ? downMm : downMm + aboveTopMm,
        diameterMm: screw.pilotBitMm,
        depthMm: tipToFaceMm <= 0 ? undefined : isOneGo ? lengthMm : lengthMm - screw.underHeadMm,
        bit: screw.pilotBit,
      },
    ]
  })
}

/** The face that each bit enters: walls and tops are drilled from outside, a neck by itself, before it goes on. */
function facesOf(
  {way, into, through, stationMm, offMm}: Fastener,
  box: Box,
  strings: number | undefined,
): {clearance: Face; pilot: Face} {
  if (way === 'along') {
    const wall: Wall = isInSide(offMm, box) ? `side ${sideOf(offMm, strings)}` : endOf(stationMm, box)
    return {clearance: wall, pilot: into === 'neck' || into === 'heel' ? 'neck end' : wall}
  }
  const from = through.includes('neck') ? 'playing face' : through.includes('back') ? 'back' : 'top'
  if (way === 'down') return {clearance: from, pilot: from}
  if (into === 'top') return {clearance: 'top inside', pilot: 'top inside'}
  return {clearance: from, pilot: into === 'block' ? from : 'neck back'}
}

const isInSide = (offMm: number, {outside}: Box): boolean =>
  outside !== undefined && Math.abs(offMm) >= outside.widthMm / 2 - outside.sidesMm

function endOf(stationMm: number, {atMm, tailMm}: Box): Wall {
  if (atMm === undefined || tailMm === undefined) return 'head end'
  return stationMm <= (atMm + tailMm) / 2 ? 'head end' : 'tail end'
}
