import {Effort} from './effort.ts'
import {layOut} from './lay-out.ts'
import {volumeOf} from './part-kinds.ts'
import {type SawnPiece, sawnPiece} from './sawn-piece.ts'
import {solveTask} from './solve-task.ts'
import type {Saw, StockPart, StockPiece} from './task.ts'
import {tasksOf} from './tasks-of.ts'
import {tidiest} from './tidiest.ts'
import {wholeUnits} from './whole-units.ts'

export interface CutPlan {
  pieces: SawnPiece[]
  /** Ids of the parts that found no piece. */
  unplaced: string[]
  /** How many pieces are cut, and the fewest that any plan as good on the first two aims can do with. */
  used: number
  bound: number
  /** No plan places more volume, nor as much out of less volume of pieces. */
  proven: boolean
  /** How far at most the volume of the pieces cut lies above the least, as a fraction of it. */
  gapFraction: number
  /** What neither becomes a part nor goes back on the rack, as a fraction of the pieces cut. */
  wasteFraction: number
  /** How many widths the fence is set to. */
  fenceSettings: number
}

/** What a search may take on before it says that it is not proven: a few seconds. */
const usualEffort = 4e7

/**
 * Cut parts out of pieces: rip each piece end to end into strips, crosscut the strips (mm throughout).
 * It places the greatest volume of parts, cuts the least volume of pieces, wastes least, keeps the longest offcut and
 * sets the fence least often, in this order; the first two are proven where it says so. Counted steps bound the search,
 * so the same parts and pieces give the same plan everywhere. Two-stage guillotine cutting after Gilmore & Gomory (1965).
 */
export function cutStock(
  parts: readonly StockPart[],
  pieces: readonly StockPiece[],
  saw: Saw,
  effortLimit = usualEffort,
): CutPlan {
  const kerfMm = Math.max(saw.kerfMm, 0)
  const sound = {kerfMm, trimMm: Math.max(saw.trimMm, 0)}
  const isSized = (it: {lengthMm: number; widthMm: number; thicknessMm: number}) =>
    [it.lengthMm, it.widthMm, it.thicknessMm].every((mm) => mm > 0 && Number.isFinite(mm))
  const byId = new Map(parts.map((part) => [part.id, part]))
  const tasks = tasksOf(parts.filter(isSized), pieces.filter(isSized), sound)
  const effort = new Effort(effortLimit)
  const kerf = wholeUnits(kerfMm)
  const sized = pieces.filter(isSized)
  const placed = new Set<string>()
  const plan = {bound: 0, proven: true, boundVolume: 0}
  const sawn: SawnPiece[] = []
  for (const task of tasks) {
    const solved = solveTask(task, effort.part(effortLimit / tasks.length))
    const tidied = tidiest(task, solved, kerf, new Effort(effortLimit / 100))
    for (const {piece, strips} of layOut(task, tidied, kerf)) {
      sawn.push(sawnPiece(sized[piece]!, pieces.indexOf(sized[piece]!), strips, byId, sound))
      for (const strip of strips) for (const id of strip.partIds) placed.add(id)
    }
    plan.bound += solved.boundPieces
    plan.boundVolume += solved.boundVolume
    plan.proven &&= solved.proven
  }
  sawn.sort((a, b) => a.index - b.index)
  const cutVolume = sawn.reduce((sum, {piece}) => sum + volumeOf(piece), 0)
  const partVolume = parts.reduce((sum, part) => sum + (placed.has(part.id) ? volumeOf(part) : 0), 0)
  const restVolume = sawn.reduce(
    (sum, {offcuts}) => sum + offcuts.reduce((all, one) => all + volumeOf(one), 0),
    0,
  )
  return {
    pieces: sawn,
    unplaced: parts.filter(({id}) => !placed.has(id)).map(({id}) => id),
    used: sawn.length,
    bound: plan.bound,
    proven: plan.proven,
    gapFraction: plan.proven || plan.boundVolume === 0 ? 0 : Math.max(cutVolume / plan.boundVolume - 1, 0),
    wasteFraction: cutVolume > 0 ? Math.max(1 - (partVolume + restVolume) / cutVolume, 0) : 0,
    fenceSettings: new Set(sawn.flatMap(({settings}) => settings)).size,
  }
}
