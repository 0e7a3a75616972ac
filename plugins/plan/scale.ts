import type {BuildValues} from '../build-file/schema.ts'
import {layDots, layLines, linePattern} from './lines.ts'
import {neckTaper, neckWidthAt} from './neck/taper.ts'
import type {PlanPart} from './part.ts'

export interface Scale {
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
  /** The largest error, of either sign, that the ruler’s rounding makes. */
  worstMarkErrorCents?: number | undefined
  /** The line that has it. */
  worstMarkLabel?: string | undefined
  /** The least difference of pitch that ears notice. */
  noticeableCents?: number | undefined
  /** What other rulers’ marks would do at worst, coarsest first. */
  rulers?:
    | {
        mm: number
        text: string
        worstCents: number
        worstLabel: string
      }[]
    | undefined
  /** The coarsest mark that keeps every line within what ears notice. */
  rulerNeeded?:
    | {
        mm: number
        text: string
      }
    | undefined
  /** Where the pure intervals lie along a fretless neck. */
  justMarks?:
    | {
        name: string
        ratio: string
        cents: number
        fromNutMm: number
        mark: string
      }[]
    | undefined
}

export interface Line {
  /** Counts the lines from the nut, from 1. */
  n: number
  /** As players number it. */
  label: string
  /** Above the open string. */
  semitones: number
  /** Above the open string, by the temperament. */
  cents: number
  /** Sharp of equal semitones. */
  offEqualCents?: number | undefined
  /** L·(1 − 1/r). */
  fromNutMm: number
  fromPreviousMm: number
  /** The nearest mark of the maker's ruler, as a text. */
  mark: string
  markMm: number
  /** Mark less the exact place. */
  markErrorMm: number
  /** 1200·log2((L − fromNutMm)/(L − markMm)); positive when sharp. */
  markErrorCents: number
  /** The neck there. */
  widthMm?: number | undefined
  /** Where each string crosses, off the centre line. */
  stringOffMm?: number[] | undefined
  overBox?: boolean | undefined
}

export interface Dot {
  label: string
  stationMm: number
  /** Two at the octave. */
  count: number
  /** bass or treble: the player’s edge. */
  side: string
}

type ScaleValues = NonNullable<BuildValues['scale']>

/**
 * Lay out the string length: its lines as players number them, where each falls on the maker's ruler, how wide the
 * neck is and where the strings cross there, and the dots. Lines are absent where pattern or temperament do not rise.
 */
export const scaleLines: PlanPart = ({values, units, rulerMm}, soFar) => {
  const {scale} = values
  const spread = stringSpread(values)
  if (!scale && !spread) return {}
  const lengthMm = scale?.length?.mm
  const isFretted = scale?.fretted?.value === true
  const kept = {...soFar.scale, fretted: isFretted, ...patternWords(scale ?? {}), ...spread}
  const pattern = scale && patternOf(scale)
  const steps = scale && stepsOf(scale)
  if (lengthMm === undefined || !pattern || !steps) return {scale: {...kept, ...(lengthMm && {lengthMm})}}

  const lines = layLines(pattern, {lengthMm, units, rulerMm, ...(steps !== 'equal' && {steps})})
  const taper = neckTaper(values)
  for (const line of lines) {
    const widthMm = taper && neckWidthAt(line.fromNutMm, taper)
    if (widthMm !== undefined) line.widthMm = widthMm
    if (spread) line.stringOffMm = stringsAt(line.fromNutMm / lengthMm, spread)
    const {atMm, tailMm = Number.POSITIVE_INFINITY} = soFar.box ?? {}
    if (atMm !== undefined) line.overBox = line.fromNutMm >= atMm && line.fromNutMm <= tailMm
  }
  const dots =
    scale.dots &&
    layDots(
      scale.dots.map((dot) => dot.label),
      lines,
      isFretted,
    )
  const bridgeFrontMm = lengthMm - (values.bridge?.foot?.mm ?? 0) / 2
  return {scale: {...kept, lengthMm, bridgeFrontMm, lines, ...worst(lines), ...(dots && {dots})}}
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
    ...(pattern && {pattern: Array.isArray(pattern) ? list(pattern) : pattern.value}),
    ...(temperament && {temperament: Array.isArray(temperament) ? list(temperament) : temperament.value}),
  }
}

/** Where the strings cross at a part of the way from nut to bridge. */
const stringsAt = (part: number, {nutOffMm, bridgeOffMm}: StringSpread): number[] =>
  nutOffMm.map((offMm, i) => offMm + part * (bridgeOffMm[i]! - offMm))

function worst(lines: readonly Line[]) {
  if (lines.length === 0) return {}
  return {worstMarkErrorCents: Math.max(...lines.map((line) => Math.abs(line.markErrorCents)))}
}

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
