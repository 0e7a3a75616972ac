import type {Piece} from '../part.ts'
/** A piece to cut from. */
export type StockPiece = Omit<Piece, 'cost'>

/** A part to cut, as sawn. `wood` is a row of the wood table, any other name, or `any`. */
export type StockPart = Omit<StockPiece, 'clearMm'>

export interface Saw {
  kerfMm: number
  /** Squared off at each end of a piece. */
  trimMm: number
}

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

/** A strip: how many parts of each kind it holds. */
export interface Strip {
  width: number
  holds: Map<number, number>
}
