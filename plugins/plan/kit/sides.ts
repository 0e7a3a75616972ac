/** The sides of an instrument, as its player names them: strings are listed from the bass. */
export type Side = 'bass' | 'treble'

/**
 * Say on which side of the centre line a place lies, by its distance off it (mm) and how many strings there are:
 * `off` grows towards the last string listed. Of one string it grows to the right as seen from the nut towards the
 * bridge, which is the bass side of either hand.
 */
export function sideOf(offMm: number, strings: number | undefined): Side {
  return offMm > 0 === (strings === 1) ? 'bass' : 'treble'
}

/** Give the sign that a distance off the centre line has on a side. */
export const signOf = (side: Side, strings: number | undefined): -1 | 1 =>
  sideOf(1, strings) === side ? 1 : -1
