import {nowOf, type Solid} from '../solids/solid.ts'
import type {Vec} from '../solids/space.ts'

/** A part in the picture, in its place or lifted off it. */
export interface Piece {
  /** Path of the build file, or id of a part to cut. */
  of: string
  wood?: string | undefined
  solid: Solid
  /** Which way its grain runs; along the instrument where it is not said. Metal has none. */
  grain?: 'along' | 'across' | 'none'
}

/** A line on a face: one that is marked, a string, a fret. */
export interface Mark {
  of: string
  a: Vec
  b: Vec
  isNow: boolean
}

/** A way that something is moved or pressed. */
export interface Push {
  from: Vec
  to: Vec
}

/** A number and the place that it is about. */
export interface Note {
  at: Vec
  text: string
}

/** What is in hand at one moment of the work. */
export interface Scene {
  pieces: readonly Piece[]
  marks: readonly Mark[]
  pushes: readonly Push[]
  notes: readonly Note[]
  /** The piece lies on its face: its back is seen. */
  isTurned: boolean
  /** Its notes stand in a column at its right, not above and below it. */
  areNotesBeside: boolean
}

/** Say that what is up of a piece is worked at this moment. */
export const upNow = (piece: Piece): Piece => ({...piece, solid: nowOf(piece.solid, (n) => n[2] > 0.9)})

export const scene = (pieces: readonly Piece[], more: Partial<Scene> = {}): Scene => ({
  pieces,
  marks: [],
  pushes: [],
  notes: [],
  isTurned: false,
  areNotesBeside: false,
  ...more,
})
