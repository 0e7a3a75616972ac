import type {DraftPiece} from './draft.ts'
import {keptOffcut} from './sawn-piece.ts'
import type {Task} from './task.ts'
import {slackUnits, unitsPerMm} from './whole-units.ts'

/** How good the plan of a piece is beyond the first two aims; volumes in mm³, lengths in mm. */
export interface Score {
  kept: number
  longest: number
  /** The widths, in whole units, that the fence is set to. */
  settings: number[]
}

/** Score one piece by what goes back on the rack of it; undefined where its strips do not fit. */
export function scorePiece(task: Task, {kind, strips}: DraftPiece, kerf: number): Score | undefined {
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
  if (lengthMm < keptOffcut.lengthMm - 1e-6 || widthMm < keptOffcut.widthMm - 1e-6) return
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
