import type {Box} from '../box/box.ts'
import type {Face, Hole, Wall} from '../holes.ts'
import type {Fastener} from './fasteners.ts'

/** List two holes a screw: clearance through what it passes, pilot into what holds it. */
export function screwHoles(fasteners: readonly Fastener[] | undefined, box: Box): Hole[] {
  return (fasteners ?? []).flatMap((screw): Hole[] => {
    const {stationMm, offMm, of, lengthMm, tipToFaceMm = 1, downMm} = screw
    const {aboveTopMm = 0} = box.neck ?? {}
    const faces = facesOf(screw, box)
    const isOneGo = faces.clearance === faces.pilot
    const place = {stationMm, offMm, of}
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
function facesOf({way, into, through, stationMm, offMm}: Fastener, box: Box): {clearance: Face; pilot: Face} {
  if (way === 'along') {
    const wall = wallOf(stationMm, offMm, box)
    return {clearance: wall, pilot: into === 'neck' || into === 'heel' ? 'neck end' : wall}
  }
  const from = through.includes('neck') ? 'playing face' : through.includes('back') ? 'back' : 'top'
  if (way === 'down') return {clearance: from, pilot: from}
  if (into === 'top') return {clearance: 'top inside', pilot: 'top inside'}
  return {clearance: from, pilot: into === 'block' ? from : 'neck back'}
}

function wallOf(stationMm: number, offMm: number, box: Box): Wall {
  const {atMm, tailMm, outside} = box
  if (outside && Math.abs(offMm) >= outside.widthMm / 2 - outside.sidesMm)
    return offMm < 0 ? 'side bass' : 'side treble'
  if (atMm === undefined || tailMm === undefined) return 'head end'
  return stationMm <= (atMm + tailMm) / 2 ? 'head end' : 'tail end'
}
