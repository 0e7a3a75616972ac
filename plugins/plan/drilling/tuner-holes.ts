import type {Settled} from '../part.ts'
import type {Hole} from '../shape/holes.ts'
import type {Plan} from '../shape/plan.ts'

/** List the tuners' post holes, through the head from its face. */
export function tunerHoles({values}: Settled, {tuners = []}: Plan): Hole[] {
  const postMm = values.tuners?.['post-hole']?.mm
  if (postMm === undefined) return []
  return tuners.map(({name, stationMm, offMm}, i) => ({
    what: name ? `tuner, ${name}` : 'tuner',
    face: 'head',
    stationMm,
    offMm,
    diameterMm: postMm,
    backing: 'scrap under the head',
    of: `tuners.at.${i + 1}`,
  }))
}
