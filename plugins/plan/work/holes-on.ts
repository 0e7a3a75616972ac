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
  const bits = new Set<string>()
  const stations: Stations = []
  for (const hole of plan.holes ?? []) {
    if (!faces.includes(hole.face)) continue
    if (hole.bit) bits.add(hole.bit)
    stations.push(station(hole))
  }
  if (stations.length === 0) return []
  const step: StepDraft = {...draft, tool: 'drill press', stations}
  if (bits.size > 0) step.setting = [...bits].join('; ')
  return [step]
}

function station({what, face, stationMm, offMm, bit, depthMm}: Hole): Stations[number] {
  const at: Stations[number] = {what, stationMm, offMm, face}
  if (bit !== undefined) at.bit = bit
  if (depthMm !== undefined) at.depthMm = depthMm
  return at
}
