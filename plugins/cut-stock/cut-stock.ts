import {Effort} from './context.ts'
import {type LaidPiece, type LaidStrip, layOut} from './lay-out.ts'
import {solve} from './solve.ts'
import {isKept, slackMm, slackUnits, unitsPerMm, wholeUnits} from './task.ts'
import {type Saw, type Sized, type StockPart, type StockPiece, tasksOf, volumeOf} from './tasks-of.ts'
import {tidiest} from './tidy.ts'

export type {Saw, StockPart, StockPiece} from './tasks-of.ts'

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

/** A piece as it is sawn (mm): along from the end that `clear` counts from, across from the first edge. */
export interface SawnPiece {
  piece: StockPiece
  /** Its place in the list of pieces. */
  index: number
  /** Where the squared, clear length starts, from the end that clear counts from. */
  fromMm: number
  toMm: number
  /** Ripped end to end, in the order sawn; each is then crosscut. */
  strips: {
    widthMm: number
    /** From the first edge. */
    acrossMm: number
    cuts: {
      partId: string
      /** From the end that clear counts from. */
      atMm: number
      lengthMm: number
      /** Of the part; less than the strip’s where the rest is ripped off. */
      widthMm: number
    }[]
  }[]
  /** Those that go back on the rack, the longest first. */
  offcuts: Offcut[]
  /** The widths, in whole units, that the fence is set to. */
  settings: number[]
}

interface Offcut extends Sized {
  atMm: number
  acrossMm: number
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
  const byId = new Map(parts.map((part) => [part.id, part]))
  const tasks = tasksOf(parts, pieces, sound)
  const solved = tasks.map((task) => ({task, ...solve(task, new Effort(effortLimit / tasks.length))}))
  const sawn = solved
    .flatMap((one) => {
      const context = {task: one.task, pool: [], effort: new Effort(effortLimit / 100)}
      return layOut(one.task, tidiest(context, one))
    })
    .map((laid) => sawnPiece(laid, pieces[laid.index]!, byId, sound))
    .sort((a, b) => a.index - b.index)
  const cuts = sawn.flatMap(({strips}) => strips.flatMap((strip) => strip.cuts))
  const placed = new Set(cuts.map(({partId}) => partId))
  const cutVolume = volume(sawn.map(({piece}) => piece))
  const partVolume = volume(parts.filter(({id}) => placed.has(id)))
  const keptVolume = volume(sawn.flatMap(({offcuts}) => offcuts))
  const proven = solved.every((one) => one.proven)
  const mayPlaceMore = solved.reduce((sum, one) => sum + one.mayPlaceMore, 0)
  const boundVolume = solved.reduce((sum, one) => sum + one.boundVolume, 0)
  const gaps = [share(mayPlaceMore, partVolume), share(cutVolume - boundVolume, boundVolume), 0]
  return {
    pieces: sawn,
    unplaced: parts.filter(({id}) => !placed.has(id)).map(({id}) => id),
    used: sawn.length,
    bound: solved.reduce((sum, {boundPieces}) => sum + boundPieces, 0),
    proven,
    gapFraction: proven ? 0 : Math.max(...gaps),
    wasteFraction: Math.max(share(cutVolume - partVolume - keptVolume, cutVolume), 0),
    fenceSettings: new Set(sawn.flatMap(({settings}) => settings)).size,
  }
}

const volume = (all: readonly Sized[]) => all.reduce((sum, one) => sum + volumeOf(one), 0)

/** A part of a whole; of nothing it is all. */
const share = (part: number, whole: number) => (whole > 0 ? part / whole : part > 0 ? 1 : 0)

/** Place strips and cuts on a piece, each past the last by one kerf, and say what is left that is worth keeping. */
function sawnPiece(
  {index, strips: laid}: LaidPiece,
  piece: StockPiece,
  parts: ReadonlyMap<string, StockPart>,
  {kerfMm, trimMm}: Saw,
): SawnPiece {
  const [clearFrom, clearTo] = piece.clearMm ?? [0, piece.lengthMm]
  const fromMm = Math.max(clearFrom, 0) + trimMm
  const toMm = Math.min(clearTo, piece.lengthMm) - trimMm
  const {thicknessMm} = piece
  const ends: Offcut[] = []
  let acrossMm = 0
  const strips = laid.map(({width, partIds}) => {
    const widthMm = width / unitsPerMm
    let atMm = fromMm
    const cuts = partIds.map((partId) => {
      const part = parts.get(partId)!
      const cut = {partId, atMm, lengthMm: part.lengthMm, widthMm: part.widthMm}
      atMm += part.lengthMm + kerfMm
      return cut
    })
    ends.push({lengthMm: toMm - atMm, widthMm, thicknessMm, atMm, acrossMm})
    const strip = {widthMm, acrossMm, cuts}
    acrossMm += widthMm + kerfMm
    return strip
  })
  const beside = {
    lengthMm: toMm - fromMm,
    widthMm: piece.widthMm - acrossMm,
    thicknessMm,
    atMm: fromMm,
    acrossMm,
  }
  const offcuts = [...ends, beside]
    .filter(({lengthMm, widthMm}) => isKept(lengthMm, widthMm))
    .sort((a, b) => b.lengthMm - a.lengthMm || b.widthMm - a.widthMm)
  const isWhole = strips.length === 1 && piece.widthMm - strips[0]!.widthMm <= slackMm
  const settings = [...(isWhole ? [] : laid.map(({width}) => width)), ...narrower(laid, parts)]
  return {piece, index, fromMm, toMm, strips, offcuts, settings}
}

/** The widths of the parts that are narrower than their strip. */
const narrower = (laid: readonly LaidStrip[], parts: ReadonlyMap<string, StockPart>): number[] =>
  laid.flatMap(({width, partIds}) =>
    partIds.map((id) => wholeUnits(parts.get(id)!.widthMm)).filter((other) => other < width - slackUnits),
  )
