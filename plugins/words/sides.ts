import type {Face, Wall} from '../plan/holes.ts'

/** The sides of an instrument, as its player names them: strings are listed from the bass. */
export type Side = 'bass' | 'treble'

/** Where each side lies on the page of a right-handed and a left-handed instrument, seen from the front, head up. */
export const seenFromFront = {
  right: {bass: 'left', treble: 'right'},
  left: {bass: 'right', treble: 'left'},
} as const

/** What each side is called. */
export const sideWords = {bass: 'bass', treble: 'treble'} as const satisfies Record<Side, string>

/** What the walls of a box are called. */
export const wallNames: Readonly<Record<Wall, string>> = {
  'head end': 'head-side wall',
  'side bass': `${sideWords.bass} side`,
  'side treble': `${sideWords.treble} side`,
  'tail end': 'tail wall',
}

const ofTheBox = (wall: Wall) => `${wallNames[wall]} of the box`

/** What every face is called that is drilled. */
export const faceNames: Readonly<Record<Face, string>> = {
  'head end': ofTheBox('head end'),
  'side bass': ofTheBox('side bass'),
  'side treble': ofTheBox('side treble'),
  'tail end': ofTheBox('tail end'),
  back: 'back of the box',
  head: 'face of the head',
  'neck back': 'back of the neck',
  'neck end': 'end of the neck',
  'playing face': 'playing face',
  top: 'top of the box, from outside',
  'top inside': 'top of the box, from inside',
}
