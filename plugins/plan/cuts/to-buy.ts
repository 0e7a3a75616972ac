import type {Cuts} from '../shape/stock.ts'
import {cutStock} from '../stock/cut-stock.ts'
import type {Saw} from '../stock/task.ts'
import {woodFacts} from '../wood-facts.ts'
import {boardFeet} from './board-feet.ts'
import {type Board, boardsFor} from './boards-for.ts'
import type {WantedPart} from './wanted-part.ts'

type Bought = Cuts['bought'][number]
type Wanted = WantedPart & {id: string}

/** A choice of boards to buy is no cut list: a short search will do. */
const effortEach = 20_000

/**
 * Say which boards to buy for parts that the wood at hand does not give: for each wood and dressed thickness the
 * fewest boards of one size, and of those the smallest.
 */
export function toBuy(parts: readonly Wanted[], saw: Saw): Bought[] {
  const groups = new Map<string, {wood: string; kind: Board[]; parts: Wanted[]}>()
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
  const board =
    fitting.find((one) => leastCount(one, parts) <= count && needed(one, count, parts, saw)) ?? largest
  const {size, lengthMm, widthMm, thicknessMm, countedIn} = board
  return [
    {
      size,
      wood,
      lengthMm,
      widthMm,
      thicknessMm,
      count,
      ...(countedIn && {boardFeet: count * boardFeet({lengthMm, widthMm, thicknessIn: countedIn})}),
    },
  ]
}

/** How many boards of one size the parts take; undefined where `most` do not hold them. */
function needed(board: Board, most: number, parts: readonly Wanted[], saw: Saw): number | undefined {
  const plan = cutStock(
    parts.map((part) => ({...part, wood: 'bought'})),
    Array.from({length: most}, (_, i) => ({...board, id: String(i), wood: 'bought'})),
    saw,
    effortEach,
  )
  return plan.unplaced.length === 0 ? plan.used : undefined
}

function leastCount(board: Board, parts: readonly Wanted[]): number {
  const area = parts.reduce((sum, part) => sum + part.lengthMm * part.widthMm, 0)
  return Math.ceil(area / (board.lengthMm * board.widthMm) - 1e-9)
}
