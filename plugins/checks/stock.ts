import type {Plan} from '../plan/plan.ts'
import type {StockTrouble} from '../plan/stock/stock-at-hand.ts'
import {unplacedRows} from '../plan/stock/unplaced-rows.ts'
import * as words from '../words/findings/stock.ts'
import {rule} from './rule.ts'

/** Write a whole file, of a build of which nothing else is known that needs wood. */
const file = (front: string) => `---\ntitle: Needle box\n${front}\n---\n`

const rack = '- {id: A1, wood: beech, length: 20, width: 3, thickness: 3/4}'

export const stockRules = {
  'piece-unknown': rule({
    severity: 'fault',
    about: 'journal',
    what: 'A piece taken that is not on the rack.',
    why: 'The cut list cannot count on it.',
    mend: 'Mend the name, or list the piece in rack.yaml or under stock.',
    passes: {text: file('started: 2026-03-07\ntake: [A1]'), rack},
    fails: {text: file('started: 2026-03-07\ntake: [A2]'), rack},
    find: (_, plan) => troubles(plan, 'unknown'),
    says: words.pieceUnknown,
  }),
  'piece-gone': rule({
    severity: 'fault',
    about: 'journal',
    what: 'A piece of the rack that another build used before, or that was not there yet.',
    why: 'Builds take their wood in the order in which they were started.',
    mend: 'Take a piece that stands on the rack on that day, or mend the date.',
    passes: {text: file('started: 2026-03-07\ntake: [A1]'), rack},
    fails: {text: file('started: 2026-03-07\ntake: [A1-a]'), rack},
    find: (_, plan) => troubles(plan, 'cut', 'later'),
    says: words.pieceGone,
  }),
  'piece-twice': rule({
    severity: 'fault',
    about: 'journal',
    what: 'A piece of wood named twice.',
    why: 'A piece can be cut once.',
    mend: 'Give each piece its own name; say count for several alike.',
    passes: {text: file('started: 2026-03-07\ntake: [A1]'), rack},
    fails: {text: file('started: 2026-03-07\ntake: [A1, A1]'), rack},
    find: (_, plan) => troubles(plan, 'twice').map((one) => ({...one, cause: one.other})),
    says: words.pieceTwice,
  }),
  'piece-differs': rule({
    severity: 'fault',
    about: 'journal',
    what: 'A board of the build’s own stock that the rack has in another size.',
    why: 'The same name is the same board, and it is counted once.',
    mend: 'Measure the board and mend the size that is wrong, or give one of the two another name.',
    passes: {
      text: file('stock: [{id: A1, wood: beech, length: 20, width: 3, thickness: 3/4}]'),
      rack,
    },
    fails: {
      text: file('stock: [{id: A1, wood: beech, length: 20, width: 2, thickness: 3/4}]'),
      rack,
    },
    find: (_, plan) => troubles(plan, 'differs'),
    says: words.pieceDiffers,
  }),
  'piece-reserved': rule({
    severity: 'remark',
    about: 'journal',
    what: 'A piece that two builds reserve, neither of which is started.',
    why: 'A piece can be cut once.',
    mend: 'Start the one that is to have it, or reserve another piece for the other.',
    passes: {text: file('take: [A1]'), rack, others: [file('stock: []')]},
    fails: {text: file('take: [A1]'), rack, others: [file('take: [A1]')]},
    find: (_, plan) => troubles(plan, 'reserved'),
    says: words.pieceReserved,
  }),
  'clear-outside': rule({
    severity: 'warning',
    about: 'journal',
    what: 'A clear length that does not lie on its piece.',
    why: 'Parts would be planned where there is no wood, or where there is a knot.',
    mend: 'Measure both ends from the same end of the piece, the nearer one first.',
    passes: file('stock: [{id: A1, wood: beech, length: 20, width: 3, thickness: 3/4, clear: [1, 20]}]'),
    fails: file('stock: [{id: A1, wood: beech, length: 20, width: 3, thickness: 3/4, clear: [1, 24]}]'),
    find: (_, plan) => troubles(plan, 'clear'),
    says: words.clearOutside,
  }),
  'size-missing': rule({
    severity: 'warning',
    about: 'journal',
    what: 'A piece or a part without its length, width or thickness.',
    why: 'The cut list leaves it out.',
    mend: 'Measure it and write it down.',
    passes: file('stock: [{id: A1, wood: beech, length: 20, width: 3, thickness: 3/4}]'),
    fails: file('stock: [{id: A1, wood: beech, length: 20, width: 3}]'),
    find: (_, plan) => troubles(plan, 'unsized'),
    says: words.sizeMissing,
  }),
  'part-unplaced': rule({
    severity: 'fault',
    what: 'A part that no piece of the wood at hand gives.',
    why: 'The wood runs out after the first cuts are made.',
    mend: 'Add a piece, make the part smaller, or buy what the cut list says.',
    passes: file(
      'parts: [{name: rail, wood: beech, length: 19, width: 1, thickness: 1/2}]\nstock: [{id: A1, wood: beech, length: 20, width: 3, thickness: 3/4}]',
    ),
    fails: file(
      'parts: [{name: rail, wood: beech, length: 24, width: 1, thickness: 1/2}]\nstock: [{id: A1, wood: beech, length: 20, width: 3, thickness: 3/4}]',
    ),
    find: (_, {cuts}) =>
      cuts?.hasStock
        ? unplacedRows(cuts.parts, cuts.unplaced).map((row) => ({
            ...row,
            at: row.wouldDo?.path ?? row.part.of,
          }))
        : [],
    says: words.partUnplaced,
  }),
  'too-many-parts': rule({
    severity: 'error',
    about: 'file',
    what: 'More parts than a cut list can be made for.',
    why: 'It is most often a slip in a count.',
    mend: 'Look at the counts.',
    passes: file('parts: [{name: pin, wood: beech, length: 1, width: 1/4, thickness: 1/4, count: 30}]'),
    fails:
      'parts:\n' +
      '  - {name: pin, wood: beech, length: 1, width: 1/4, thickness: 1/4, count: 10000}\n'.repeat(3),
    find: (_, {tooManyParts: found}) => (found ? [{...found, at: 'parts'}] : []),
    says: words.tooManyParts,
  }),
  'unknown-wood': rule({
    severity: 'warning',
    about: 'file',
    what: 'A wood that the wood table does not have.',
    why: 'Without density and stiffness, weight and bow cannot be computed.',
    mend: 'Use a name of the wood table, a loose name such as hardwood, or give density and stiffness.',
    passes: 'neck: {width: 1 5/8, thickness: 3/4, wood: black cherry}',
    fails: 'neck: {width: 1 5/8, thickness: 3/4, wood: blak cherry}',
    find: (_, {unknownWoods = []}) => unknownWoods.map((one) => ({...one, at: one.path})),
    says: words.unknownWood,
  }),
}

const troubles = ({stockTroubles = []}: Plan, ...kinds: StockTrouble['kind'][]): StockTrouble[] =>
  stockTroubles.filter(({kind}) => kinds.includes(kind))
