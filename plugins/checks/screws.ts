import type {Build} from '../build-file/schema/build.ts'
import type {Fastener} from '../plan/fasteners/fastener.ts'
import * as words from '../words/findings/screws.ts'
import {rule} from './rule.ts'

/** Write screws up through a box's top, and through a block where one is asked for, into a neck on top of it. */
export const screws = (
  row: string,
  blocks = 'blocks: [{along: 1 1/4, length: 1 1/4, width: 4 1/2, thickness: 5/16}]',
) =>
  `neck: {joins: on top, width: 1 5/8, thickness: 13/16}\nbox: {length: 10, width: 7, depth: 2, at: 16, top: {thickness: 1/8, held: screwed}, ${blocks}}\nscrews: [{${row}, into: neck}]`

export const screwRules = {
  'too-many-screws': rule({
    severity: 'error',
    about: 'file',
    what: 'More screws than can be planned.',
    why: 'Every place along is combined with every one across, so a long list of both is most often a slip.',
    mend: 'Look at the lists of at, off and down: each row is for screws that stand in a grid.',
    passes: screws('size: 6, length: 1, at: [17 1/4], off: [0], through: [block, top]'),
    fails: screws(`size: 6, length: 1, at: [${Array(30).fill('18')}], off: [${Array(30).fill('0')}]`),
    find: (_, {tooManyScrews: found}) => (found ? [{...found, at: 'screws'}] : []),
    says: words.tooManyScrews,
  }),
  'screw-comes-out': rule({
    severity: 'fault',
    what: 'A screw whose tip comes within 1/8 in of the far face, or out of it.',
    why: 'A tip that shows is felt by the hand; one just under the face raises a bump. Common practice, no source.',
    mend: 'Take the longest screw that is proposed, or put more wood under its head.',
    passes: screws('size: 6, length: 1, at: [17 1/4], through: [block, top]'),
    fails: screws('size: 6, length: 1 1/2, at: [17 1/4], through: [block, top]'),
    find: ({values}, {fasteners = []}) =>
      oneEach(
        fasteners.filter(({lengthMm, longestMm = lengthMm}) => lengthMm > longestMm + 1e-6),
        ({of}) => of,
        ({lengthMm, longestMm = 0}) => lengthMm - longestMm,
      ).map(({of, tipToFaceMm = 0, longestMm = 0, shortestMm, into, way}) => ({
        at: `${of}.length`,
        length: lengthOf(of, values),
        tipToFaceMm,
        into,
        way,
        longestMm,
        isLeftShort: longestMm < shortestMm - 1e-6,
      })),
    says: words.screwComesOut,
  }),
  'screw-thread-short': rule({
    severity: 'warning',
    what: 'A screw with too little thread in the piece that holds it.',
    why: 'Less than two shanks, or 1/4 in, of thread strips out; the smooth shank holds nothing, and is a third of the screw unless screws[].thread says otherwise. Common practice, no source.',
    mend: 'Take a longer screw, one with more thread, or less wood under its head.',
    passes: screws('size: 6, length: 1, at: [17 1/4], through: [block, top]'),
    fails: screws('size: 6, length: 5/8, at: [17 1/4], through: [block, top]'),
    find: ({values}, {fasteners = []}) =>
      oneEach(
        fasteners.filter(
          ({lengthMm, shortestMm, ownThreadMm, leastThreadMm}) =>
            lengthMm < shortestMm - 1e-6 || ownThreadMm < leastThreadMm - 1e-6,
        ),
        ({of}) => of,
        ({lengthMm, shortestMm}) => shortestMm - lengthMm,
      ).map((screw) => {
        const {of, into, threadMm, shortestMm, longestMm = shortestMm} = screw
        const isOfThread = screw.lengthMm >= shortestMm - 1e-6
        return {
          at: isOfThread ? `${of}.thread` : `${of}.length`,
          severity: threadMm <= 0 ? 'fault' : undefined,
          length: lengthOf(of, values),
          threadMm,
          into,
          isOfThread,
          shortestMm: isOfThread
            ? screw.leastThreadMm
            : longestMm >= shortestMm - 1e-6
              ? shortestMm
              : undefined,
        }
      }),
    says: words.screwThreadShort,
  }),
  'screw-thread-long': rule({
    severity: 'fault',
    what: 'A screw with more thread than it is long.',
    why: 'One of the two was measured on another screw, and what it holds would be overstated.',
    mend: 'Measure the thread again, from the tip to where it ends; or leave it out.',
    passes: screws('size: 6, length: 1, thread: 5/8, at: [17 1/4], through: [block, top]'),
    fails: screws('size: 6, length: 1, thread: 1 1/4, at: [17 1/4], through: [block, top]'),
    find: ({values}, {fasteners = []}) =>
      oneEach(
        fasteners.filter(({isThreadTooLong}) => isThreadTooLong),
        ({of}) => of,
        () => 0,
      ).map(({of, lengthMm}) => ({
        at: `${of}.thread`,
        cause: `${of}.length`,
        length: lengthOf(of, values),
        lengthMm,
      })),
    says: words.screwThreadLong,
  }),
  'screw-head-thin': rule({
    severity: 'warning',
    what: 'A screw head on less than 1/4 in of wood, with neither block nor washer.',
    why: 'The head pulls through thin wood. Common practice, no source.',
    mend: 'Put a washer or a glued block under the head.',
    passes: screws('size: 6, length: 3/4, at: [17 1/4], through: [washer, top]'),
    fails: screws('size: 6, length: 3/4, at: [17 1/4], through: [top]'),
    find: (_, {fasteners = []}) =>
      oneEach(
        fasteners.filter(
          // What only holds a top down may stand on it with a round head.
          ({underHeadMm, leastUnderHeadMm, hasPad, holdsTop, head}) =>
            !hasPad && !(holdsTop && head === 'round') && underHeadMm < leastUnderHeadMm - 1e-6,
        ),
        ({of}) => of,
        ({underHeadMm}) => -underHeadMm,
      ).map(({of, underHeadMm, through, joinsNeck}) => ({
        at: `${of}.through`,
        severity: joinsNeck ? undefined : 'remark',
        underHeadMm,
        through,
      })),
    says: words.screwHeadThin,
  }),
  'screw-overloaded': rule({
    severity: 'fault',
    what: 'A screw from which the strings ask more than a third of what it holds.',
    why: 'Holding power is that of a sudden pull in clear wood; under a load that stays, a third is what to count on (Wood Handbook, Eq. 8-10; the third is common practice, no source).',
    mend: 'Take larger or more screws, more thread, or glue the joint; at the end of a box set them lower, where they have more leverage.',
    passes:
      'neck: {joins: end, width: 1 5/8, thickness: 1, wood: sugar maple}\nbox: {length: 10, width: 8, depth: 2 1/2, at: 16, blocks: [{along: 5/8, length: 3/4, width: 3, thickness: 1 3/4}]}\nanchors: {at: 26}\nscrews: [{size: 8, length: 2, at: [16], through: [block, side], into: neck}]',
    fails:
      'neck: {joins: end, width: 1 5/8, thickness: 1, wood: northern white cedar}\nbox: {length: 10, width: 8, depth: 2 1/2, at: 16, blocks: [{along: 5/8, length: 3/4, width: 3, thickness: 1 3/4}]}\nanchors: {at: 26}\nscrews: [{size: 4, length: 1 1/2, at: [16], through: [block, side], into: neck}]',
    find: (_, {fasteners = []}) =>
      oneEach(
        fasteners.filter(({overN, isGlueEnough}) => !isGlueEnough && overN !== undefined),
        ({of}) => of,
        ({overN = 0}) => overN,
      ).map((screw) => ({...screw, at: `${screw.of}.size`})),
    says: words.screwOverloaded,
  }),
}

/** Of the screws of one row of the build file, which share what is to change, keep the worst. */
export function oneEach(
  screws: readonly Fastener[],
  where: (screw: Fastener) => string,
  worse: (screw: Fastener) => number,
): Fastener[] {
  const worst = new Map<string, Fastener>()
  for (const screw of screws) {
    const known = worst.get(where(screw))
    if (!known || worse(screw) > worse(known)) worst.set(where(screw), screw)
  }
  return [...worst.values()]
}

/** Give the length of a row of screws as it is written. */
const lengthOf = (row: string, values: Build['values']): string | undefined =>
  values.screws?.[Number(row.split('.')[1]) - 1]?.length?.text
