import type {Check} from './check.ts'
import {oneEach} from './one-each.ts'

/** A screw from which the strings ask more than a third of what it holds, where the joint is not glued. */
export const screwOverloaded: Check = {
  rule: 'screw-overloaded',
  find: (_, {fasteners = []}) =>
    oneEach(
      fasteners.filter(({loadN = 0, withdrawalN, isGlued}) => !isGlued && loadN * 3 > withdrawalN + 1e-6),
      ({of}) => of,
      ({loadN = 0, withdrawalN}) => loadN - withdrawalN / 3,
    ).map(({of, loadN = 0, withdrawalN, sizeForLoad}) => ({
      at: `${of}.size`,
      message: `the strings draw this screw by ${Math.round(loadN)} N, and it comes out at ${Math.round(withdrawalN)} N; a third is the most to ask of it: ${sizeForLoad ? `number ${sizeForLoad} would do, or ` : ''}more screws, more thread, or glue`,
      ...(sizeForLoad !== undefined && {expected: [String(sizeForLoad)]}),
    })),
}
