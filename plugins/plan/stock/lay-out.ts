import type {Step} from './search.ts'
import type {Task} from './task.ts'

/** A strip of a piece: its width (whole units, no kerf) and the ids of its parts, longest first. */
export interface LaidStrip {
  width: number
  partIds: string[]
}

/** The strips of the piece at an index of the task's pieces, in the order sawn. */
export interface LaidPiece {
  piece: number
  strips: LaidStrip[]
}

/**
 * Give each strip its piece and each part its strip: the pieces chosen are the first of their kind, and parts alike
 * go in the order of the file. Widest strips come first, those of small parts last.
 */
export function layOut(
  task: Task,
  chosen: readonly number[],
  steps: readonly Step[],
  kerf: number,
): LaidPiece[] {
  const rests = task.pieces
    .flatMap((kind, p) =>
      kind.pieces.slice(0, chosen[p]).map((piece) => ({piece, lane: kind.lane, width: kind.width})),
    )
    .sort((a, b) => a.piece - b.piece)
    .map((rest) => ({...rest, steps: [] as Step[]}))
  for (const step of steps) {
    const rest = rests.find(({lane, width}) => lane === step.lane && width === step.from)!
    rest.steps.push(step)
    rest.width -= step.width
  }
  const next = task.parts.map(() => 0)
  const longest = (step: Step) => Math.max(...step.kinds.map((at) => task.parts[at]!.length))
  return rests.map(({piece, steps: own}) => ({
    piece,
    strips: [...own]
      .sort((a, b) => b.width - a.width || longest(b) - longest(a))
      .map((step) => ({
        width: step.width - kerf,
        partIds: step.kinds
          .flatMap((at, k) => Array.from({length: step.copies[k]!}, () => at))
          .sort((a, b) => task.parts[b]!.length - task.parts[a]!.length || a - b)
          .map((at) => task.parts[at]!.ids[next[at]!++]!),
      })),
  }))
}
