import type {Fastener} from '../fasteners/fasteners.ts'
import type {Plan} from '../plan.ts'
import type {Hole} from './holes.ts'

/** List two holes a screw: clearance through what it passes, pilot into what holds it. */
export function screwHoles({fasteners = [], box}: Plan): Hole[] {
  return fasteners.flatMap((screw): Hole[] => {
    const {stationMm, offMm, of, threadMm, lengthMm, tipToFaceMm = 1} = screw
    const faces = facesOf(screw, box)
    const isOneGo = faces.clearance === faces.pilot
    const place = {stationMm, offMm, of}
    return [
      {
        what: `screw, clearance through ${screw.through.join(' and ')}`,
        face: faces.clearance,
        ...place,
        diameterMm: screw.clearanceMm,
        ...(isOneGo && {depthMm: screw.underHeadMm}),
        bit: screw.clearanceBit,
        ...(!isOneGo && {backing: 'scrap under the far side'}),
      },
      {
        what: `screw, pilot into ${screw.into}`,
        face: faces.pilot,
        ...place,
        diameterMm: screw.pilotBitMm,
        ...(tipToFaceMm > 0 && {depthMm: isOneGo ? lengthMm : threadMm}),
        bit: screw.pilotBit,
      },
    ]
  })
}

/** The face that each bit enters: walls and tops are drilled from outside, a neck by itself, before it goes on. */
function facesOf(
  {way, into, through, stationMm, offMm}: Fastener,
  box: Plan['box'],
): {clearance: string; pilot: string} {
  if (way === 'along') {
    const wall = wallOf(stationMm, offMm, box)
    return {clearance: wall, pilot: into === 'neck' || into === 'heel' ? 'neck end' : wall}
  }
  const from = through.includes('neck') ? 'playing face' : through.includes('back') ? 'back' : 'top'
  if (way === 'down') return {clearance: from, pilot: from}
  if (into === 'top') return {clearance: 'top inside', pilot: 'top inside'}
  return {clearance: from, pilot: into === 'block' ? from : 'neck back'}
}

function wallOf(stationMm: number, offMm: number, box: Plan['box']): string {
  const {atMm, tailMm, outside} = box ?? {}
  if (outside && Math.abs(offMm) >= outside.widthMm / 2 - outside.sidesMm)
    return offMm < 0 ? 'side bass' : 'side treble'
  if (atMm === undefined || tailMm === undefined) return 'head end'
  return stationMm <= (atMm + tailMm) / 2 ? 'head end' : 'tail end'
}
