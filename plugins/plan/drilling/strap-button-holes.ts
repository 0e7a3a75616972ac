import {pilotOf} from '../fasteners/screw-size.ts'
import type {Settled} from '../part.ts'
import type {Hole} from '../shape/holes.ts'
import type {Plan} from '../shape/plan.ts'

/** A button's own screw and how deep it goes, and how far from the head-side edge the second one stands (mm). */
const button = {gauge: 6, depthMm: (25.4 * 5) / 8, alongMm: 25.4 * 1.5}

/**
 * Propose where strap buttons go: one in the middle of the tail, the second in the side towards the player's chin,
 * near the head. Common practice, no source; a number 6 screw each.
 */
export function strapButtonHoles({values}: Settled, {box}: Plan): Hole[] {
  const index = values.extras?.findIndex(({value}) => /strap/i.test(value)) ?? -1
  if (index < 0 || box?.atMm === undefined || box.tailMm === undefined || !box.outside) return []
  const diameterMm = pilotOf(button.gauge, 'hard').bit.mm
  const shared = {
    diameterMm,
    depthMm: button.depthMm,
    backing: 'a block glued inside: the wall alone does not hold it',
    of: `extras.${index + 1}`,
    isProposed: true,
  }
  return [
    {what: 'strap button', face: 'tail end', stationMm: box.tailMm, offMm: 0, ...shared},
    {
      what: 'strap button',
      face: 'side bass',
      stationMm: box.atMm + button.alongMm,
      offMm: -box.outside.widthMm / 2,
      ...shared,
    },
  ]
}
