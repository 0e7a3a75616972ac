import type {Task} from './task.ts'

/** The choice of all pieces: how many there are of each kind. */
export const allPieces = ({pieces}: Task): number[] => pieces.map(({pieces: own}) => own.length)

/** The volume (mm³) of a choice of pieces. */
export const choiceVolume = ({pieces}: Task, chosen: readonly number[]): number =>
  chosen.reduce((sum, n, p) => sum + n * pieces[p]!.volume, 0)
