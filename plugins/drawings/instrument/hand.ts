import type {Plan} from '../../plan/plan.ts'

/** How an instrument that hangs by its head, strings towards us, lies on the page. */
export interface Hand {
  /** Across the page, in mm, of a distance off the centre line. */
  x: (offMm: number) => number
  /** The player's bass side: −1 to the left. */
  bass: -1 | 1
}

/**
 * Say which way round an instrument is drawn. Seen from its face with the head up, a right-handed one has its bass
 * strings at the left; `off` grows towards the last string. With one string, `off` grows to the right as seen from
 * the nut towards the bridge, which is the left of the page. A left-handed one is the mirror image.
 */
export function handOf({handed, strings}: Pick<Plan, 'handed' | 'strings'>): Hand {
  const bass = handed === 'left' ? 1 : -1
  const treble = -bass
  const towards = strings?.length === 1 ? bass : treble
  return {x: (offMm) => towards * offMm + 0, bass}
}
