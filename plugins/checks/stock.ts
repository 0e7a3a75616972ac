import {writeLength} from '../build-file/quantities/write-length.ts'
import type {Plan} from '../plan/shape/plan.ts'
import type {StockTrouble} from '../plan/shape/stock.ts'
import {unplacedRows} from '../plan/unplaced-parts.ts'
import type {Check, Finding} from './rule.ts'

/** A piece taken that was never on the rack. */
export const pieceUnknown: Check = {
  rule: 'piece-unknown',
  find: (_, plan) =>
    stockTrouble(plan, ['unknown'], ({id, nearest}) => ({
      message: `there is no ${id} on the rack${nearest ? `; ${nearest} may be meant` : '; list it in rack.yaml, or under stock'}`,
      ...(nearest && {expected: [nearest]}),
    })),
}

/** A piece taken after another build has cut it, or before it was there. */
export const pieceGone: Check = {
  rule: 'piece-gone',
  find: (_, plan) =>
    stockTrouble(plan, ['cut', 'later'], ({kind, id, by, on}) => ({
      message:
        kind === 'cut'
          ? `${id} was cut before, for ${by}: take another piece, or one of its offcuts`
          : on
            ? `${id} came into the shop on ${on}, after this build was started`
            : `${id} is an offcut that is not there yet when this build is started`,
    })),
}

/** One piece of wood named twice. */
export const pieceTwice: Check = {
  rule: 'piece-twice',
  find: (_, plan) =>
    stockTrouble(plan, ['twice'], ({id, other}) => ({
      message: `${id} is named twice, and a piece can be cut once: give the other one another name, or take one out`,
      ...(other && {cause: other}),
    })),
}

/** Wood taken from the rack by a build that has no starting date. */
export const needsStarted: Check = {
  rule: 'needs-started',
  find: (_, plan) =>
    stockTrouble(plan, ['undated'], ({id}) => ({
      message: `${id} is taken from the rack, but this build has no date: give started, since builds take their wood in that order`,
    })),
}

/** A clear length that does not lie on its piece. */
export const clearOutside: Check = {
  rule: 'clear-outside',
  find: (_, plan) =>
    stockTrouble(plan, ['clear'], ({id, mm}) => ({
      message:
        mm === undefined
          ? `the clear length of ${id} ends before it starts: give the nearer end first`
          : `the clear length of ${id} ends past the piece, which is ${writeLength(mm, plan)} long`,
      ...(mm !== undefined && {expected: [writeLength(mm, plan, 'down')]}),
    })),
}

/** A piece or a part without one of its three sizes. */
export const sizeMissing: Check = {
  rule: 'size-missing',
  find: (_, plan) =>
    stockTrouble(plan, ['unsized'], ({id, lacks}) => ({
      message: `${id} has no ${lacks}, so it is left out of the cut list`,
    })),
}

/** Word what is wrong with the pieces that a build names, for one kind of trouble. */
const stockTrouble = (
  {stockTroubles = []}: Plan,
  kinds: readonly StockTrouble['kind'][],
  says: (trouble: StockTrouble) => Omit<Finding, 'at'>,
): Finding[] =>
  stockTroubles.filter(({kind}) => kinds.includes(kind)).map((one) => ({at: one.at, ...says(one)}))

/** A part that no piece of the wood at hand gives; silent where the build names no wood at all. */
export const partUnplaced: Check = {
  rule: 'part-unplaced',
  find: (_, {cuts, ...plan}) => {
    if (!cuts?.hasStock) return []
    return unplacedRows(cuts).map(({of, which, near, wouldDo}) => {
      const text = wouldDo && writeLength(wouldDo.mm, plan, 'down')
      return {
        at: wouldDo?.path ?? of,
        message: `no piece at hand gives ${which}: ${near}${text ? `; ${text} would do` : '; the cut list says what to buy'}`,
        ...(text && {expected: [text]}),
      }
    })
  },
}

/** More parts than a cut list can be made for. */
export const tooManyParts: Check = {
  rule: 'too-many-parts',
  find: (_, {tooManyParts: found}) =>
    found
      ? [
          {
            at: 'parts',
            message: `${found.count} parts are listed; a cut list is made for ${found.most} at most`,
          },
        ]
      : [],
}

/** Find a wood that neither the table nor the build says enough of to plan with. */
export const unknownWood: Check = {
  rule: 'unknown-wood',
  find: (_, plan) =>
    (plan.unknownWoods ?? []).map(({path, wood, nearest}) => ({
      at: path,
      message: `${wood} is not in the wood table${nearest ? `; was ${nearest} meant?` : ''}${nearest ? ' Else' : ';'} give its own density and stiffness, or a loose name: hardwood, softwood, unknown`,
      ...(nearest ? {expected: [nearest]} : {expected: ['unknown']}),
    })),
}
