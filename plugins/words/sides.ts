/** The sides of an instrument, as its player names them: strings are listed from the bass. */
export type Side = 'bass' | 'treble'

/** Where each side lies on the page of a right-handed and a left-handed instrument, seen from the front, head up. */
export const seenFromFront = {
  right: {bass: 'left', treble: 'right'},
  left: {bass: 'right', treble: 'left'},
} as const

/** What each side is called. */
export const sideWords = {bass: 'bass', treble: 'treble'} as const satisfies Record<Side, string>
