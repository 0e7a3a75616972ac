import type {DraftPiece} from './draft.ts'
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
 * Give each planned piece and part its name: pieces and parts alike go in the order of the file. Strips of one width
 * follow each other, the widest first, and in each the longest part comes first and the smallest last.
 */
export function layOut(task: Task, plan: readonly DraftPiece[], kerf: number): LaidPiece[] {
  const nextPiece = task.pieces.map(() => 0)
  const named = plan
    .map(({kind, strips}) => ({piece: task.pieces[kind]!.pieces[nextPiece[kind]!++]!, strips}))
    .sort((a, b) => a.piece - b.piece)
  const nextPart = task.parts.map(() => 0)
  const lengthOf = (at: number) => task.parts[at]!.length
  return named.map(({piece, strips}) => ({
    piece,
    strips: strips
      .map((strip) => [...strip].sort((a, b) => lengthOf(b) - lengthOf(a) || a - b))
      .map((strip) => ({strip, width: Math.max(...strip.map((at) => task.parts[at]!.width))}))
      .sort((a, b) => b.width - a.width || lengthOf(b.strip[0]!) - lengthOf(a.strip[0]!))
      .map(({strip, width}) => ({
        width: width - kerf,
        partIds: strip.map((at) => task.parts[at]!.ids[nextPart[at]!++]!),
      })),
  }))
}
