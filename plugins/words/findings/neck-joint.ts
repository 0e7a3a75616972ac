import {writeBare, writeLength} from '../../build-file/quantities/write-length.ts'
import type {EndScrews} from '../../plan/fasteners/end-joint.ts'
import type {Because} from '../../plan/neck/inside-neck.ts'
import {inch} from '../../tables/units.ts'
import type {Ruler} from '../lengths.ts'
import {insideBecause} from '../neck.ts'
import {only, type Wording, type WouldDo, type Written} from './wording.ts'

export function aboveTopDisagrees(
  {
    aboveTop,
    thickness,
    notch,
    hasBoard,
    byThicknessMm,
  }: {aboveTop: Written; thickness: Written; notch: Written; hasBoard: boolean; byThicknessMm: number},
  ruler: Ruler,
): Wording {
  const text = writeLength(byThicknessMm, ruler)
  return {
    message: `neck.above-top says ${aboveTop}, but a neck of thickness ${thickness ?? 'the laminations’ sum'}${notch ? `, let in by ${notch},` : ''} on top puts its playing face ${text} above it${hasBoard ? ', fingerboard included' : ''}`,
    expected: only(byThicknessMm > 0 ? text : undefined),
    note: hasBoard
      ? `neck.thickness runs from the playing face to the back, fingerboard and all: of a stick that gets its board on top it is both together`
      : undefined,
  }
}

export function endJointWeak(
  {
    isScrewed,
    isNone,
    hasBlock,
    leverMm,
    glue,
    wouldDo,
  }: {
    /** Screws are there, level with the edge that the neck turns about. */
    isScrewed: boolean
    /** The file says that there are no screws: a list of them would take the place of that. */
    isNone: boolean
    hasBlock: boolean
    leverMm: number
    glue: {stressMpa: number; breaksMpa?: number | undefined; weaker?: 'neck' | 'wall' | undefined}
    wouldDo?: EndScrews | undefined
  },
  ruler: Ruler,
): Wording {
  const over = writeLength(leverMm, ruler)
  if (isScrewed)
    return {
      message: `these screws sit no lower than the upper edge of the box’s end, about which the strings turn the neck, ${over} below them: they hold nothing; set them lower, and say how far below the top under down${wouldDo ? `: ${writeLength(wouldDo.downMm, ruler)} would do` : ''}`,
      expected: only(wouldDo && `[${writeBare(wouldDo.downMm, ruler)}]`),
    }
  const {stressMpa, breaksMpa = 0, weaker} = glue
  const what = weaker === 'wall' ? 'the wall’s wood tears across its grain' : 'end grain holds at best'
  const block = hasBlock ? 'the end block' : 'an end block (box.end-block)'
  return {
    message: `the strings, ${over} over the upper edge of the box’s end, pull the glued face at the neck’s back apart with ${stressMpa.toFixed(2)} MPa; ${what} at ${breaksMpa.toFixed(2)} MPa, and a third is the most to ask under a load that stays: screw the neck from inside through ${block}, or let it run through`,
    expected: only(isNone && wouldDo ? screwLine(wouldDo, ruler).replace('screws: ', '') : undefined),
    note: wouldDo && `this line would do, put among the keys of the file: ${screwLine(wouldDo, ruler)}`,
  }
}

/** Write screws as a line of the build file. */
function screwLine({size, lengthMm, atMm, offsMm, downMm, through}: EndScrews, ruler: Ruler): string {
  const bare = (mm: number) => writeBare(mm, ruler)
  const offs = offsMm.map(bare).join(', ')
  return `screws: [{size: ${size}, length: ${bare(lengthMm)}, at: [${bare(atMm)}], off: [${offs}], down: [${bare(downMm)}], through: [${through.join(', ')}], into: neck}]`
}

export function neckMissesBox(
  {aboveTop, thicknessMm, faceLevelMm}: {aboveTop: string; thicknessMm: number; faceLevelMm: number},
  ruler: Ruler,
): Wording {
  const level = writeLength(faceLevelMm, ruler)
  return {
    message: `a playing face ${aboveTop} above the top lifts the whole neck, ${writeLength(thicknessMm, ruler)} thick, over the box; joins: on top, or ${level} above the top, would do`,
    expected: [level],
  }
}

/** A neck of layers is lifted sooner than thinned. */
export function neckTooTall(
  {
    overBackMm,
    tallestMm,
    leastAboveTopMm,
    isLayered,
  }: {overBackMm: number; tallestMm: number; leastAboveTopMm: number; isLayered: boolean},
  ruler: Ruler,
): Wording {
  const tallest = tallestMm > 0 ? writeLength(tallestMm, ruler, 'down') : undefined
  const higher = writeLength(leastAboveTopMm, ruler, 'up')
  return {
    message: `this neck runs through ${writeLength(overBackMm, ruler, 'up')} deeper than the inside of the box; ${tallest ? `a thickness of ${tallest} would do, or ` : ''}a playing face ${higher} above the top`,
    expected: [isLayered || !tallest ? higher : tallest],
  }
}

/** `gapMm` is the daylight that leaves so little; without `leastMm`, nothing inside this neck would do. */
export function neckThinInside(
  found: {
    thicknessMm: number
    gapMm: number | undefined
    leastMm: number | undefined
    because: Because
    wouldDo: WouldDo | undefined
  },
  ruler: Ruler,
): Wording {
  const {thicknessMm, gapMm, leastMm, because, wouldDo} = found
  const text = wouldDo && writeLength(wouldDo.mm, ruler)
  const left =
    thicknessMm < ruler.rulerMm ? 'nothing to speak of' : `only ${writeLength(thicknessMm, ruler, 'down')}`
  const cut = gapMm === undefined ? 'cut down for the top' : `cut down for the top and its daylight`
  const least = leastMm === undefined ? 'more' : writeLength(leastMm, ruler, 'up')
  return {
    message: `${cut}, this neck keeps ${left} inside the box, where it takes ${least} ${insideBecause[because]}; ${text ? `${wouldDo.path} ${text} would do` : 'a thicker or wider neck would do'}`,
    expected: only(text),
  }
}

export function neckInsideDisagrees(
  {inside, gap, byGapMm}: {inside: Written; gap: Written; byGapMm: number},
  ruler: Ruler,
): Wording {
  const text = byGapMm > 0 ? writeLength(byGapMm, ruler) : undefined
  return {
    message: `neck.inside says ${inside}, but ${gap} of daylight under the top leaves ${text ?? 'nothing'}`,
    expected: only(text),
  }
}

export function notchDeeperThanNeck(
  {depth, neckMm}: {depth: Written; neckMm: number},
  ruler: Ruler,
): Wording {
  const text = neckMm >= ruler.rulerMm ? writeLength(neckMm, ruler) : undefined
  return {
    message: `a notch ${depth} deep, the top on, is deeper than the ${text ?? 'little'} of neck below the box’s edge, so the neck would lie lower than it is drawn${text ? `; ${text} would do` : ''}`,
    expected: only(text),
  }
}

/** `mostMm` is the daylight that leaves the neck thick enough inside the box. */
export function neckTouchesTop(
  {neckGap, needsMm, mostMm}: {neckGap: Written; needsMm: number; mostMm: number},
  ruler: Ruler,
): Wording {
  const usual = writeLength(Math.max(inch(1 / 8), needsMm), ruler, 'up')
  const most = mostMm < inch(1 / 8) ? writeLength(mostMm, ruler, 'down') : usual
  const text = needsMm > mostMm + 1e-6 ? undefined : most
  const mend = text
    ? `cut ${text} of daylight into the neck`
    : `it takes ${writeLength(needsMm, ruler, 'up')}, which would leave too little of this neck inside the box: a thicker neck, or a stiffer top, would do`
  return {
    message: `with ${neckGap} of daylight the top would come down on the neck under the bridge, and not sound; ${mend}`,
    expected: only(text),
  }
}

export function notchTooDeep(
  {depth, leftMm, deepestMm}: {depth: Written; leftMm: number; deepestMm: number},
  ruler: Ruler,
): Wording {
  const deepest = deepestMm > 0 ? writeLength(deepestMm, ruler, 'down') : undefined
  const left = leftMm <= 0 ? 'nothing' : `only ${writeLength(leftMm, ruler, 'down')}`
  return {
    message: `a notch ${depth} deep, the top on, leaves ${left} of the wall above the back${deepest ? `; ${deepest} is the deepest that holds` : ''}`,
    expected: only(deepest),
  }
}

export function notchTooNarrow(
  {width, neckWidthMm}: {width: string; neckWidthMm: number},
  ruler: Ruler,
): Wording {
  const expected = writeLength(neckWidthMm, ruler, 'up')
  return {
    message: `a notch ${width} wide is too narrow for the neck, ${expected} wide where it meets the box`,
    expected: [expected],
  }
}
