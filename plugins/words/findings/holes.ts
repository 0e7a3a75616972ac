import {writeLength} from '../../build-file/quantities/write-length.ts'
import type {Ruler} from '../lengths.ts'
import {keyOf, only, type Wording, type WouldDo} from './wording.ts'

/** How far the rim of a sound hole is from something (negative: it reaches in), and how far it must be. */
interface Near {
  gapMm: number
  needsMm: number
  wouldDo?: WouldDo | undefined
}

export function holeNearEdge({gapMm, needsMm, wouldDo}: Near, ruler: Ruler): Wording {
  const found = gapMm < 0 ? 'past the box’s edge' : `${writeLength(gapMm, ruler, 'down')} from the box’s edge`
  const needs = writeLength(needsMm, ruler)
  return mended(
    `this sound hole’s rim is ${found}, where ${needs} keeps it clear of the wall`,
    wouldDo,
    ruler,
  )
}

export function holeNearBlock({gapMm, wouldDo}: Near, ruler: Ruler): Wording {
  const found =
    gapMm < 0 ? `runs ${writeLength(-gapMm, ruler, 'up')} into a block` : `${howNear(gapMm, ruler)} a block`
  return mended(`this sound hole ${found}`, wouldDo, ruler)
}

export function holeNearNeck({gapMm, wouldDo}: Near, ruler: Ruler): Wording {
  return mended(`this sound hole’s rim ${howNear(gapMm, ruler)} the neck`, wouldDo, ruler)
}

export function holeUnderNeck(
  {gapMm, wouldDo, runsThrough}: Near & {runsThrough: boolean},
  ruler: Ruler,
): Wording {
  const where = runsThrough ? 'over the neck that runs through under it' : 'under the neck'
  return mended(`this sound hole lies ${writeLength(-gapMm, ruler, 'up')} ${where}`, wouldDo, ruler)
}

export function holesClose({gapMm, needsMm, wouldDo}: Near, ruler: Ruler): Wording {
  const found = gapMm < 0 ? 'runs into another' : `${howNear(gapMm, ruler)} another`
  const needs = writeLength(needsMm, ruler)
  return mended(`this sound hole ${found}; ${needs} keeps the wood between them whole`, wouldDo, ruler)
}

export function bridgeOverHole({gapMm, wouldDo}: Near, ruler: Ruler): Wording {
  const found = `the bridge’s foot stands over this sound hole, by ${writeLength(-gapMm, ruler, 'up')}`
  return mended(found, wouldDo, ruler, 'move one of them')
}

function mended(
  found: string,
  wouldDo: WouldDo | undefined,
  ruler: Ruler,
  otherwise = 'move it, or make it smaller',
): Wording {
  const text = wouldDo && writeLength(wouldDo.mm, ruler)
  return {
    message: `${found}; ${text ? `${keyOf(wouldDo)} ${text} would do` : otherwise}`,
    expected: only(text),
  }
}

/** Say how near one thing is to another, never nearer than the ruler tells: `is only 1/16 in from`, `touches`. */
const howNear = (gapMm: number, ruler: Ruler): string =>
  gapMm < ruler.rulerMm - 1e-6 ? 'touches' : `is only ${writeLength(gapMm, ruler, 'down')} from`
