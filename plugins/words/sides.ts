import type {Face, Wall} from '../plan/kit/hole.ts'
import {type Side, sideOf} from '../plan/kit/sides.ts'
import type {Plan} from '../plan/plan.ts'

/** Where each side lies on the page of a right-handed and a left-handed instrument, seen from the front, head up. */
export const seenFromFront = {
  right: {bass: 'left', treble: 'right'},
  left: {bass: 'right', treble: 'left'},
} as const

/** What each side is called. */
export const sideWords = {bass: 'bass', treble: 'treble'} as const satisfies Record<Side, string>

/** What tells the sides of this instrument apart. */
export type Handed = Pick<Plan, 'handed' | 'strings'>

/** From where the sides are seen: as it hangs, head up, or turned over. */
export type Seen = 'front' | 'back'

const turned = {left: 'right', right: 'left'} as const

/** Say which side a place is on, by its distance off the centre line: `treble`; nothing of the centre line itself. */
export const sideWord = (offMm: number, {strings}: Handed): string =>
  offMm === 0 ? '' : sideWords[sideOf(offMm, strings?.length)]

/** Say which way that is: `to the treble side`, or `on the centre line`. */
export const toSide = (offMm: number, plan: Handed): string =>
  offMm === 0 ? 'on the centre line' : `to the ${sideWord(offMm, plan)} side`

/** Say the same with the hand that it lies to: `to the treble side (right, seen from the front)`. */
export function toSideSeen(offMm: number, plan: Handed, seen: Seen = 'front'): string {
  if (offMm === 0) return toSide(offMm, plan)
  return `${toSide(offMm, plan)} (${handOf(sideOf(offMm, plan.strings?.length), plan, seen)}, seen from the ${seen})`
}

/** Say once, under a table, which side lies to which hand. */
export const sidesExplained = (plan: Handed, seen: Seen = 'front'): string =>
  `Seen from the ${seen} with the head up, the ${sideWords.bass} side is the ${handOf('bass', plan, seen)} one and the ${sideWords.treble} side the ${handOf('treble', plan, seen)} one.`

function handOf(side: Side, {handed}: Handed, seen: Seen): string {
  const hand = seenFromFront[handed][side]
  return seen === 'front' ? hand : turned[hand]
}

/** How a place on the head is told from one along the neck, instead of a sign. */
export const behind = 'behind'
export const behindNut = `${behind} the nut line`

/** From where each face is seen that is drilled; the others show their sides by their own names. */
export const faceSeen: Readonly<Partial<Record<Face, Seen>>> = {
  back: 'back',
  'neck back': 'back',
  'top inside': 'back',
  head: 'front',
  'playing face': 'front',
  top: 'front',
}

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
