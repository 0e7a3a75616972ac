import {Effort} from './effort.ts'
import {layOut, type SawnPiece, sawnPiece} from './sawn-piece.ts'
import {solveTask} from './solve-task.ts'
import {type Saw, type StockPart, type StockPiece, wholeUnits} from './task.ts'
import {tasksOf, volumeOf} from './tasks-of.ts'
import {tidiest} from './tidy.ts'

export type {SawnPiece} from './sawn-piece.ts'
export type {Saw, StockPart, StockPiece} from './task.ts'

export interface CutPlan {
  pieces: SawnPiece[]
  /** Ids of the parts that found no piece. */
  unplaced: string[]
  /** How many pieces are cut, and the fewest that any plan as good on the first two aims can do with. */
  used: number
  bound: number
  /** No plan places more volume, nor as much out of less volume of pieces. */
  proven: boolean
  /** By what fraction at most a better plan could place more, or cut less; 0 where it is proven. */
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
  const sound = {kerfMm: Math.max(saw.kerfMm, 0), trimMm: Math.max(saw.trimMm, 0)}
  const kerf = wholeUnits(sound.kerfMm)
  const byId = new Map(parts.map((part) => [part.id, part]))
  const [sizedParts, sizedPieces] = [parts.filter(isSized), pieces.filter(isSized)]
  const tasks = tasksOf(sizedParts, sizedPieces, sound)
  const solved = tasks.map((task) => ({task, ...solveTask(task, new Effort(effortLimit / tasks.length))}))
  const index = new Map(pieces.map((piece, at) => [piece, at]))
  const sawn = solved
    .flatMap((one) => layOut(one.task, tidiest(one.task, one, kerf, new Effort(effortLimit / 100)), kerf))
    .map(({piece, strips}) => ({piece: sizedPieces[piece]!, strips}))
    .map(({piece, strips}) => sawnPiece(piece, index.get(piece)!, strips, byId, sound))
    .sort((a, b) => a.index - b.index)
  const placed = new Set(
    sawn.flatMap(({strips}) => strips.flatMap(({cuts}) => cuts.map(({partId}) => partId))),
  )
  const cutVolume = total(sawn.map(({piece}) => piece))
  const partVolume = total(parts.filter(({id}) => placed.has(id)))
  const proven = solved.every((one) => one.proven)
  const mayPlaceMore = solved.reduce((sum, one) => sum + one.mayPlaceMore, 0)
  const boundVolume = solved.reduce((sum, one) => sum + one.boundVolume, 0)
  return {
    pieces: sawn,
    unplaced: parts.filter(({id}) => !placed.has(id)).map(({id}) => id),
    used: sawn.length,
    bound: solved.reduce((sum, {boundPieces}) => sum + boundPieces, 0),
    proven,
    gapFraction: proven
      ? 0
      : Math.max(share(mayPlaceMore, partVolume), share(cutVolume - boundVolume, boundVolume), 0),
    wasteFraction: Math.max(
      share(cutVolume - partVolume - total(sawn.flatMap(({offcuts}) => offcuts)), cutVolume),
      0,
    ),
    fenceSettings: new Set(sawn.flatMap(({settings}) => settings)).size,
  }
}

interface Sized {
  lengthMm: number
  widthMm: number
  thicknessMm: number
}

const isSized = ({lengthMm, widthMm, thicknessMm}: Sized) =>
  [lengthMm, widthMm, thicknessMm].every((mm) => mm > 0 && Number.isFinite(mm))

const total = (all: readonly Sized[]) => all.reduce((sum, one) => sum + volumeOf(one), 0)

/** A part of a whole; of nothing it is all. */
const share = (part: number, whole: number) => (whole > 0 ? part / whole : part > 0 ? 1 : 0)
