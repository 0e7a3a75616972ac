import type {DraftPiece} from './draft.ts'
import {type Saw, type StockPart, type StockPiece, type Task, unitsPerMm} from './task.ts'

/** A strip of a piece: its width (whole units, no kerf) and the ids of its parts, longest first. */
interface LaidStrip {
  width: number
  partIds: string[]
}

/** The strips of the piece at an index of the task's pieces, in the order sawn. */
interface LaidPiece {
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

/** What goes back on the rack; where it lies on the piece as for cuts. */
interface Offcut {
  lengthMm: number
  widthMm: number
  thicknessMm: number
  atMm: number
  acrossMm: number
}

/** A piece as it is sawn, all in mm: along from the end that `clear` counts from, across from the first edge. */
export interface SawnPiece {
  piece: StockPiece
  /** Its place in the list of pieces. */
  index: number
  /** From where to where it is used, once squared. */
  fromMm: number
  toMm: number
  strips: {
    widthMm: number
    acrossMm: number
    cuts: {partId: string; atMm: number; lengthMm: number; widthMm: number}[]
  }[]
  offcuts: Offcut[]
  /** The widths, in whole units, that the fence is set to. */
  settings: number[]
}

/** The least offcut that is kept: 4 in by 1/2 in. */
export const keptOffcut = {lengthMm: 4 * 25.4, widthMm: 25.4 / 2}

const slackMm = 1e-6

/** Place strips and cuts on a piece, each past the last by one kerf, and say what is left that is worth keeping. */
export function sawnPiece(
  piece: StockPiece,
  index: number,
  laid: readonly LaidStrip[],
  parts: ReadonlyMap<string, StockPart>,
  {kerfMm, trimMm}: Saw,
): SawnPiece {
  const [clearFrom, clearTo] = piece.clearMm ?? [0, piece.lengthMm]
  const fromMm = Math.max(clearFrom, 0) + trimMm
  const toMm = Math.min(clearTo, piece.lengthMm) - trimMm
  const offcuts: Offcut[] = []
  const keep = (offcut: Offcut) => {
    const isWorth =
      offcut.lengthMm >= keptOffcut.lengthMm - slackMm && offcut.widthMm >= keptOffcut.widthMm - slackMm
    if (isWorth) offcuts.push(offcut)
  }
  const {thicknessMm} = piece
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
    keep({lengthMm: toMm - atMm, widthMm, thicknessMm, atMm, acrossMm})
    const strip = {widthMm, acrossMm, cuts}
    acrossMm += widthMm + kerfMm
    return strip
  })
  keep({lengthMm: toMm - fromMm, widthMm: piece.widthMm - acrossMm, thicknessMm, atMm: fromMm, acrossMm})
  offcuts.sort((a, b) => b.lengthMm - a.lengthMm || b.widthMm - a.widthMm)
  const narrower = laid.flatMap(({width, partIds}) =>
    partIds
      .map((id) => Math.round(parts.get(id)!.widthMm * unitsPerMm))
      .filter((other) => other < width - 1000),
  )
  const isWhole = strips.length === 1 && piece.widthMm - strips[0]!.widthMm <= slackMm
  return {
    piece,
    index,
    fromMm,
    toMm,
    strips,
    offcuts,
    settings: [...(isWhole ? [] : laid.map(({width}) => width)), ...narrower],
  }
}
