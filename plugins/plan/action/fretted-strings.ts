import type {BuildValues} from '../../build-file/schema/schema.ts'
import {ratioOf} from '../../tables/units.ts'
import type {Scale} from '../scale/scale.ts'
import type {StringPlan} from '../strings/strings.ts'
import type {Action} from './action.ts'
import type {Fret, FrettedString} from './fretted-string.ts'
import {type OverRound, stringsOverRound} from './round-face.ts'

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
