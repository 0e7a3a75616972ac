import type {Hole} from '../shape/holes.ts'
import type {StepDraft} from './step-draft.ts'
import type {WorkFacts} from './work-facts.ts'

type Stations = NonNullable<StepDraft['stations']>

/** Make the step that drills all holes of some faces, in the order of bit changes; none where there are none. */
export function holesOn(
  {plan}: WorkFacts,
  faces: readonly string[],
  draft: Omit<StepDraft, 'tool' | 'setting' | 'stations'>,
): StepDraft[] {
  const holes = (plan.holes ?? []).filter(({face}) => faces.includes(face))
  if (holes.length === 0) return []
  const bits = [...new Set(holes.flatMap(({bit}) => bit ?? []))]
  return [
    {
      ...draft,
      tool: 'drill press',
      ...(bits.length > 0 && {setting: bits.join('; ')}),
      stations: holes.map(station),
    },
  ]
}

function station({what, face, stationMm, offMm, bit, depthMm}: Hole): Stations[number] {
  const at: Stations[number] = {what, stationMm, offMm, face}
  if (bit !== undefined) at.bit = bit
  if (depthMm !== undefined) at.depthMm = depthMm
  return at
}
