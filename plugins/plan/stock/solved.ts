import type {Cover} from './choose-pieces.ts'
import type {Step} from './search.ts'

/** How a task is cut, and how near to the best that is. */
export interface Solved {
  steps: Step[]
  /** How many pieces of each kind are cut. */
  chosen: number[]
  left: Int32Array
  proven: boolean
  /** So much more volume of parts (mm³) could be placed at most. */
  mayPlaceMore: number
  /** The least volume of pieces, and the fewest pieces, that any plan which places as much can do with. */
  boundVolume: number
  boundPieces: number
  /** What any choice of pieces must hold. */
  covers: Cover[]
}
