import type {Dot, Line} from '../shape/scale.ts'

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
