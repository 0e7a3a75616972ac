import {writeLength} from '../build-file/quantities/write-length.ts'
import type {Plan} from '../plan/plan.ts'
import type {StockTrouble} from '../plan/stock-at-hand.ts'
import {unplacedRows} from '../words/cut-list.ts'
import {type Finding, rule} from './rule.ts'

export const stockRules = {
  'piece-unknown': rule({
    severity: 'fault',
    about: 'journal',
    what: 'A piece taken that is not on the rack.',
    why: 'The cut list cannot count on it.',
    mend: 'Mend the name, or list the piece in rack.yaml or under stock.',
    find: (_, plan) =>
      stockTrouble(plan, ['unknown'], ({id, nearest}) => ({
        message: `there is no ${id} on the rack${nearest ? `; ${nearest} may be meant` : '; list it in rack.yaml, or under stock'}`,
        ...(nearest && {expected: [nearest]}),
      })),
  }),
  'piece-gone': rule({
    severity: 'fault',
    about: 'journal',
    what: 'A piece taken from the rack after another build cut it, or before it was there.',
    why: 'Builds take their wood in the order in which they were started.',
    mend: 'Take a piece that stands on the rack on that day, or mend the date.',
    find: (_, plan) =>
      stockTrouble(plan, ['cut', 'later'], ({kind, id, by, on}) => ({
        message:
          kind === 'cut'
            ? `${id} was cut before, for ${by}: take another piece, or one of its offcuts`
            : on
              ? `${id} came into the shop on ${on}, after this build was started`
              : `${id} is an offcut that is not there yet when this build is started`,
      })),
  }),
  'piece-twice': rule({
    severity: 'fault',
    about: 'journal',
    what: 'A piece of wood named twice.',
    why: 'A piece can be cut once.',
    mend: 'Give each piece its own name; say count for several alike.',
    find: (_, plan) =>
      stockTrouble(plan, ['twice'], ({id, other}) => ({
        message: `${id} is named twice, and a piece can be cut once: give the other one another name, or take one out`,
        ...(other && {cause: other}),
      })),
  }),
  'needs-started': rule({
    severity: 'error',
    about: 'journal',
    what: 'Wood taken from the rack by a build without a starting date.',
    why: 'Builds take their wood in the order in which they were started.',
    mend: 'Give started, or list the pieces under stock.',
    find: (_, plan) =>
      stockTrouble(plan, ['undated'], ({id}) => ({
        message: `${id} is taken from the rack, but this build has no date: give started, since builds take their wood in that order`,
      })),
  }),
  'clear-outside': rule({
    severity: 'warning',
    about: 'journal',
    what: 'A clear length that does not lie on its piece.',
    why: 'Parts would be planned where there is no wood, or where there is a knot.',
    mend: 'Measure both ends from the same end of the piece, the nearer one first.',
    find: (_, plan) =>
      stockTrouble(plan, ['clear'], ({id, mm}) => ({
        message:
          mm === undefined
            ? `the clear length of ${id} ends before it starts: give the nearer end first`
            : `the clear length of ${id} ends past the piece, which is ${writeLength(mm, plan)} long`,
        ...(mm !== undefined && {expected: [writeLength(mm, plan, 'down')]}),
      })),
  }),
  'size-missing': rule({
    severity: 'warning',
    about: 'journal',
    what: 'A piece or a part without its length, width or thickness.',
    why: 'The cut list leaves it out.',
    mend: 'Measure it and write it down.',
    find: (_, plan) =>
      stockTrouble(plan, ['unsized'], ({id, lacks}) => ({
        message: `${id} has no ${lacks}, so it is left out of the cut list`,
      })),
  }),
  'part-unplaced': rule({
    severity: 'fault',
    what: 'A part that no piece of the wood at hand gives.',
    why: 'The wood runs out after the first cuts are made.',
    mend: 'Add a piece, make the part smaller, or buy what the cut list says.',
    find: (_, {cuts, ...plan}) => {
      if (!cuts?.hasStock) return []
      return unplacedRows(cuts, plan).map(({of, which, near, wouldDo}) => {
        const text = wouldDo && writeLength(wouldDo.mm, plan, 'down')
        return {
          at: wouldDo?.path ?? of,
          message: `no piece at hand gives ${which}: ${near}${text ? `; ${text} would do` : '; the cut list says what to buy'}`,
          ...(text && {expected: [text]}),
        }
      })
    },
  }),
  'too-many-parts': rule({
    severity: 'error',
    about: 'file',
    what: 'More parts than a cut list can be made for.',
    why: 'It is most often a slip in a count.',
    mend: 'Look at the counts.',
    find: (_, {tooManyParts: found}) =>
      found
        ? [
            {
              at: 'parts',
              message: `${found.count} parts are listed; a cut list is made for ${found.most} at most`,
            },
          ]
        : [],
  }),
  'unknown-wood': rule({
    severity: 'warning',
    about: 'file',
    what: 'A wood that the wood table does not have.',
    why: 'Without density and stiffness, weight and bow cannot be computed.',
    mend: 'Use a name of the wood table, a loose name such as hardwood, or give density and stiffness.',
    find: (_, plan) =>
      (plan.unknownWoods ?? []).map(({path, wood, nearest}) => ({
        at: path,
        message: `${wood} is not in the wood table${nearest ? `; was ${nearest} meant?` : ''}${nearest ? ' Else' : ';'} give its own density and stiffness, or a loose name: hardwood, softwood, unknown`,
        ...(nearest ? {expected: [nearest]} : {expected: ['unknown']}),
      })),
  }),
}

/** Word what is wrong with the pieces that a build names, for one kind of trouble. */
const stockTrouble = (
  {stockTroubles = []}: Plan,
  kinds: readonly StockTrouble['kind'][],
  says: (trouble: StockTrouble) => Omit<Finding, 'at'>,
): Finding[] =>
  stockTroubles.filter(({kind}) => kinds.includes(kind)).map((one) => ({at: one.at, ...says(one)}))
