import type {Cuts} from '../shape/stock.ts'
import {cutStock} from '../stock/cut-stock.ts'
import type {Saw, StockPart, StockPiece} from '../stock/task.ts'
import type {Lack} from './nearest-piece.ts'
import type {WantedPart} from './wanted-part.ts'

type Wanted = WantedPart & {id: string}

/** To try one other size no long search is needed. */
const effort = 200_000

/**
 * Where a single part that the file lists found no piece for want of one measure, give the largest mark of the ruler
 * (mm) at which the nearest piece gives it beside all the others.
 */
export function sizeThatFits(
  part: Wanted,
  all: readonly (StockPart & {of: string})[],
  pieces: readonly StockPiece[],
  saw: Saw,
  lacks: Lack | undefined,
  rulerMm: number,
): Cuts['unplaced'][number]['wouldDo'] {
  if (!lacks || !part.of.startsWith('parts.') || all.filter(({of}) => of === part.of).length > 1)
    return undefined
  const key = `${lacks.what}Mm` as const
  const mm = Math.floor((part[key] - lacks.mm) / rulerMm + 1e-6) * rulerMm
  if (mm <= 0) return undefined
  const tried = all.map((one) => (one.id === part.id ? {...one, [key]: mm} : one))
  return cutStock(tried, pieces, saw, effort).unplaced.length === 0
    ? {path: `${part.of}.${lacks.what}`, mm}
    : undefined
}
