import type {Plan} from '../plan/shape/plan.ts'
import type {StockTrouble} from '../plan/shape/stock.ts'
import type {Finding} from './check.ts'

/** Word what is wrong with the pieces that a build names, for one kind of trouble. */
export const stockTrouble = (
  {stockTroubles = []}: Plan,
  kinds: readonly StockTrouble['kind'][],
  says: (trouble: StockTrouble) => Omit<Finding, 'at'>,
): Finding[] =>
  stockTroubles.filter(({kind}) => kinds.includes(kind)).map((one) => ({at: one.at, ...says(one)}))
