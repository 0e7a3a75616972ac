import {type Convex, madeNow, shifted} from './convex.ts'
import type {Vec} from './space.ts'

/** A piece of wood or metal: some bodies together, less what is cut out of them. */
export interface Solid {
  of: readonly Convex[]
  less: readonly Convex[]
}

export const solid = (...of: Convex[]): Solid => ({of, less: []})

/** Shift a piece. */
export const moved = ({of, less}: Solid, by: Vec): Solid => ({
  of: of.map((body) => shifted(body, by)),
  less: less.map((body) => shifted(body, by)),
})

/** Say that faces of a piece are made at this moment of the work: all, or those that look a way. */
export const nowOf = ({of, less}: Solid, which?: (normal: Vec) => boolean): Solid => ({
  of: of.map((body) => madeNow(body, which)),
  less,
})

/** Cut bodies out of a piece. */
export const cut = (from: Solid, ...away: Convex[]): Solid => ({...from, less: [...from.less, ...away]})
