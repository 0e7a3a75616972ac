import type {BuildValues} from '../../build-file/schema/schema.ts'
import type {StringPlan} from './strings.ts'

/** A tuner's post or a string's anchor: mm from the nut line and off the centre line. */
export interface Placed {
  /** Of its string. */
  name?: string | undefined
  stationMm: number
  offMm: number
  /** The file does not place it: a place that would work. */
  proposed?: true | undefined
}

/**
 * Place the tuners' post holes, in the order of the strings: mm from the nut line (negative, along the head's own
 * face) and off the centre line. A lone one stands on the centre line; of more, each needs its `off`.
 */
export function planTuners(
  {tuners}: BuildValues,
  strings: readonly StringPlan[] | undefined,
): Placed[] | undefined {
  const {at = [], off = []} = tuners ?? {}
  const offs = off.length === 0 && at.length === 1 ? [{mm: 0}] : off
  if (at.length === 0 || at.length !== offs.length) return undefined
  return at.map(({mm, proposed}, i) => ({
    name: strings?.[i]?.name,
    stationMm: mm,
    offMm: offs[i]!.mm,
    proposed,
  }))
}
