import type {DraftPiece} from './draft.ts'
import {isBetter, type Score, scoreOf, scorePiece} from './score.ts'
import type {Task} from './task.ts'

/** So many changes are tried in all. */
const mostTried = 20_000

/** With more parts than this a plan is left as it was found. */
const mostParts = 150

/**
 * Move parts to other strips, to strips of their own, and in exchange for others, as long as that wastes less, keeps a
 * longer offcut or saves a setting of the fence. The pieces cut stay the same.
 */
export function tidy(
  task: Task,
  start: readonly DraftPiece[],
  kerf: number,
): {plan: DraftPiece[]; score: Score} {
  let plan = start.map(({kind, strips}) => ({kind, strips: strips.map((strip) => [...strip])}))
  let scores = plan.map((piece) => scorePiece(task, piece, kerf)!)
  let total = scoreOf(scores)
  const parts = plan.reduce((sum, {strips}) => sum + strips.reduce((all, strip) => all + strip.length, 0), 0)
  if (parts > mostParts) return {plan, score: total}
  let tried = 0
  for (let isBetterStill = true; isBetterStill && tried < mostTried; ) {
    isBetterStill = false
    for (const change of changes(plan)) {
      if (++tried > mostTried) break
      const next = change()
      if (next.some(({piece}) => piece.strips.length === 0)) continue
      const own = next.map(({piece}) => scorePiece(task, piece, kerf))
      if (own.some((score) => score === undefined)) continue
      const changed = scores.map((score, q) => own[next.findIndex(({at}) => at === q)] ?? score)
      const better = scoreOf(changed)
      if (!isBetter(better, total)) continue
      plan = plan.map((piece, q) => next.find(({at}) => at === q)?.piece ?? piece)
      scores = changed
      total = better
      isBetterStill = true
      break
    }
  }
  return {plan, score: total}
}

type Change = () => {at: number; piece: DraftPiece}[]

/** Every way to move one part, or to exchange two of different kinds. */
function* changes(plan: readonly DraftPiece[]): Generator<Change> {
  const places = plan.flatMap(({strips}, q) =>
    strips.flatMap((strip, s) => strip.map((kind, i) => ({q, s, i, kind}))),
  )
  const seen = new Set<string>()
  for (const from of places) {
    // Parts alike in one strip are one.
    const key = `${from.q} ${from.s} ${from.kind}`
    if (seen.has(key)) continue
    seen.add(key)
    for (let q = 0; q < plan.length; q++)
      for (let s = 0; s <= plan[q]!.strips.length; s++)
        if (q !== from.q || s !== from.s) yield () => edited(plan, [{...from, into: {q, s}}])
    for (const other of places)
      if (other.kind > from.kind && (other.q !== from.q || other.s !== from.s))
        yield () =>
          edited(plan, [
            {...from, into: other},
            {...other, into: from},
          ])
  }
}

interface Move {
  q: number
  s: number
  i: number
  kind: number
  into: {q: number; s: number}
}

/** Copy the pieces that moves touch, and make the moves; strips left empty are gone. */
function edited(plan: readonly DraftPiece[], moves: readonly Move[]): {at: number; piece: DraftPiece}[] {
  const copies = new Map<number, DraftPiece>()
  const copyOf = (q: number) => {
    const known = copies.get(q) ?? {kind: plan[q]!.kind, strips: plan[q]!.strips.map((strip) => [...strip])}
    copies.set(q, known)
    return known
  }
  for (const {q, s, i} of moves) copyOf(q).strips[s]![i] = -1
  for (const {kind, into} of moves) {
    const {strips} = copyOf(into.q)
    strips[into.s] = [...(strips[into.s] ?? []), kind]
  }
  return [...copies].map(([at, {kind, strips}]) => ({
    at,
    piece: {
      kind,
      strips: strips.map((strip) => strip.filter((part) => part >= 0)).filter((strip) => strip.length > 0),
    },
  }))
}
