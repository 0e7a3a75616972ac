import type {Fastener} from '../plan/fasteners/fastener.ts'
import type {Plan} from '../plan/plan.ts'
import {tooNear as nearEdge} from '../words/findings/conflicts.ts'
import * as words from '../words/findings/screws.ts'
import {rule, tooNear} from './rule.ts'
import {oneEach, screws} from './screws.ts'

/** Write screws down through the top into a block across the box, beside the neck or under it. */
const topScrews = (off: string) =>
  screws(
    `size: 4, length: 1/2, along: [1 1/4], ${off}, head: round, through: [top]`,
    'blocks: [{along: 1 1/4, length: 1 1/4, width: 6, thickness: 5/8}]',
  ).replace('into: neck', 'into: block')

export const screwPlaceRules = {
  'screw-near-edge': rule({
    severity: 'warning',
    what: 'A screw too near an edge or an end of the wood.',
    why: 'The wood splits: keep two and a half shanks from an edge, five from an end. Recommended for bored wood screws by the commentary to the National Design Specification, from memory.',
    mend: 'Move the screw inwards, or take a thinner one.',
    passes: screws('size: 6, length: 1, at: [17 1/4], off: [0], through: [block, top]'),
    fails: screws('size: 6, length: 1, at: [17 1/4], off: [3/4], through: [block, top]'),
    find: (_, plan) => tooNear(plan, 'screw-edge'),
    says: nearEdge,
  }),
  'screw-off-box': rule({
    severity: 'fault',
    what: 'A screw through the top or the back that stands past the edge of the box.',
    why: 'There is nothing there for its head to hold.',
    mend: 'Move the screw over the box.',
    passes: screws('size: 6, length: 3/4, at: [17 1/4], through: [washer, top]'),
    fails: screws('size: 6, length: 3/4, at: [15], through: [washer, top]'),
    find: (_, {fasteners = []}) =>
      oneEach(
        fasteners.filter(({offBox}) => offBox),
        ({offBox}) => offBox!.path,
        () => 0,
      ).map(({offBox}) => ({at: offBox!.path, mm: offBox!.mm})),
    says: words.screwOffBox,
  }),
  'top-screw-covered': rule({
    severity: 'fault',
    what: 'A screw of a top that comes off whose head lies under the neck.',
    why: 'No screwdriver reaches it once the neck is on, and the top stays where it is.',
    mend: 'Move it out beside the neck.',
    passes: topScrews('off: [1 7/8]'),
    fails: topScrews('off: [1/2]'),
    find: (_, {fasteners = []}) =>
      fasteners.flatMap(({covered}) => (covered ? [{...covered, at: covered.wouldDo.path}] : [])),
    says: words.topScrewCovered,
  }),
  'screw-misses-block': rule({
    severity: 'fault',
    what: 'A screw that is to meet a block where there is none.',
    why: 'It would hold in nothing but the top.',
    mend: 'Move the screw onto the block, or the block under the screw.',
    passes: screws('size: 6, length: 1, at: [17 1/4], through: [block, top]'),
    fails: screws('size: 6, length: 1, at: [20], through: [block, top]'),
    find: (_, {box, fasteners = [], screws = []}) => {
      const isListed = box?.blocks !== undefined
      return oneEach(
        fasteners.filter(({astray}) => astray),
        ({of, stationMm, astray}) => astray?.wouldDo?.path ?? (isListed ? `${of} ${stationMm}` : of),
        () => 0,
      ).map((screw) => {
        const {of, into, astray} = screw
        const path = isListed ? offPathOf(screw, screws) : `${of}.through`
        return {at: astray?.wouldDo?.path ?? path ?? of, into, isListed, wouldDo: astray?.wouldDo}
      })
    },
    says: words.screwMissesBlock,
  }),
}

/** Find where the build file says how far off the centre line a screw stands. */
const offPathOf = ({of, stationMm, offMm}: Fastener, screws: NonNullable<Plan['screws']>) =>
  screws.find((one) => one.of === of && one.stationMm === stationMm && one.offMm === offMm)?.offPath
