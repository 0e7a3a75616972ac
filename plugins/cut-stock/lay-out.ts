import type {Step} from './cutting.ts'
import {allPieces, isKept, slackUnits, type Task, unitsPerMm} from './task.ts'

/** A piece being planned: which kind of piece it is, and its strips, each the kinds of its parts. */
export interface DraftPiece {
  kind: number
  strips: number[][]
}

/** Give each strip its piece: those chosen are the first of their kind. Pieces that are not cut are left out. */
export function draft(task: Task, chosen: readonly number[], steps: readonly Step[]): DraftPiece[] {
  const rests = task.pieces.flatMap(({lane, width}, kind) =>
    Array.from({length: chosen[kind]!}, () => ({kind, lane, width, strips: [] as number[][]})),
  )
  // A task of thousands of parts has many rests alike: they wait in heaps by lane and width.
  const heaps = task.lanes.map(() => new Map<number, typeof rests>())
  const putDown = (rest: (typeof rests)[number]) => {
    const heap = heaps[rest.lane]!.get(rest.width)
    if (heap) heap.push(rest)
    else heaps[rest.lane]!.set(rest.width, [rest])
  }
  for (let at = rests.length - 1; at >= 0; at--) putDown(rests[at]!)
  for (const {lane, from, width, kinds, copies} of steps) {
    const rest = heaps[lane]!.get(from)!.pop()!
    rest.strips.push(kinds.flatMap((kind, k) => Array.from({length: copies[k]!}, () => kind)))
    rest.width -= width
    putDown(rest)
  }
  return rests.filter(({strips}) => strips.length > 0).map(({kind, strips}) => ({kind, strips}))
}

/** Count how many pieces of each kind a cutting of all pieces really cuts. */
export function usedPieces(task: Task, steps: readonly Step[]): number[] {
  const used = task.pieces.map(() => 0)
  for (const {kind} of draft(task, allPieces(task), steps)) used[kind]!++
  return used
}

/** The strips of the piece at an index of the list, in the order sawn. */
export interface LaidPiece {
  index: number
  strips: LaidStrip[]
}

/** A strip of a piece: its width (whole units, no kerf) and the ids of its parts, longest first. */
export interface LaidStrip {
  width: number
  partIds: string[]
}

/**
 * Give each planned piece and part its name: pieces and parts alike go in the order of the file. Strips of one width
 * follow each other, the widest first, and in each the longest part comes first and the smallest last.
 */
export function layOut({parts, pieces, kerf}: Task, plan: readonly DraftPiece[]): LaidPiece[] {
  const nextPiece = pieces.map(() => 0)
  const named = plan
    .map(({kind, strips}) => ({index: pieces[kind]!.pieces[nextPiece[kind]!++]!, strips}))
    .sort((a, b) => a.index - b.index)
  const nextPart = parts.map(() => 0)
  const lengthOf = (at: number) => parts[at]!.length
  return named.map(({index, strips}) => ({
    index,
    strips: strips
      .map((strip) => [...strip].sort((a, b) => lengthOf(b) - lengthOf(a) || a - b))
      .map((strip) => ({strip, width: Math.max(...strip.map((at) => parts[at]!.width))}))
      .sort((a, b) => b.width - a.width || lengthOf(b.strip[0]!) - lengthOf(a.strip[0]!))
      .map(({strip, width}) => ({
        width: width - kerf,
        partIds: strip.map((at) => parts[at]!.ids[nextPart[at]!++]!),
      })),
  }))
}

/** How good the plan of a piece is beyond the first two aims; volumes in mm³, lengths in mm. */
export interface Score {
  kept: number
  longest: number
  /** The widths, in whole units, that the fence is set to. */
  settings: number[]
}

/** Score one piece by what goes back on the rack of it; undefined where its strips do not fit. */
export function scorePiece(task: Task, {kind, strips}: DraftPiece): Score | undefined {
  const {kerf} = task
  const {lane, width, thickness} = task.pieces[kind]!
  const {length, takes} = task.lanes[lane]!
  const score: Score = {kept: 0, longest: 0, settings: []}
  let across = width
  for (const strip of strips) {
    let along = length
    let widest = 0
    for (const at of strip) {
      if (!takes[at]) return undefined
      along -= task.parts[at]!.length
      widest = Math.max(widest, task.parts[at]!.width)
    }
    across -= widest
    if (along < 0 || across < 0) return undefined
    keep(score, along - kerf - slackUnits, widest - kerf, thickness)
    score.settings.push(widest)
    for (const at of strip) if (task.parts[at]!.width < widest) score.settings.push(task.parts[at]!.width)
  }
  keep(score, length - kerf - slackUnits, across - kerf - slackUnits, thickness)
  return score
}

/** Count an offcut (whole units) into a score, if it is worth keeping. */
function keep(score: Score, length: number, width: number, thickness: number): void {
  const [lengthMm, widthMm] = [length / unitsPerMm, width / unitsPerMm]
  if (!isKept(lengthMm, widthMm)) return
  score.kept += (lengthMm * widthMm * thickness) / unitsPerMm
  score.longest = Math.max(score.longest, lengthMm)
}

/** Tell whether one plan, by the scores of its pieces, is better: less waste, then a longer offcut, then fewer settings. */
export function isBetter(one: readonly Score[], than: readonly Score[]): boolean {
  const [kept, keptThan] = [keptOf(one), keptOf(than)]
  if (Math.abs(kept - keptThan) > 1e-9 * Math.max(kept, keptThan)) return kept > keptThan
  const [longest, longestThan] = [longestOf(one), longestOf(than)]
  if (Math.abs(longest - longestThan) > 1e-6) return longest > longestThan
  return settingsOf(one) < settingsOf(than)
}

function keptOf(scores: readonly Score[]): number {
  let kept = 0
  for (const score of scores) kept += score.kept
  return kept
}

function longestOf(scores: readonly Score[]): number {
  let longest = 0
  for (const score of scores) longest = Math.max(longest, score.longest)
  return longest
}

function settingsOf(scores: readonly Score[]): number {
  const settings = new Set<number>()
  for (const score of scores) for (const width of score.settings) settings.add(width)
  return settings.size
}
