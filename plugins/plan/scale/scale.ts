import type {BuildValues} from '../../build-file/schema/schema.ts'
import type {BoxPlace} from '../kit/box-place.ts'
import type {Settled} from '../kit/settled.ts'
import {type NeckTaper, neckWidthAt} from '../neck-shape/taper.ts'
import {centsAbove, type Dot, type Line, layDots, layLines, linePattern, lineStation} from './lines.ts'
import {type JustMark, justMarks, type Marking, planMarking} from './marking.ts'

/** The string length and what lies along it: mm from the nut line, or off the centre line. */
export interface Scale extends Partial<Marking>, ScaleLayout {
  /** Where the pure intervals lie along a fretless neck. */
  justMarks?: JustMark[] | undefined
}

interface ScaleLayout {
  lengthMm?: number | undefined
  /** Where no length is given: the longest that stick and box allow. */
  longestMm?: number | undefined
  fretted: boolean
  /** chromatic, diatonic, or the semitones as the file lists them. */
  pattern?: string | undefined
  /** equal, or the steps as the file lists them. */
  temperament?: string | undefined
  /** Where each string crosses the nut line, off the centre line. */
  nutOffMm?: number[] | undefined
  /** Where each string crosses the bridge line, off the centre line. */
  bridgeOffMm?: number[] | undefined
  lines?: Line[] | undefined
  dots?: Dot[] | undefined
  /** The bridge’s edge on the nut’s side, half its foot before the bridge line. */
  bridgeFrontMm?: number | undefined
}

type ScaleValues = NonNullable<BuildValues['scale']>

interface Around {
  place: BoxPlace | undefined
  taper: NeckTaper | undefined
  /** Where no length is given. */
  longestMm: number | undefined
}

/**
 * Lay out the string length: its lines as players number them, where each falls on the maker's ruler, how wide the
 * neck is and where the strings cross there, and the dots. Lines are absent where pattern or temperament do not rise.
 */
export function planScale(
  {values, units, rulerMm}: Settled,
  {place, taper, longestMm}: Around,
): Scale | undefined {
  const {scale} = values
  const spread = stringSpread(values)
  if (!scale && !spread) return longestMm === undefined ? undefined : {fretted: false, longestMm}
  const lengthMm = scale?.length?.mm
  const fretted = scale?.fretted?.value === true
  const known: ScaleLayout = {lengthMm, longestMm, fretted, ...patternWords(scale ?? {}), ...spread}
  const pattern = scale && patternOf(scale)
  const steps = scale && stepsOf(scale)
  if (lengthMm === undefined || !pattern || !steps) return known

  const {atMm, tailMm = Number.POSITIVE_INFINITY} = place ?? {}
  const settings = {lengthMm, units, rulerMm, steps: steps === 'equal' ? undefined : steps}
  const lines: Line[] = layLines(pattern, settings)
  for (const line of lines) {
    const {fromNutMm} = line
    line.widthMm = taper && neckWidthAt(fromNutMm, taper)
    line.stringOffMm = spread && stringsAt(fromNutMm / lengthMm, spread)
    line.overBox = atMm === undefined ? undefined : fromNutMm >= atMm && fromNutMm <= tailMm
  }
  const isMarked = lines.length > 0
  const labels = scale.dots?.map((dot) => dot.label)
  return {
    ...known,
    bridgeFrontMm: lengthMm - (values.bridge?.foot?.mm ?? 0) / 2,
    lines,
    dots: labels && layDots(labels, lines, fretted),
    ...(isMarked && planMarking(lines, lengthMm, units)),
    justMarks: isMarked && !fretted ? justMarks(lengthMm, {units, rulerMm}) : undefined,
  }
}

/** Place the last line alone (mm from the nut); undefined where there is none. */
export function lastLineMm({scale}: BuildValues): number | undefined {
  const last = scale && patternOf(scale)?.at(-1)
  const steps = scale && stepsOf(scale)
  if (!scale?.length || !last || !steps) return undefined
  return lineStation(scale.length.mm, centsAbove(last.semitones, steps === 'equal' ? undefined : steps))
}

function patternOf({pattern, lines}: ScaleValues) {
  if (!pattern || !lines) return undefined
  return linePattern(Array.isArray(pattern) ? pattern.map(({value}) => value) : pattern.value, lines.value)
}

function stepsOf({temperament}: ScaleValues): readonly number[] | 'equal' | undefined {
  if (!Array.isArray(temperament)) return temperament?.value
  const cents = temperament.map((step) => step.cents)
  const rises = cents.length === 12 && cents.every((step, i) => step > (cents[i - 1] ?? 0))
  return rises ? cents : undefined
}

function patternWords({pattern, temperament}: ScaleValues): Pick<Scale, 'pattern' | 'temperament'> {
  const list = (items: readonly {text: string}[]) => items.map(({text}) => text).join(', ')
  return {
    pattern: Array.isArray(pattern) ? list(pattern) : pattern?.value,
    temperament: Array.isArray(temperament) ? list(temperament) : temperament?.value,
  }
}

/** Where the strings cross at a part of the way from nut to bridge. */
const stringsAt = (part: number, {nutOffMm, bridgeOffMm}: StringSpread): number[] =>
  nutOffMm.map((offMm, i) => offMm + part * (bridgeOffMm[i]! - offMm))

/** Where the strings cross nut and bridge, in mm off the centre line. */
export interface StringSpread {
  nutOffMm: number[]
  bridgeOffMm: number[]
}

/** Spread the strings at nut and bridge; undefined without a spacing, or with equal gaps and a gauge missing. */
export function stringSpread({strings = [], spacing}: BuildValues): StringSpread | undefined {
  const nutMm = spacing?.nut?.mm
  const bridgeMm = spacing?.bridge?.mm
  if (strings.length === 0 || nutMm === undefined || bridgeMm === undefined) return undefined
  const diametersMm = strings.map((string) => string.gauge?.mm).filter((mm) => mm !== undefined)
  const byGaps = spacing?.slots?.value === 'gaps'
  if (byGaps && diametersMm.length < strings.length) return undefined
  const diameters = byGaps ? diametersMm : undefined
  return {
    nutOffMm: spreadStrings(strings.length, nutMm, diameters),
    bridgeOffMm: spreadStrings(strings.length, bridgeMm, diameters),
  }
}

/**
 * Spread strings evenly over a spacing (mm, first to last, centre to centre) about the centre line: their centres,
 * or with `diametersMm` the gaps between them. Returns mm off the centre line, the first string's below zero.
 * A course counts as one string at its middle.
 */
export function spreadStrings(count: number, spacingMm: number, diametersMm?: readonly number[]): number[] {
  if (count < 2) return Array(count).fill(0)
  if (!diametersMm) return Array.from({length: count}, (_, i) => spacingMm * (i / (count - 1) - 0.5))
  const pairs = diametersMm.slice(1).map((diameter, i) => (diametersMm[i]! + diameter) / 2)
  const gapMm = (spacingMm - pairs.reduce((sum, pair) => sum + pair, 0)) / (count - 1)
  let offMm = -spacingMm / 2
  const inner = pairs.slice(0, -1).map((pair) => (offMm += gapMm + pair))
  return [-spacingMm / 2, ...inner, spacingMm / 2]
}
