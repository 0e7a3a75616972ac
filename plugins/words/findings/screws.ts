import {writeLength} from '../../build-file/quantities/write-length.ts'
import type {Fastener} from '../../plan/fasteners/fastener.ts'
import {inch} from '../../tables/units.ts'
import {farFace} from '../holes.ts'
import type {Ruler} from '../lengths.ts'
import {only, type Wording, type WouldDo} from './wording.ts'

export function screwComesOut(
  {
    length,
    tipToFaceMm,
    into,
    way,
    longestMm,
    isLeftShort,
  }: Pick<Fastener, 'into' | 'way'> & {
    length: string | undefined
    tipToFaceMm: number
    longestMm: number
    /** With the longest that would do, too little thread bites. */
    isLeftShort: boolean
  },
  ruler: Ruler,
): Wording {
  const longest = longestMm > 0 ? writeLength(longestMm, ruler, 'down') : undefined
  const face = farFace({into, way})
  const found =
    Math.abs(tipToFaceMm) < ruler.rulerMm - 1e-6
      ? `ends level with ${face}`
      : tipToFaceMm <= 0
        ? `comes out ${writeLength(-tipToFaceMm, ruler, 'up')} past ${face}`
        : `ends ${writeLength(tipToFaceMm, ruler, 'down')} under ${face}`
  return {
    message: `a screw of ${length} ${found}; ${longest ? `${longest} is the longest that stays ${writeLength(inch(1 / 8), ruler)} below it` : 'no screw is short enough'}`,
    expected: only(isLeftShort ? undefined : longest),
    note: isLeftShort
      ? 'A screw of that length has too little thread: take less wood under its head as well.'
      : undefined,
  }
}

export function screwThreadShort(
  {
    length,
    threadMm,
    into,
    isOfThread,
    shortestMm,
  }: {
    length: string | undefined
    threadMm: number
    into: string
    /** The screw is long enough, but too little of it is thread. */
    isOfThread: boolean
    shortestMm: number | undefined
  },
  ruler: Ruler,
): Wording {
  const shortest = shortestMm === undefined ? undefined : writeLength(shortestMm, ruler, 'up')
  const what = isOfThread ? `${shortest} of thread is the least` : `${shortest} is the shortest`
  const found =
    threadMm <= 0
      ? `does not reach the ${into}`
      : `has ${writeLength(threadMm, ruler, 'down')} of thread in the ${into}`
  return {
    message: `a screw of ${length} ${found}, too little to hold; ${shortest ? `${what} that would do` : 'take less wood under its head'}`,
    expected: only(shortest),
  }
}

export function screwThreadLong(
  {length, lengthMm}: {length: string | undefined; lengthMm: number},
  ruler: Ruler,
): Wording {
  const most = writeLength((lengthMm * 2) / 3, ruler, 'down')
  return {
    message: `a screw of ${length} cannot have more thread than that; usually two thirds of it is thread, which would be ${most}`,
    expected: [most],
  }
}

export function screwHeadThin(
  {underHeadMm, through}: {underHeadMm: number; through: readonly string[]},
  ruler: Ruler,
): Wording {
  return {
    message: `the head pulls on ${writeLength(underHeadMm, ruler)} of wood, and would sink in or split it; put a washer under it, or a block`,
    expected: [`[washer, ${through.join(', ')}]`],
  }
}

export function screwOverloaded({
  loadN = 0,
  withdrawalN,
  sizeForLoad,
  isEndGrain,
}: {
  loadN?: number | undefined
  withdrawalN: number
  sizeForLoad?: number | undefined
  isEndGrain: boolean
}): Wording {
  return {
    message: `the strings draw this screw by ${Math.round(loadN)} N, and it comes out at ${Math.round(withdrawalN)} N; a third is the most to ask of it: ${sizeForLoad ? `number ${sizeForLoad} would do, or ` : ''}more screws, more thread, or ${isEndGrain ? 'screws lower down' : 'glue'}`,
    expected: sizeForLoad === undefined ? undefined : [String(sizeForLoad)],
  }
}

export function tooManyScrews({count, most}: {count: number; most: number}): Wording {
  return {
    message: `${count} screws are listed, every place along with every one across; at most ${most} are planned`,
  }
}

export function screwOffBox({mm}: {mm: number}, ruler: Ruler): Wording {
  const text = writeLength(mm, ruler)
  return {message: `this screw stands past the edge of the box; ${text} would do`, expected: [text]}
}

export function screwMissesBlock(
  {
    into,
    isListed,
    wouldDo,
  }: {
    into: string
    /** The file has blocks, though none is there. */
    isListed: boolean
    wouldDo?: WouldDo | undefined
  },
  ruler: Ruler,
): Wording {
  const text = wouldDo && writeLength(wouldDo.mm, ruler)
  return {
    message: `this screw is to go ${into === 'block' ? 'into' : 'through'} a block, and ${isListed ? 'none is there' : 'the file has none under box.blocks'}${text ? `; ${text} meets the middle of the nearest` : ''}`,
    expected: only(text),
  }
}

export function topScrewCovered({wouldDo}: {wouldDo: WouldDo}, ruler: Ruler): Wording {
  const text = writeLength(wouldDo.mm, ruler)
  return {
    message: `this screw of the top lies under the neck, where no screwdriver reaches it and the top stays on; ${writeLength(Math.abs(wouldDo.mm), ruler)} off the centre line would do`,
    expected: only(text),
  }
}
