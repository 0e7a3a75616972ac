import {nearestMark} from '../../build-file/quantities/write-length.ts'
import {diatonicFrets} from '../../tables/intervals.ts'
import type {Side} from '../kit/sides.ts'

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
  side: Side
}

export interface LineSettings {
  lengthMm: number
  /** The twelve steps of an octave in cents; left out, equal. */
  steps?: readonly number[] | undefined
  units: 'in' | 'mm'
  rulerMm: number
}

/**
 * Lay out lines on a string length: each one's place, the step from the line before it, the nearest mark of the
 * ruler (short of the bridge), and what that mark is off in mm and in cents, positive when sharp.
 */
export function layLines(
  pattern: readonly PatternLine[],
  {lengthMm, steps, units, rulerMm}: LineSettings,
): Line[] {
  let previousMm = 0
  return pattern.map(({label, semitones}, i) => {
    const cents = centsAbove(semitones, steps)
    const fromNutMm = lineStation(lengthMm, cents)
    const mark = nearestMark(Math.min(fromNutMm, lengthMm - rulerMm), {units, rulerMm})
    const fromPreviousMm = fromNutMm - previousMm
    previousMm = fromNutMm
    return {
      n: i + 1,
      label,
      semitones,
      cents,
      offEqualCents: cents - 100 * semitones,
      fromNutMm,
      fromPreviousMm,
      mark: mark.text,
      markMm: mark.mm,
      markErrorMm: mark.mm - fromNutMm,
      markErrorCents: 1200 * Math.log2((lengthMm - fromNutMm) / (lengthMm - mark.mm)),
    }
  })
}

/**
 * Place a line: mm from the nut, L·(1 − 1/r) with r = 2^(cents/1200). The octave of 640 mm is at 320 exactly.
 * Source: the law of stretched strings, as in G. Byers, American Lutherie 47 (1996).
 */
export const lineStation = (lengthMm: number, cents: number): number => lengthMm * (1 - 2 ** (-cents / 1200))

/**
 * Give the cents of a line above the open string. `steps` are the twelve steps of one octave in cents, the twelfth
 * the octave, which every octave repeats; without them semitones are equal. Between two steps, straight.
 */
export function centsAbove(semitones: number, steps?: readonly number[]): number {
  if (!steps) return 100 * semitones
  const below = Math.floor(semitones)
  const step = (n: number) => Math.floor(n / 12) * steps[11]! + (n % 12 === 0 ? 0 : steps[(n % 12) - 1]!)
  const part = semitones - below
  return part === 0 ? step(below) : step(below) + part * (step(below + 1) - step(below))
}

export interface PatternLine {
  label: string
  /** Above the open string. */
  semitones: number
}

/**
 * Lay out `count` lines from the nut. Chromatic lines are numbered by semitones, diatonic ones by scale steps.
 * A list that stops at the octave repeats; one that stops elsewhere gives no more lines than it has. A list that
 * holds the diatonic frets is numbered like them, with its other lines as halves; any other is counted from the nut.
 * Undefined where a list does not rise.
 */
export function linePattern(
  pattern: 'chromatic' | 'diatonic' | readonly number[],
  count: number,
): PatternLine[] | undefined {
  if (pattern === 'chromatic') {
    return Array.from({length: count}, (_, i) => ({label: `${i + 1}`, semitones: i + 1}))
  }
  const list = pattern === 'diatonic' ? diatonicFrets : pattern
  const rises = list.length > 0 && list.every((semitones, i) => semitones > (list[i - 1] ?? 0))
  if (!rises) return undefined
  const repeats = list.at(-1) === 12
  const lines = Array.from({length: repeats ? count : Math.min(count, list.length)}, (_, i) => {
    const semitones = list[i % list.length]! + 12 * Math.floor(i / list.length)
    return semitones
  })
  const byScale = isDiatonic(list)
  return lines.map((semitones, i) => ({label: byScale ? diatonicLabel(semitones) : `${i + 1}`, semitones}))
}

/**
 * Name a line of a diatonic fingerboard as its players do, by semitones above the open string: 12 is `7`, and
 * what lies between two frets is a half, so 11 is `6 1/2`.
 */
export function diatonicLabel(semitones: number): string {
  const octaves = Math.floor((semitones - 1) / 12)
  const within = semitones - 12 * octaves
  const below = 7 * octaves + diatonicFrets.filter((fret) => fret <= within).length
  if (diatonicFrets.includes(within)) return `${below}`
  return below === 0 ? '1/2' : `${below} 1/2`
}

/** Say whether a list of lines has every diatonic fret as far as it goes, and nothing finer than a semitone. */
export function isDiatonic(semitones: readonly number[]): boolean {
  const last = semitones.at(-1) ?? 0
  const has = new Set(semitones)
  const isChromatic = semitones.length === last
  return !isChromatic && semitones.every(Number.isInteger) && wholeFrets(last).every((fret) => has.has(fret))
}

function wholeFrets(last: number): number[] {
  return Array.from({length: Math.ceil(last / 12)}, (_, octave) =>
    diatonicFrets.map((fret) => fret + 12 * octave),
  )
    .flat()
    .filter((fret) => fret <= last)
}

/**
 * Place the dots on the player's edge, which is the bass side however the player is handed: on a fretted neck midway
 * before the fret, else on the line; two at each octave. A label without a line gives no dot.
 */
export function layDots(labels: readonly string[], lines: readonly Line[], isFretted: boolean): Dot[] {
  return labels.flatMap((label) => {
    const line = lines.find((each) => each.label === label)
    if (!line) return []
    const stationMm = isFretted ? line.fromNutMm - line.fromPreviousMm / 2 : line.fromNutMm
    return [{label, stationMm, count: line.semitones % 12 === 0 ? 2 : 1, side: 'bass'}]
  })
}
