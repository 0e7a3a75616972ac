import {writeLength} from '../build-file/quantities/write-length.ts'
import type {Fastener} from '../plan/shape/holes.ts'
import type {Check} from './rule.ts'

/** A screw whose tip comes out, or nearly. */
export const screwComesOut: Check = {
  rule: 'screw-comes-out',
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
}

/** A screw with too little thread in the piece that is to hold it. */
export const screwThreadShort: Check = {
  rule: 'screw-thread-short',
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
}

/** A screw head on thin wood, with neither block nor washer to spread it. */
export const screwHeadThin: Check = {
  rule: 'screw-head-thin',
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
}

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

/** A screw too near an edge or an end of a piece. */
export const screwNearEdge: Check = {
  rule: 'screw-near-edge',
  find: (_, {fasteners = [], screws = [], ...plan}) =>
    oneEach(
      fasteners.filter(({edge}) => edge),
      ({of, edge}) => edge?.wouldDo?.path ?? of,
      ({edge}) => edge!.needsMm - edge!.gapMm,
    ).map(({of, edge, stationMm, offMm}) => {
      const {piece, isEnd, gapMm, needsMm, wouldDo} = edge!
      const place = screws.find((one) => one.of === of && one.stationMm === stationMm && one.offMm === offMm)
      const text = wouldDo && writeLength(wouldDo.mm, plan)
      const found =
        gapMm < 0 ? 'misses' : `is ${writeLength(gapMm, plan, 'down')} from the ${isEnd ? 'end' : 'edge'} of`
      return {
        at: wouldDo?.path ?? place?.offPath ?? of,
        message: `this screw ${found} the ${piece}, and needs ${writeLength(needsMm, plan, 'up')} or the wood splits; ${text ? `${wouldDo.path.includes('.off') ? 'off' : 'a place'} ${text} would do` : 'take a thinner screw'}`,
        ...(text && {expected: [text]}),
      }
    }),
}

/** A screw that is to pass the top or the back, and stands past an edge of the box. */
export const screwOffBox: Check = {
  rule: 'screw-off-box',
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
}

/** A screw that is to go through or into a block, where there is none. */
export const screwMissesBlock: Check = {
  rule: 'screw-misses-block',
  find: (_, {box, fasteners = [], screws = [], ...plan}) =>
    oneEach(
      fasteners.filter(({astray}) => astray),
      ({of, stationMm, astray}) => astray?.wouldDo?.path ?? (box?.blocks ? `${of} ${stationMm}` : of),
      () => 0,
    ).map(({of, astray, stationMm, offMm, into}) => {
      const place = screws.find((one) => one.of === of && one.stationMm === stationMm && one.offMm === offMm)
      const text = astray?.wouldDo && writeLength(astray.wouldDo.mm, plan)
      return {
        at: astray?.wouldDo?.path ?? (box?.blocks ? place?.offPath : `${of}.through`) ?? of,
        message: `this screw is to go ${into === 'block' ? 'into' : 'through'} a block, and ${box?.blocks ? 'none is there' : 'the file has none under box.blocks'}${text ? `; ${text} meets the middle of the nearest` : ''}`,
        ...(text && {expected: [text]}),
      }
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
