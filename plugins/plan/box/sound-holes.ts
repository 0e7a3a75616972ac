import {neckTaper} from '../neck-taper.ts'
import type {PlanPart} from '../part.ts'
import type {SoundHole} from '../shape/box.ts'
import {stationOf} from '../station-of.ts'
import {clearPlace} from './clear-place.ts'
import {rectangle} from './gap.ts'
import {holeGaps, isHoleClear, type TopView} from './hole-gaps.ts'

/**
 * Place the sound holes, in mm from the nut line, along the box and off the centre line, with what each keeps from
 * the box's edge, the neck, blocks, earlier holes and the bridge, and, where that is too little, what would do.
 */
export const soundHoles: PlanPart = ({values, rulerMm}, soFar) => {
  const {box, bridge} = soFar
  if (box?.atMm === undefined) return {}
  const seat = box.bridgeSeat
  const view: TopView = {
    box: {...box, atMm: box.atMm},
    taper: neckTaper(values),
    bridge: bridge && seat ? rectangle(bridge.stationMm, 0, seat.footMm, seat.lengthMm) : undefined,
  }
  const holes: SoundHole[] = []
  for (const [i, hole] of (values.box?.holes ?? []).entries()) {
    const stationMm = stationOf(hole, box)
    if (stationMm === undefined || !hole.diameter) continue
    const circle = {stationMm, offMm: hole.off?.mm ?? 0, diameterMm: hole.diameter.mm}
    const gaps = holeGaps(circle, holes, view)
    const of = `box.holes.${i + 1}`
    const wouldDo = isHoleClear(gaps)
      ? undefined
      : clearPlace(circle, {
          of,
          alongKey: hole.at ? 'at' : 'along',
          originMm: hole.at ? 0 : box.atMm,
          rulerMm,
          reachMm: box.outside?.lengthMm ?? 0,
          isClear: (moved) => isHoleClear(holeGaps(moved, holes, view)),
        })
    holes.push({of, ...circle, alongMm: stationMm - box.atMm, ...gaps, ...(wouldDo && {wouldDo})})
  }
  return holes.length ? {box: {...box, soundHoles: holes}} : {}
}
