import type {BuildValues} from '../../build-file/schema/schema.ts'
import {ratioOf} from '../../tables/units.ts'
import type {Scale} from '../scale/scale.ts'
import type {StringPlan} from '../strings/strings.ts'
import type {Action} from './action.ts'
import {type OverRound, stringsOverRound} from './round-face.ts'

/**
 * A string over frets, as Anderson and Beausoleil describe it; lengths in mm.
 * `nutHeightMm` (b) is its height above the crowns at the nut, `riseMm` (c) how much higher the saddle stands,
 * `fingerMm` (d) how far behind the fret the finger presses, `reliefMm` the hollow of the neck at the octave;
 * `radiusMm` (ρ) is that of what resists bending, `kappa` (κ = πρ²E/T) how much the pull grows with stretch.
 * `spread` is 1, or left out, where the string sticks at nut and saddle, as published; where it slides over them, its whole length
 * from anchor to post over the scale length, since all of it then shares the stretch.
 */
export interface FrettedString {
  scaleMm: number
  nutHeightMm: number
  riseMm: number
  fingerMm: number
  reliefMm: number
  radiusMm: number
  kappa: number
  spread?: number | undefined
}

/** A fret: the frequency ratio that it should give (γ), and the room for a finger behind it, in mm. */
export interface Fret {
  ratio: number
  roomMm: number
}

/** How far the saddle stands behind the bridge line, and the nut behind the nut line; each lengthens the string. */
export interface Ends {
  saddleMm: number
  nutMm: number
}

/**
 * Give the cents by which a fretted note is sharp of what its fret should give, the open string being in tune: the
 * full model, string pinned at the saddle and clamped at nut or fret.
 *
 * Past the octave the relief falls off again towards the bridge; up to there it is a straight slope, as published.
 *
 * Source: Anderson and Beausoleil, Classical guitar intonation and compensation, J. Acoust. Soc. Am. 156, 683 (2024).
 */
export function centsSharp(string: FrettedString, {ratio, roomMm}: Fret, {saddleMm, nutMm}: Ends): number {
  const {scaleMm, nutHeightMm: b, riseMm: c, fingerMm, reliefMm, radiusMm, kappa, spread = 1} = string
  const sounding = scaleMm / ratio
  const behind = scaleMm - sounding
  // A hollow neck lowers the frets as a higher saddle would, but makes the open string no longer.
  const hollow = reliefMm * Math.min(2, (2 * sounding) / behind)
  const openMm = hypotenuse(scaleMm + saddleMm + nutMm, c)
  const frontMm = hypotenuse(sounding + saddleMm, b + c)
  const pressed = pressedStretch({
    frontMm: sounding + saddleMm,
    backMm: behind + nutMm,
    nutHeightMm: b,
    riseMm: c + hollow,
    fingerMm: Math.min(fingerMm, roomMm),
  })
  const stretch = pressed / spread
  const pullRatio = 1 + kappa * stretch
  const openB = (Math.sqrt(kappa) * radiusMm) / (2 * scaleMm)
  const frettedB = (openB * (openMm / frontMm)) / Math.sqrt(pullRatio)
  return (
    1200 * Math.log2(openMm / (ratio * frontMm)) +
    600 * Math.log2((1 + stretch) * pullRatio) +
    1200 * Math.log2(stiffer(frettedB) / stiffer(openB))
  )
}

/** What stiffness does to the first partial of a string pinned at one end and clamped at the other. */
function stiffer(b: number): number {
  return 1 + b + (1 + Math.PI ** 2 / 2) * b ** 2
}

/** A string pressed to a fret: lengths in mm along the neck before and behind it, and heights as in FrettedString. */
export interface PressedString {
  /** From the fret to the saddle. */
  frontMm: number
  /** From the nut to the fret. */
  backMm: number
  nutHeightMm: number
  riseMm: number
  fingerMm: number
}

/**
 * Give how much longer a string becomes when it is pressed to a fret, as a part of its open length (Q). Behind the fret
 * it goes straight on down to the finger, and from there up to the nut.
 * Source: Anderson and Beausoleil, J. Acoust. Soc. Am. 156, 683 (2024).
 */
export function pressedStretch({frontMm, backMm, nutHeightMm, riseMm, fingerMm}: PressedString): number {
  const atSaddleMm = nutHeightMm + riseMm
  const openMm = hypotenuse(frontMm + backMm, riseMm)
  const soundingMm = hypotenuse(frontMm, atSaddleMm)
  const toFingerMm = (soundingMm * fingerMm) / frontMm
  const toNutMm = hypotenuse(backMm - fingerMm, nutHeightMm + (fingerMm * atSaddleMm) / frontMm)
  return (soundingMm + toFingerMm + toNutMm - openMm) / openMm
}

/** Give the length of a slope from its run and rise. (`Math.hypot` guards against overflow and is many times slower.) */
export function hypotenuse(run: number, rise: number): number {
  return Math.sqrt(run * run + rise * rise)
}

/** How many lines from the nut a setback is chosen by. */
const linesHeard = 12

/** What the model of intonation needs of a build. */
export interface FrettedStrings {
  /** Every line of the scale, in order from the nut. */
  frets: Fret[]
  /** The lines that setbacks are chosen by: the first twelve from the nut, half frets counted, or all if fewer. */
  heard: Fret[]
  /** Each stuck at nut and saddle, and sliding there, where what lies behind them is known. */
  strings: {name: string; at: number; string: FrettedString; slides?: FrettedString | undefined}[]
}

/**
 * Gather what the model of intonation needs of a fretted build whose strings, lines and heights are planned; strings
 * whose pull or stiffness is not known are left out. Undefined where there are no frets, or nothing to say of them.
 */
export function frettedStrings(
  values: BuildValues,
  scale: Scale | undefined,
  strings: readonly StringPlan[] | undefined,
  action: Action | undefined,
): FrettedStrings | undefined {
  const scaleMm = scale?.lengthMm
  if (!scale?.fretted || !scale.lines?.length || !strings || !action || scaleMm === undefined)
    return undefined
  const frets = scale.lines.map(({cents, fromPreviousMm}) => ({
    ratio: ratioOf(cents),
    roomMm: fromPreviousMm,
  }))
  const common = {
    scaleMm,
    nutHeightMm: action.nutMm,
    riseMm: action.bridgeToBuildMm - action.sinkMm - action.crownMm - action.nutMm,
    fingerMm: values.action?.finger?.mm ?? 0,
    reliefMm: action.reliefMm,
  }
  const overRound = stringsOverRound(values, scale)
  return {
    frets,
    heard: frets.slice(0, linesHeard),
    strings: strings.flatMap(({name, tensionN, stiffnessMpa, sectionMm, wholeMm}, at) => {
      if (tensionN === undefined || stiffnessMpa === undefined || sectionMm === undefined) return []
      const radiusMm = sectionMm / 2
      const kappa = (Math.PI * radiusMm ** 2 * stiffnessMpa) / tensionN
      const string = {...overOwnFace(common, overRound?.[at]), radiusMm, kappa}
      const slides = wholeMm === undefined ? undefined : {...string, spread: wholeMm / scaleMm}
      return [{name, at, string, slides}]
    }),
  }
}

/**
 * Give the heights of a string over its own part of a round face: at nut, octave and bridge they are its own, and what
 * the octave has beside the middle of the two counts as relief, since the model's face is straight.
 */
function overOwnFace<T extends Pick<FrettedString, 'nutHeightMm' | 'riseMm' | 'reliefMm'>>(
  flat: T,
  over: OverRound | undefined,
): T {
  if (!over) return flat
  const [nutMm, octaveMm, bridgeMm] = [over.overFaceMm(0), over.overFaceMm(1 / 2), over.overFaceMm(1)]
  return {
    ...flat,
    nutHeightMm: flat.nutHeightMm + nutMm,
    riseMm: flat.riseMm + bridgeMm - nutMm,
    reliefMm: flat.reliefMm + octaveMm - (nutMm + bridgeMm) / 2,
  }
}
