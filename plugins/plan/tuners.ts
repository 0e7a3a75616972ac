import type {PlanPart} from './part.ts'

export interface Placed {
  name?: string | undefined
  stationMm: number
  offMm: number
}

/**
 * Place the tuners' post holes, in the order of the strings: mm from the nut line (negative, along the head's own
 * face) and off the centre line. A lone one stands on the centre line; of more, each needs its `off`.
 */
export const tunerPosts: PlanPart = ({values}, soFar) => {
  const {at = [], off = []} = values.tuners ?? {}
  const offs = off.length === 0 && at.length === 1 ? [{mm: 0}] : off
  if (at.length === 0 || at.length !== offs.length) return {}
  return {
    tuners: at.map(({mm}, i) => {
      const name = soFar.strings?.[i]?.name
      return {...(name !== undefined && {name}), stationMm: mm, offMm: offs[i]!.mm}
    }),
  }
}
