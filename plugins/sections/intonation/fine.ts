import type {Plan} from '../../plan/shape/plan.ts'
import type {Ruler} from '../kit.ts'

/** Give the ruler that a saddle is placed by: finer than a neck is marked by, since less than a millimetre is heard. */
export function fine({units}: Pick<Plan, 'units'>): Ruler {
  return {units, rulerMm: units === 'in' ? 25.4 / 64 : 0.1}
}
