import type {DraftPiece} from './draft.ts'
import {keptOffcut} from './sawn-piece.ts'
import type {Task} from './task.ts'
import {slackUnits, unitsPerMm} from './whole-units.ts'

/** How good a plan is beyond its first two aims; volumes in mm³, lengths in mm. */
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
  const keep = (lengthUnits: number, widthUnits: number) => {
    const [lengthMm, widthMm] = [lengthUnits / unitsPerMm, widthUnits / unitsPerMm]
    if (lengthMm < keptOffcut.lengthMm - 1e-6 || widthMm < keptOffcut.widthMm - 1e-6) return
    score.kept += (lengthMm * widthMm * thickness) / unitsPerMm
    score.longest = Math.max(score.longest, lengthMm)
  }
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
    keep(along - kerf - slackUnits, widest - kerf)
    score.settings.push(widest)
    for (const at of strip) if (task.parts[at]!.width < widest) score.settings.push(task.parts[at]!.width)
  }
  keep(length - kerf - slackUnits, across - kerf - slackUnits)
  return score
}

/** Put the scores of all pieces together. */
export function scoreOf(scores: readonly Score[]): Score {
  return {
    kept: scores.reduce((sum, {kept}) => sum + kept, 0),
    longest: Math.max(0, ...scores.map(({longest}) => longest)),
    settings: [...new Set(scores.flatMap(({settings}) => settings))],
  }
}

/** Tell whether one plan is better than another: less waste, then a longer offcut, then fewer settings. */
export function isBetter(one: Score, than: Score): boolean {
  const volume = 1e-9 * Math.max(one.kept, than.kept)
  if (Math.abs(one.kept - than.kept) > volume) return one.kept > than.kept
  if (Math.abs(one.longest - than.longest) > 1e-6) return one.longest > than.longest
  return one.settings.length < than.settings.length
}
