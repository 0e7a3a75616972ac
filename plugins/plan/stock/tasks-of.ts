import type {Lane, PartKind, PieceKind, Saw, StockPart, StockPiece, Task} from './task.ts'
import {slackUnits, wholeUnits} from './whole-units.ts'

/** What may be cut of a piece: clear length less trim, width and thickness, in whole units; all its volume. */
export interface Usable {
  length: number
  width: number
  thickness: number
  volume: number
  wood: string
}

export function usable(piece: StockPiece, saw: Saw): Usable {
  const [from, to] = piece.clearMm ?? [0, piece.lengthMm]
  const clear = wholeUnits(Math.min(to, piece.lengthMm)) - wholeUnits(Math.max(from, 0))
  return {
    length: clear - 2 * wholeUnits(saw.trimMm),
    width: wholeUnits(piece.widthMm),
    thickness: wholeUnits(piece.thicknessMm),
    volume: piece.lengthMm * piece.widthMm * piece.thicknessMm,
    wood: piece.wood,
  }
}

export const volumeOf = (it: {lengthMm: number; widthMm: number; thicknessMm: number}): number =>
  it.lengthMm * it.widthMm * it.thicknessMm

const sameWood = (part: string, piece: string) => part === 'any' || part === piece

/**
 * Group parts and pieces into kinds, and part them into tasks that share no wood.
 * Parts that fit in no piece are in no task; pieces that hold no part neither.
 */
export function tasksOf(parts: readonly StockPart[], pieces: readonly StockPiece[], saw: Saw): Task[] {
  const kerf = wholeUnits(saw.kerfMm)
  const kinds = new Map<string, PartKind & {thickness: number; wood: string}>()
  for (const part of parts) {
    const [length, width, thickness] = [part.lengthMm, part.widthMm, part.thicknessMm].map(wholeUnits) as [
      number,
      number,
      number,
    ]
    const key = `${width} ${length} ${thickness} ${part.wood}`
    const kind = kinds.get(key)
    if (kind) kind.ids.push(part.id)
    else
      kinds.set(key, {
        length: length + kerf,
        width: width + kerf,
        volume: volumeOf(part),
        ids: [part.id],
        thickness,
        wood: part.wood,
      })
  }
  const partKinds = [...kinds.values()].sort(
    (a, b) => b.width - a.width || b.length - a.length || b.thickness - a.thickness,
  )
  const pieceKinds = new Map<string, PieceKind & {usable: Usable; suits: boolean[]; holds: number[]}>()
  pieces.forEach((piece, index) => {
    const has = usable(piece, saw)
    const key = `${has.length} ${has.width} ${has.thickness} ${has.volume} ${has.wood}`
    const kind = pieceKinds.get(key)
    if (kind) {
      kind.pieces.push(index)
      return
    }
    const suits = partKinds.map(
      (part) =>
        sameWood(part.wood, has.wood) &&
        part.thickness <= has.thickness + slackUnits &&
        part.length - kerf <= has.length + slackUnits,
    )
    const holds = partKinds.flatMap((part, at) =>
      suits[at] && part.width - kerf <= has.width + slackUnits ? [at] : [],
    )
    pieceKinds.set(key, {
      lane: 0,
      width: has.width + kerf + slackUnits,
      thickness: has.thickness,
      volume: has.volume,
      pieces: [index],
      usable: has,
      suits,
      holds,
    })
  })
  return components([...pieceKinds.values()].filter((piece) => piece.holds.length > 0)).map((group) => {
    const held = [...new Set(group.flatMap((piece) => piece.holds))].sort((a, b) => a - b)
    const lanes = new Map<string, Lane & {index: number}>()
    const taskPieces = group.map((piece) => {
      const takes = held.map((at) => piece.suits[at]!)
      const length = piece.usable.length + kerf + slackUnits
      const key = `${length} ${takes.map(Number).join('')}`
      if (!lanes.has(key)) lanes.set(key, {length, takes, index: lanes.size})
      return {
        lane: lanes.get(key)!.index,
        width: piece.width,
        thickness: piece.thickness,
        volume: piece.volume,
        pieces: piece.pieces,
      }
    })
    return {
      parts: held.map((at) => partKinds[at]!),
      lanes: [...lanes.values()].map(({length, takes}) => ({length, takes})),
      pieces: taskPieces,
    }
  })
}

/** Part pieces into groups that hold no part in common. */
function components<P extends {holds: number[]}>(pieces: readonly P[]): P[][] {
  const groups: {holds: Set<number>; members: P[]}[] = []
  for (const piece of pieces) {
    const touching = groups.filter((group) => piece.holds.some((at) => group.holds.has(at)))
    const joined = {
      holds: new Set([...touching.flatMap((group) => [...group.holds]), ...piece.holds]),
      members: [...touching.flatMap((group) => group.members), piece],
    }
    for (const group of touching) groups.splice(groups.indexOf(group), 1)
    groups.push(joined)
  }
  const order = new Map(pieces.map((piece, index) => [piece, index]))
  return groups
    .map((group) => group.members.sort((a, b) => order.get(a)! - order.get(b)!))
    .sort((a, b) => order.get(a[0]!)! - order.get(b[0]!)!)
}
