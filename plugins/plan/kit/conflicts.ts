import type {WouldDo} from './would-do.ts'

/** What is too near to what: a sound hole, a post or its button or string on the head, an anchor, a screw. */
export type ConflictKind =
  | 'hole-edge'
  | 'hole-neck'
  | 'hole-block'
  | 'hole-hole'
  | 'hole-bridge'
  | 'post-edge'
  | 'post-post'
  | 'button-button'
  | 'string-string'
  | 'string-post'
  | 'anchor-edge'
  | 'anchor-anchor'
  | 'screw-edge'

/** Something bored or wound that is too near something else. */
export interface Conflict {
  kind: ConflictKind
  /** The path in the build file of what is too near. */
  of: string
  /** The path of what it is too near to, where the file has that too. */
  to?: string | undefined
  /** On the head: the strings whose posts these are, counted from 0. */
  posts?: readonly number[] | undefined
  /** Of a screw: the piece, and whether it is the end of it. */
  piece?: string | undefined
  isEnd?: boolean | undefined
  /** What is between them; negative: one reaches into the other. */
  gapMm: number
  /** What there should be. */
  needsMm: number
  wouldDo?: WouldDo | undefined
}

const slackMm = 1e-6

/** Tell whether there is less between two things than there should be. */
export const isTooNear = ({gapMm, needsMm}: Pick<Conflict, 'gapMm' | 'needsMm'>): boolean =>
  gapMm < needsMm - slackMm
