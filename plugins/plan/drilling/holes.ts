import type {PlanPart} from '../part.ts'
import type {Hole} from '../shape/holes.ts'
import type {Plan} from '../shape/plan.ts'
import {anchorHoles} from './anchor-holes.ts'
import {bitFor} from './bit-for.ts'
import {screwHoles} from './screw-holes.ts'
import {strapButtonHoles} from './strap-button-holes.ts'
import {tunerHoles} from './tuner-holes.ts'

/**
 * List every hole of the build once, in the order of the work: by face, then diameter, so that bits change seldom,
 * then station. All in mm; `depthMm` absent where it goes through.
 */
export const holes: PlanPart = (settled, soFar) => {
  const all = [
    ...tunerHoles(settled, soFar),
    ...anchorHoles(settled, soFar),
    ...soundHoleHoles(soFar),
    ...screwHoles(soFar),
    ...jackHole(soFar),
    ...strapButtonHoles(settled, soFar),
  ]
  const atMm = soFar.box?.atMm
  for (const hole of all) {
    if (atMm !== undefined && !offBoxFaces.includes(hole.face)) hole.alongMm = hole.stationMm - atMm
    hole.bit ??= bitFor(hole.diameterMm, settled.units)
  }
  return all.length ? {holes: all.sort(byFaceAndSize)} : {}
}

const offBoxFaces = ['head', 'neck back', 'neck end', 'playing face']

function soundHoleHoles({box}: Plan): Hole[] {
  return (box?.soundHoles ?? []).map(({of, stationMm, offMm, diameterMm}) => ({
    what: 'sound hole',
    face: 'top',
    stationMm,
    offMm,
    diameterMm,
    backing: 'scrap clamped tight under the top; finish from the other side when the point shows',
    of,
  }))
}

function jackHole({pickup}: Plan): Hole[] {
  const {holeMm, face, stationMm, offMm, isProposed} = pickup?.jack ?? {}
  if (holeMm === undefined || face === undefined || stationMm === undefined || offMm === undefined) return []
  return [
    {
      what: 'jack',
      face,
      stationMm,
      offMm,
      diameterMm: holeMm,
      backing: 'scrap held against the inside',
      of: 'pickup.jack',
      ...(isProposed && {isProposed}),
    },
  ]
}

function byFaceAndSize(a: Hole, b: Hole): number {
  if (a.face !== b.face) return a.face < b.face ? -1 : 1
  return a.diameterMm - b.diameterMm || a.stationMm - b.stationMm || a.offMm - b.offMm
}
