import {diatonicFrets} from '../../tables/intervals.ts'
import {diatonicLabel, isDiatonic} from './line-label.ts'

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
