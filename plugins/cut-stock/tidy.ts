import {choosePieces} from './choose-pieces.ts'
import type {Context} from './context.ts'
import {type DraftPiece, draft, isBetter, type Score, scorePiece} from './lay-out.ts'
import {packQuickly} from './quick-cut.ts'
import type {Solved} from './solve.ts'
import {binsOf, choiceVolume, type Task, total} from './task.ts'

/** So many changes are tried in all. */
const mostTried = 20_000

/** With more parts than this a plan is left as it was found. */
const mostParts = 150

interface Tidied {
  plan: readonly DraftPiece[]
  scores: readonly Score[]
}

/**
 * Move parts to other strips, to strips of their own, and in exchange for others, as long as that wastes less, keeps a
 * longer offcut or saves a setting of the fence. The pieces cut stay the same.
 */
function tidy(task: Task, start: readonly DraftPiece[]): Tidied {
  let best: Tidied = {plan: start, scores: start.map((piece) => scorePiece(task, piece)!)}
  let parts = 0
  for (const {strips} of start) for (const strip of strips) parts += strip.length
  if (parts > mostParts) return best
  let tried = 0
  for (let better: Tidied | undefined = best; better; ) {
    best = better
    better = undefined
    for (const moves of possibleMoves(task, best.plan)) {
      if (++tried > mostTried) return best
      better = tryMoves(task, best, moves)
      if (better) break
    }
  }
  return best
}

/** A part of a plan: the piece, the strip, which of the strip it is, and its kind. */
interface Place {
  q: number
  s: number
  i: number
  kind: number
}

/** Into which strip of which piece a part goes; past the last strip there is a new one. */
interface Move {
  from: Place
  q: number
  s: number
}

/** Every way to move one part, or to exchange two of different kinds, as far as the lengths of strips tell. */
function* possibleMoves(task: Task, plan: readonly DraftPiece[]): Generator<Move[]> {
  const lanes = plan.map(({kind}) => task.lanes[task.pieces[kind]!.lane]!)
  const lengthOf = (kind: number) => task.parts[kind]!.length
  const rooms = plan.map(({strips}, q) =>
    strips.map((strip) => strip.reduce((room, kind) => room - lengthOf(kind), lanes[q]!.length)),
  )
  // Parts alike in one strip are one.
  const places = plan.flatMap(({strips}, q) =>
    strips.flatMap((strip, s) =>
      strip.flatMap((kind, i) => (strip.indexOf(kind) === i ? [{q, s, i, kind}] : [])),
    ),
  )
  for (const from of places) {
    const length = lengthOf(from.kind)
    const isAlone = plan[from.q]!.strips[from.s]!.length === 1
    for (let q = 0; q < plan.length; q++) {
      if (!lanes[q]!.takes[from.kind]) continue
      const own = rooms[q]!
      for (let s = 0; s < own.length; s++)
        if (own[s]! >= length && (q !== from.q || s !== from.s)) yield [{from, q, s}]
      if (!isAlone || q !== from.q) yield [{from, q, s: own.length}]
    }
    const room = rooms[from.q]![from.s]! + length
    for (const other of places) {
      if (other.kind <= from.kind || (other.q === from.q && other.s === from.s)) continue
      const otherLength = lengthOf(other.kind)
      if (otherLength <= room && length <= rooms[other.q]![other.s]! + otherLength)
        yield [
          {from, q: other.q, s: other.s},
          {from: other, q: from.q, s: from.s},
        ]
    }
  }
}

/** The plan after the moves, where it is better. */
function tryMoves(task: Task, {plan, scores}: Tidied, moves: readonly Move[]): Tidied | undefined {
  const changed = {plan: [...plan], scores: [...scores]}
  const {from, q} = moves[0]!
  for (const at of from.q === q ? [q] : [from.q, q]) {
    const piece = withMoves(plan[at]!, at, moves)
    const score = piece.strips.length > 0 ? scorePiece(task, piece) : undefined
    if (!score) return undefined
    changed.plan[at] = piece
    changed.scores[at] = score
  }
  return isBetter(changed.scores, scores) ? changed : undefined
}

/** Copy the piece `at` as it is after the moves; a strip left empty is gone. */
function withMoves({kind, strips}: DraftPiece, at: number, moves: readonly Move[]): DraftPiece {
  const after: number[][] = []
  for (let s = 0; s <= strips.length; s++) {
    const strip = [...(strips[s] ?? [])]
    for (const {from} of moves) if (from.q === at && from.s === s) strip.splice(from.i, 1)
    for (const {from, q, s: into} of moves) if (q === at && into === s) strip.push(from.kind)
    if (strip.length > 0) after.push(strip)
  }
  return {kind, strips: after}
}

/** So many other choices of pieces of the same volume are looked at. */
const mostOthers = 12

/** With more parts than this other choices are not looked at. */
const mostForOthers = 60

/**
 * Of a solution, and of other choices of pieces with the same volume that hold the same parts, take the plan that
 * wastes least, keeps the longest offcut and sets the fence least often; the earlier pieces where they are equal.
 */
export function tidiest(context: Context, {chosen, steps, left, covers}: Solved): readonly DraftPiece[] {
  const {task, effort} = context
  let best = tidy(task, draft(task, chosen, steps))
  const counts = Int32Array.from(task.parts, ({ids}, at) => ids.length - left[at]!)
  if (total(counts) > mostForOthers) return best.plan
  const volume = choiceVolume(task, chosen)
  const seen = [chosen.join()]
  for (let other = 0; other < mostOthers && !effort.over; other++) {
    const not = (one: readonly number[]) => seen.includes(one.join())
    const next = choosePieces(context, covers, {not, under: volume})
    if (!Array.isArray(next)) break
    seen.push(next.join())
    const quick = packQuickly(context, {counts, bins: binsOf(task, next), mayLeave: 0})
    if (!quick) continue
    const tidied = tidy(task, draft(task, next, quick.steps))
    if (isBetter(tidied.scores, best.scores)) best = tidied
  }
  return best.plan
}
