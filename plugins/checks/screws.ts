import {writeLength} from '../build-file/quantities/write-length.ts'
import type {Fastener} from '../plan/fasteners/fasteners.ts'
import {rule} from './rule.ts'

export const screwRules = {
  'screw-comes-out': rule({
    severity: 'fault',
    what: 'A screw whose tip comes within 1/8 in of the far face, or out of it.',
    why: 'A tip that shows is felt by the hand; one just under the face raises a bump. Common practice, no source.',
    mend: 'Take the longest screw that is proposed, or put more wood under its head.',
    find: ({values}, {fasteners = [], ...plan}) =>
      oneEach(
        fasteners.filter(({lengthMm, longestMm = lengthMm}) => lengthMm > longestMm + 1e-6),
        ({of}) => of,
        ({lengthMm, longestMm = 0}) => lengthMm - longestMm,
      ).map(({of, tipToFaceMm = 0, longestMm = 0, shortestMm, farFace}) => {
        const longest = longestMm > 0 ? writeLength(longestMm, plan, 'down') : undefined
        const found =
          Math.abs(tipToFaceMm) < plan.rulerMm - 1e-6
            ? `ends level with ${farFace}`
            : tipToFaceMm <= 0
              ? `comes out ${writeLength(-tipToFaceMm, plan, 'up')} past ${farFace}`
              : `ends ${writeLength(tipToFaceMm, plan, 'down')} under ${farFace}`
        const length = values.screws?.[Number(of.split('.')[1]) - 1]?.length?.text
        return {
          at: `${of}.length`,
          message: `a screw of ${length} ${found}; ${longest ? `${longest} is the longest that stays ${writeLength(25.4 / 8, plan)} below it` : 'no screw is short enough'}`,
          ...(longest && {expected: [longest]}),
          ...(longestMm < shortestMm - 1e-6 && {
            note: 'A screw of that length has too little thread: take less wood under its head as well.',
          }),
        }
      }),
  }),
  'screw-thread-short': rule({
    severity: 'warning',
    what: 'A screw with too little thread in the piece that holds it.',
    why: 'Less than two shanks, or 1/4 in, of thread strips out. Common practice, no source.',
    mend: 'Take a longer screw, or less wood under its head.',
    find: ({values}, {fasteners = [], ...plan}) =>
      oneEach(
        fasteners.filter(({lengthMm, shortestMm}) => lengthMm < shortestMm - 1e-6),
        ({of}) => of,
        ({lengthMm, shortestMm}) => shortestMm - lengthMm,
      ).map(({of, into, threadMm, shortestMm, longestMm = shortestMm}) => {
        const shortest = writeLength(shortestMm, plan, 'up')
        const length = values.screws?.[Number(of.split('.')[1]) - 1]?.length?.text
        const found =
          threadMm <= 0
            ? `does not reach the ${into}`
            : `has ${writeLength(threadMm, plan, 'down')} of thread in the ${into}`
        const isPossible = longestMm >= shortestMm - 1e-6
        return {
          at: `${of}.length`,
          message: `a screw of ${length} ${found}, too little to hold; ${isPossible ? `${shortest} is the shortest that would do` : 'take less wood under its head'}`,
          ...(isPossible && {expected: [shortest]}),
          ...(threadMm <= 0 && {severity: 'fault' as const}),
        }
      }),
  }),
  'screw-head-thin': rule({
    severity: 'warning',
    what: 'A screw head on less than 1/4 in of wood, with neither block nor washer.',
    why: 'The head pulls through thin wood. Common practice, no source.',
    mend: 'Put a washer or a glued block under the head.',
    find: (_, {fasteners = [], ...plan}) =>
      oneEach(
        fasteners.filter(
          ({underHeadMm, leastUnderHeadMm, hasPad}) => !hasPad && underHeadMm < leastUnderHeadMm - 1e-6,
        ),
        ({of}) => of,
        ({underHeadMm}) => -underHeadMm,
      ).map(({of, underHeadMm, through, joinsNeck}) => ({
        at: `${of}.through`,
        message: `the head pulls on ${writeLength(underHeadMm, plan)} of wood, and would sink in or split it; put a washer under it, or a block`,
        expected: [`[washer, ${through.join(', ')}]`],
        ...(!joinsNeck && {severity: 'remark' as const}),
      })),
  }),
  'screw-overloaded': rule({
    severity: 'fault',
    what: 'A screw from which the strings ask more than a third of what it holds.',
    why: 'Holding power is that of a sudden pull in clear wood; under a load that stays, a third is what to count on (Wood Handbook, Eq. 8-10; the third is common practice, no source).',
    mend: 'Take larger or more screws, more thread, or glue the joint.',
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
  }),
  'screw-near-edge': rule({
    severity: 'warning',
    what: 'A screw too near an edge or an end of the wood.',
    why: 'The wood splits: keep one and a half shanks from an edge, two from an end. Common practice, no source.',
    mend: 'Move the screw inwards, or take a thinner one.',
    find: (_, {fasteners = [], screws = [], ...plan}) =>
      oneEach(
        fasteners.filter(({edge}) => edge),
        ({of, edge}) => edge?.wouldDo?.path ?? of,
        ({edge}) => edge!.needsMm - edge!.gapMm,
      ).map(({of, edge, stationMm, offMm}) => {
        const {piece, isEnd, gapMm, needsMm, wouldDo} = edge!
        const place = screws.find(
          (one) => one.of === of && one.stationMm === stationMm && one.offMm === offMm,
        )
        const text = wouldDo && writeLength(wouldDo.mm, plan)
        const found =
          gapMm < 0
            ? 'misses'
            : `is ${writeLength(gapMm, plan, 'down')} from the ${isEnd ? 'end' : 'edge'} of`
        return {
          at: wouldDo?.path ?? place?.offPath ?? of,
          message: `this screw ${found} the ${piece}, and needs ${writeLength(needsMm, plan, 'up')} or the wood splits; ${text ? `${wouldDo.path.includes('.off') ? 'off' : 'a place'} ${text} would do` : 'take a thinner screw'}`,
          ...(text && {expected: [text]}),
        }
      }),
  }),
  'screw-off-box': rule({
    severity: 'fault',
    what: 'A screw through the top or the back that stands past the edge of the box.',
    why: 'There is nothing there for its head to hold.',
    mend: 'Move the screw over the box.',
    find: (_, {fasteners = [], ...plan}) =>
      oneEach(
        fasteners.filter(({offBox}) => offBox),
        ({offBox}) => offBox!.path,
        () => 0,
      ).map(({offBox}) => {
        const text = writeLength(offBox!.mm, plan)
        return {
          at: offBox!.path,
          message: `this screw stands past the edge of the box; ${text} would do`,
          expected: [text],
        }
      }),
  }),
  'screw-misses-block': rule({
    severity: 'fault',
    what: 'A screw that is to meet a block where there is none.',
    why: 'It would hold in nothing but the top.',
    mend: 'Move the screw onto the block, or the block under the screw.',
    find: (_, {box, fasteners = [], screws = [], ...plan}) =>
      oneEach(
        fasteners.filter(({astray}) => astray),
        ({of, stationMm, astray}) => astray?.wouldDo?.path ?? (box?.blocks ? `${of} ${stationMm}` : of),
        () => 0,
      ).map(({of, astray, stationMm, offMm, into}) => {
        const place = screws.find(
          (one) => one.of === of && one.stationMm === stationMm && one.offMm === offMm,
        )
        const text = astray?.wouldDo && writeLength(astray.wouldDo.mm, plan)
        return {
          at: astray?.wouldDo?.path ?? (box?.blocks ? place?.offPath : `${of}.through`) ?? of,
          message: `this screw is to go ${into === 'block' ? 'into' : 'through'} a block, and ${box?.blocks ? 'none is there' : 'the file has none under box.blocks'}${text ? `; ${text} meets the middle of the nearest` : ''}`,
          ...(text && {expected: [text]}),
        }
      }),
  }),
}

/** Of the screws of one row of the build file, which share what is to change, keep the worst. */
function oneEach(
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
