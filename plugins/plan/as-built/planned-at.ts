import {kindAt} from '../../build-file/paths.ts'
import type {BuildValues} from '../../build-file/schema.ts'
import type {Plan} from '../shape/plan.ts'

/** What the plan computes where the file does not say it: paths of the front matter, in mm. */
const computed: Readonly<Record<string, (plan: Plan) => number | undefined>> = {
  'action.nut': ({action}) => action?.nutMm,
  'action.octave': ({action}) => action?.octaveMm,
  'box.at': ({box}) => box?.atMm,
  'bridge.from-tail': ({box, bridge}) =>
    box?.tailMm !== undefined && bridge ? box.tailMm - bridge.stationMm : undefined,
  'bridge.height': ({bridge}) => bridge?.heightMm,
  'neck.length': ({neck}) => neck?.budget?.lengthMm,
}

/**
 * Say what the drawing has at a path of the front matter (mm or degrees): as written, as assumed, or as computed.
 * Lists count from 1, strings go by their notes, and a short form stands for its first key (`neck.width`).
 */
export function plannedAt(path: string, values: BuildValues, plan: Plan): number | undefined {
  return writtenAt(path, values, plan) ?? computed[path]?.(plan)
}

function writtenAt(path: string, values: BuildValues, plan: Plan): number | undefined {
  let at: unknown = values
  const steps = path.split('.')
  for (const [i, step] of steps.entries()) {
    if (Array.isArray(at)) {
      const named = steps[i - 1] === 'strings' ? plan.strings?.findIndex(({name}) => name === step) : -1
      at = at[named !== undefined && named >= 0 ? named : Number(step) - 1]
    } else at = (at as Record<string, unknown> | undefined)?.[step]
  }
  if (typeof at === 'object' && at !== null && !('place' in at)) {
    const kind = kindAt(path)
    const first = kind?.is === 'record' ? kind.short?.keys[0] : undefined
    at = first ? (at as Record<string, unknown>)[first] : undefined
  }
  const {mm, deg} = (at ?? {}) as {mm?: number; deg?: number}
  return mm ?? deg
}
