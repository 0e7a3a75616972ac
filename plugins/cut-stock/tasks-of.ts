import {areaPrices} from './prices.ts'
import {
  type Lane,
  type PartKind,
  type PieceKind,
  slackUnits,
  type Task,
  unitsPerMm,
  wholeUnits,
} from './task.ts'

export interface Sized {
  lengthMm: number
  widthMm: number
  thicknessMm: number
}

export const volumeOf = ({lengthMm, widthMm, thicknessMm}: Sized): number => lengthMm * widthMm * thicknessMm

/** No part or piece is larger (mm): past it whole units are no longer exact. */
const mostMm = 1e6

const isSized = ({lengthMm, widthMm, thicknessMm}: Sized): boolean =>
  [lengthMm, widthMm, thicknessMm].every((mm) => mm > 0 && mm <= mostMm)

/** A part to cut, as sawn. `wood` is a row of the wood table, any other name, or `any`. */
export interface StockPart extends Sized {
  id: string
  wood: string
}

/** A piece to cut from, of one wood. */
export interface StockPiece extends StockPart {
  /** From where to where it is clear, from one end. */
  clearMm?: readonly [number, number] | undefined
}

export interface Saw {
  kerfMm: number
  /** Squared off at each end of a piece. */
  trimMm: number
}

/** A kind of part with what decides which pieces it fits; sizes in whole units. */
interface SizedKind extends PartKind {
  thickness: number
  wood: string
}

/** Put parts alike together, by falling width, then length, then thickness; a kerf is added to length and width. */
function partKinds(parts: readonly StockPart[], kerf: number): SizedKind[] {
  const kinds: SizedKind[] = []
  const byLength = new Map<number, SizedKind[]>()
  for (const part of parts) {
    const {id, wood, lengthMm, widthMm, thicknessMm} = part
    const length = wholeUnits(lengthMm) + kerf
    const width = wholeUnits(widthMm) + kerf
    const thickness = wholeUnits(thicknessMm)
    const asLong = byLength.get(length)
    const known = asLong?.find(
      (kind) => kind.width === width && kind.thickness === thickness && kind.wood === wood,
    )
    if (known) {
      known.ids.push(id)
      continue
    }
    const volume = volumeOf(part)
    const kind = {length, width, thickness, volume, ids: [id], wood}
    kinds.push(kind)
    if (asLong) asLong.push(kind)
    else byLength.set(length, [kind])
  }
  return kinds.sort((a, b) => b.width - a.width || b.length - a.length || b.thickness - a.thickness)
}

/** The volume (mm³) that all parts' volumes are whole multiples of, so that two different sums differ by as much. */
function volumeStep(parts: readonly StockPart[]): number {
  let [length, width, thickness] = [0, 0, 0]
  for (const part of parts) {
    length = commonMeasure(length, wholeUnits(part.lengthMm))
    width = commonMeasure(width, wholeUnits(part.widthMm))
    thickness = commonMeasure(thickness, wholeUnits(part.thicknessMm))
  }
  return (length / unitsPerMm) * (width / unitsPerMm) * (thickness / unitsPerMm)
}

const commonMeasure = (a: number, b: number): number => (b === 0 ? a : commonMeasure(b, a % b))

/** A kind of piece, before it is known which task it belongs to. */
interface FreePiece extends Omit<PieceKind, 'lane'> {
  /** How long its strips are, a kerf and the slack added. */
  length: number
  /** By part kind: whether its wood, thickness and length suit. */
  suits: boolean[]
  /** The part kinds that fit in it. */
  holds: number[]
}

/** Put pieces alike together, in the order of the file; of each, what may be cut is its clear length less trim. */
function pieceKinds(pieces: readonly StockPiece[], parts: readonly SizedKind[], saw: Saw): FreePiece[] {
  const kerf = wholeUnits(saw.kerfMm)
  const trim = wholeUnits(saw.trimMm)
  const kinds: (FreePiece & {wood: string})[] = []
  pieces.forEach((piece, index) => {
    if (!isSized(piece)) return
    const {lengthMm, widthMm, thicknessMm, wood, clearMm: [from, to] = [0, lengthMm]} = piece
    const clear = wholeUnits(Math.min(to, lengthMm)) - wholeUnits(Math.max(from, 0))
    const length = clear - 2 * trim + kerf + slackUnits
    const width = wholeUnits(widthMm) + kerf + slackUnits
    const thickness = wholeUnits(thicknessMm)
    const volume = volumeOf(piece)
    const known = kinds.find(
      (kind) =>
        kind.length === length &&
        kind.width === width &&
        kind.thickness === thickness &&
        kind.volume === volume &&
        kind.wood === wood,
    )
    if (known) {
      known.pieces.push(index)
      return
    }
    const suits: boolean[] = []
    const holds: number[] = []
    parts.forEach((part, at) => {
      const isSuited =
        (part.wood === 'any' || part.wood === wood) &&
        part.thickness <= thickness + slackUnits &&
        part.length <= length
      suits.push(isSuited)
      if (isSuited && part.width <= width) holds.push(at)
    })
    kinds.push({length, width, thickness, volume, wood, pieces: [index], suits, holds})
  })
  return kinds.filter(({holds}) => holds.length > 0)
}

/** Name the lanes of pieces: those whose strips are alike in length and in what they may hold, of the kinds `held`. */
function lanesOf(
  pieces: readonly FreePiece[],
  held: readonly number[],
): {lanes: Lane[]; pieces: PieceKind[]} {
  const lanes: Lane[] = []
  const placed = pieces.map(({length, suits, width, thickness, volume, pieces: own}) => {
    const takes = held.map((at) => suits[at]!)
    const known = lanes.findIndex(
      (lane) => lane.length === length && lane.takes.every((takesIt, at) => takesIt === takes[at]),
    )
    const lane = known < 0 ? lanes.push({length, takes}) - 1 : known
    return {lane, width, thickness, volume, pieces: own}
  })
  return {lanes, pieces: placed}
}

/**
 * Group parts and pieces into kinds, and part them into tasks that share no wood.
 * Parts that fit in no piece are in no task; pieces that hold no part neither.
 */
export function tasksOf(parts: readonly StockPart[], pieces: readonly StockPiece[], saw: Saw): Task[] {
  const kerf = wholeUnits(saw.kerfMm)
  const sized = parts.filter(isSized)
  const kinds = partKinds(sized, kerf)
  const step = volumeStep(sized)
  return hangingTogether(pieceKinds(pieces, kinds, saw)).map((group) => {
    const isHeld = kinds.map(() => false)
    for (const {holds} of group) for (const at of holds) isHeld[at] = true
    const held = kinds.flatMap((_, at) => (isHeld[at] ? [at] : []))
    const task = {parts: held.map((at) => kinds[at]!), step, kerf, ...lanesOf(group, held)}
    return {...task, byArea: areaPrices(task)}
  })
}

/** Part pieces into groups that hold no part in common; groups and pieces keep the order of the file. */
function hangingTogether(pieces: readonly FreePiece[]): FreePiece[][] {
  // A group is led by its first piece; the others lead to it.
  const leads = pieces.map((_, p) => p)
  const leadOf = (p: number): number => (leads[p] === p ? p : leadOf(leads[p]!))
  const holders = new Map<number, number>()
  pieces.forEach(({holds}, p) => {
    for (const at of holds) {
      const one = leadOf(holders.get(at) ?? p)
      const other = leadOf(p)
      leads[Math.max(one, other)] = Math.min(one, other)
      holders.set(at, p)
    }
  })
  const groups = new Map<number, FreePiece[]>()
  pieces.forEach((piece, p) => {
    const lead = leadOf(p)
    const group = groups.get(lead)
    if (group) group.push(piece)
    else groups.set(lead, [piece])
  })
  return [...groups.values()]
}
