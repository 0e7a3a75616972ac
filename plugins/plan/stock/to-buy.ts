import {cutStock, type Saw} from '../../cut-stock/cut-stock.ts'
import {
  boardLengths,
  hardwoodThicknesses,
  hardwoodWidths,
  softwoodThicknesses,
  softwoodWidths,
} from '../../tables/lumber.ts'
import {inchMm} from '../../tables/units.ts'
import type {WoodRow} from '../../tables/woods.ts'
import {woodFacts} from '../kit/woods.ts'
import type {WantedPart} from './part.ts'

/** Boards to buy, of one size. */
export interface Bought extends BoardSize {
  wood: string
  count: number
  /** Of all of them; hardwood only. */
  boardFeet?: number | undefined
}

/** What a shop sells a board by, and its dressed size in mm. */
export interface BoardSize {
  nominal: {
    thickness: string
    /** Of softwood; hardwood is as wide as it comes. */
    width?: string | undefined
    feet: number
  }
  lengthMm: number
  widthMm: number
  thicknessMm: number
}

/**
 * Count board feet: thickness × width × length in inches over 144; stock under 1 in counts as 1 in thick.
 * Example: 1 × 9 × 96 in is 6. Source: American Hardwood Export Council on the NHLA rules.
 */
export function boardFeet(size: {lengthMm: number; widthMm: number; thicknessIn: number}): number {
  return (Math.max(size.thicknessIn, 1) * (size.widthMm / inchMm) * (size.lengthMm / inchMm)) / 144
}

/** A board that a shop sells. */
interface Board extends BoardSize {
  /** What its thickness counts as in board feet; hardwood only. */
  countedIn?: number
}

/**
 * List the boards a wood is sold as, of the least dressed thickness that serves (mm), by growing volume: softwood in
 * dressed sizes by the standard, hardwood by thickness, width and length. Empty where none is thick enough.
 */
export function boardsFor(kind: WoodRow['kind'] | undefined, thickMm: number): readonly Board[] {
  const sold = kind === 'softwood' || kind === undefined ? softwood : hardwood
  return sold.find(({mm}) => mm >= thickMm - 1e-6)?.boards ?? []
}

const byVolume = (boards: Board[]) => boards.sort((a, b) => a.widthMm * a.lengthMm - b.widthMm * b.lengthMm)

/** All boards of each thickness. */
const softwood = softwoodThicknesses.map(({nominal: thickness, mm: thicknessMm}) => {
  const boards = softwoodWidths
    .filter((width) => width.mm >= thicknessMm - 1e-6)
    .flatMap((width) =>
      boardLengths.map(({feet, mm: lengthMm}): Board => {
        const nominal = {thickness, width: width.nominal, feet}
        return {nominal, lengthMm, widthMm: width.mm, thicknessMm}
      }),
    )
  return {mm: thicknessMm, boards: byVolume(boards)}
})

const hardwood = hardwoodThicknesses.map(({nominal: thickness, mm: thicknessMm, countedIn}) => {
  const boards = hardwoodWidths.flatMap((widthMm) =>
    boardLengths.map(
      ({feet, mm: lengthMm}): Board => ({
        nominal: {thickness, feet},
        lengthMm,
        widthMm,
        thicknessMm,
        countedIn,
      }),
    ),
  )
  return {mm: thicknessMm, boards: byVolume(boards)}
})

type Wanted = WantedPart & {id: string}

/** A choice of boards to buy is no cut list: a short search will do. */
const effortEach = 20_000

/** For more parts than this none is searched for: what the first attempt takes is bought. */
const mostSearched = 2000

/**
 * Say which boards to buy for parts that the wood at hand does not give: for each wood and dressed thickness the
 * fewest boards of one size, and of those the smallest.
 */
export function toBuy(parts: readonly Wanted[], saw: Saw): Bought[] {
  const groups = new Map<string, {wood: string; kind: readonly Board[]; parts: Wanted[]}>()
  for (const part of parts) {
    const facts = woodFacts.get(part.woodRow)
    const boards = boardsFor(
      part.woodRow === 'any' ? 'softwood' : facts ? facts.kind : 'hardwood',
      part.thicknessMm,
    )
    if (boards.length === 0) continue
    const key = `${part.woodRow} ${boards[0]!.thicknessMm}`
    const group = groups.get(key) ?? {wood: part.wood, kind: boards, parts: []}
    group.parts.push(part)
    groups.set(key, group)
  }
  return [...groups.values()].flatMap(({wood, kind, parts: own}) => fewest(wood, kind, own, saw))
}

function fewest(wood: string, boards: readonly Board[], parts: readonly Wanted[], saw: Saw): Bought[] {
  const fitting = boards.filter((board) =>
    parts.every(
      (part) =>
        part.widthMm <= board.widthMm + 1e-6 && part.lengthMm <= board.lengthMm - 2 * saw.trimMm + 1e-6,
    ),
  )
  const largest = fitting.at(-1)
  const count = largest && needed(largest, parts.length, parts, saw)
  if (!count) return []
  const isEnough = (one: Board) => {
    const least = leastCount(one, parts, saw)
    const packs = () => filled(one, count, parts, saw) !== undefined
    return least <= count && (packs() || searched(one, count, parts, saw) !== undefined)
  }
  const board = fitting.find(isEnough) ?? largest
  const {countedIn, ...sold} = board
  const feet = countedIn && count * boardFeet({...sold, thicknessIn: countedIn})
  return [{...sold, wood, count, boardFeet: feet}]
}

/** How many boards of one size the parts take; undefined where `most` do not hold them. */
function needed(board: Board, most: number, parts: readonly Wanted[], saw: Saw): number | undefined {
  const least = leastCount(board, parts, saw)
  if (parts.length > mostSearched) return filled(board, most, parts, saw)
  return least <= most && filled(board, least, parts, saw) ? least : searched(board, most, parts, saw)
}

/**
 * Count the boards that parts fill at the first attempt, of at most so many: the widest first, each into the first
 * strip that has room for it, else into a new one. Where it fails, a search may still find a way.
 */
function filled(
  board: Board,
  most: number,
  parts: readonly Wanted[],
  {kerfMm, trimMm}: Saw,
): number | undefined {
  const boards: {leftMm: number; strips: number[]}[] = []
  const longMm = board.lengthMm - 2 * trimMm + kerfMm
  for (const part of [...parts].sort((a, b) => b.widthMm - a.widthMm || b.lengthMm - a.lengthMm)) {
    const [partMm, wideMm] = [part.lengthMm + kerfMm, part.widthMm + kerfMm]
    const into = boards.find(({strips}) => strips.some((mm) => mm >= partMm))
    const at = into?.strips.findIndex((mm) => mm >= partMm) ?? 0
    if (into) into.strips[at]! -= partMm
    else {
      const rest = boards.find(({leftMm}) => leftMm >= wideMm) ?? {leftMm: board.widthMm + kerfMm, strips: []}
      if (rest.strips.length === 0) boards.push(rest)
      if (boards.length > most || rest.leftMm < wideMm || longMm < partMm) return undefined
      rest.leftMm -= wideMm
      rest.strips.push(longMm - partMm)
    }
  }
  return boards.length
}

/** Search for the fewest boards of one size; undefined where `most` do not hold the parts. */
function searched(board: Board, most: number, parts: readonly Wanted[], saw: Saw): number | undefined {
  if (parts.length > mostSearched) return undefined
  const plan = cutStock(
    parts.map((part) => ({...part, wood: 'bought'})),
    Array.from({length: most}, (_, i) => ({...board, id: String(i), wood: 'bought'})),
    saw,
    effortEach,
  )
  return plan.unplaced.length === 0 ? plan.used : undefined
}

/**
 * Give a number of boards that the parts cannot do with fewer of: by their area, and by the length of those wider than
 * half a board, none of which lies beside another.
 */
function leastCount(board: Board, parts: readonly Wanted[], {kerfMm, trimMm}: Saw): number {
  const area = parts.reduce((sum, part) => sum + part.lengthMm * part.widthMm, 0)
  const wideMm = parts.reduce(
    (sum, {lengthMm, widthMm}) => sum + (2 * widthMm + kerfMm > board.widthMm + 0.1 ? lengthMm + kerfMm : 0),
    0,
  )
  const [byArea, byLength] = [
    area / (board.lengthMm * board.widthMm),
    wideMm / (board.lengthMm - 2 * trimMm + kerfMm + 0.1),
  ]
  return Math.ceil(Math.max(byArea, byLength) - 1e-9)
}
