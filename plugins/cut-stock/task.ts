import {inchMm} from '../tables/units.ts'

/** Whole units in a millimetre. A length of 20 m and all its sums stay whole numbers that a double holds exactly. */
export const unitsPerMm = 1e9

/**
 * What a piece may be short by and still hold its parts (units; a millionth of a millimetre): the third part of an
 * inch, three times over, fills an inch.
 */
export const slackUnits = 1000

/** Count a length in whole units, so that parts which fill a piece exactly are seen to fit. */
export const wholeUnits = (mm: number): number => Math.round(mm * unitsPerMm)

/** The same in mm. */
export const slackMm = slackUnits / unitsPerMm

/** Tell whether an offcut is worth keeping: 4 in by 1/2 in. */
export const isKept = (lengthMm: number, widthMm: number): boolean =>
  lengthMm >= 4 * inchMm - slackMm && widthMm >= inchMm / 2 - slackMm

/** Parts alike. Sizes are whole units with one kerf added, so that n of them fit where their sum does. */
export interface PartKind {
  length: number
  width: number
  volume: number
  ids: string[]
}

/** Pieces that yield strips alike: the length of a strip, with one kerf added, and the part kinds it may hold. */
export interface Lane {
  length: number
  takes: boolean[]
}

/** Pieces alike; `width` has one kerf added. */
export interface PieceKind {
  lane: number
  width: number
  thickness: number
  volume: number
  pieces: number[]
}

/**
 * A cutting task whose parts and pieces hang together: kinds of parts by falling width, then length, and kinds of
 * pieces in the order of the file. A strip is as wide as its widest part.
 */
export interface Task {
  parts: PartKind[]
  /** All volumes of parts are whole multiples of it (mm³). */
  step: number
  lanes: Lane[]
  pieces: PieceKind[]
  kerf: number
  /** Parts priced by their area, kerfs counted in: the plainest bound, and sharp where pieces are to be filled. */
  byArea: Prices
}

/** Worths that bound what bins can hold: of each kind, of a rest of some width by lane, of a volume left out. */
export interface Prices {
  worths: ArrayLike<number>
  atWidth: (lane: number, width: number) => number
  leftWorth: number
}

/** A bin: so many pieces, or rests of pieces, of one lane that are still so wide. */
export interface Bin {
  lane: number
  width: number
  count: number
}

/** What is to be cut: so many of each kind, but for a volume (mm³) that may be left uncut. */
export interface Demand {
  counts: Int32Array
  mayLeave: number
}

/** What is to be cut out of which bins. */
export interface Job extends Demand {
  bins: readonly Bin[]
}

/** A strip: how many parts of each kind it holds. */
export interface Strip {
  width: number
  holds: Map<number, number>
}

/** A way to cut a bin: strips beside each other, so wide in all. */
export interface Pattern {
  lane: number
  width: number
  strips: Strip[]
  /** How many of each kind it holds. */
  uses: Map<number, number>
}

/** How many there are in all. */
export function total(counts: Int32Array | readonly number[]): number {
  let sum = 0
  for (const n of counts) sum += n
  return sum
}

/** The choice of all pieces: how many there are of each kind. */
export const allPieces = ({pieces}: Task): number[] => pieces.map(({pieces: own}) => own.length)

/** The volume (mm³) of a choice of pieces. */
export const choiceVolume = ({pieces}: Task, chosen: readonly number[]): number =>
  chosen.reduce((sum, n, p) => sum + n * pieces[p]!.volume, 0)

/** Make the bins of a choice of pieces, so many of each kind; kinds of which there are none are left out. */
export const binsOf = (task: Task, chosen: readonly number[]): Bin[] =>
  task.pieces.flatMap(({lane, width}, p) => (chosen[p]! > 0 ? [{lane, width, count: chosen[p]!}] : []))

/** The widest bin of each lane that has any. */
export function widestByLane(bins: readonly Bin[]): Map<number, number> {
  const widest = new Map<number, number>()
  for (const {lane, width, count} of bins)
    if (count > 0) widest.set(lane, Math.max(widest.get(lane) ?? 0, width))
  return widest
}

/** What must be left at most for less to be left than so much (mm³): volumes differ by whole steps. */
export const lessLeft = ({step}: Task, volume: number): number => volume - Math.max(step / 2, 1e-9 * volume)
