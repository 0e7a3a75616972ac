import type {Pitch} from '../schema/values.ts'
import {misreading, quoted, type Reading, reading} from './reading.ts'

/** Semitones of the natural notes above C. */
const naturals: Readonly<Record<string, number>> = {C: 0, D: 2, E: 4, F: 5, G: 7, A: 9, B: 11}

/**
 * Read a pitch: a capital letter, perhaps # or b (or ♯ ♭), and an octave, as `F#3`. A small letter is not
 * taken for a capital, since in some notations it names another octave. `midi` is 69 for A4, 60 for C4.
 */
export function readPitch(text: string): Reading<Pick<Pitch, 'name' | 'midi'>> {
  const plain = text.trim().replace(/♯/g, '#').replace(/♭/g, 'b')
  const match = /^([A-G])([#b]?)([0-8])$/.exec(plain)
  if (match) {
    const [name, letter, accidental, octave] = match
    const shift = accidental === '#' ? 1 : accidental === 'b' ? -1 : 0
    return reading({name, midi: 12 * (Number(octave) + 1) + naturals[letter!]! + shift})
  }
  return explain(text, plain)
}

/** Say what is wrong with a text that is not a pitch, and which pitches it may mean. */
function explain(text: string, plain: string) {
  const wrong = (why: string, likely: string[] = []) =>
    misreading('unreadable-pitch', `${quoted(text)} is not a pitch: ${why}`, likely)
  const [, first, accidentals, octave] = /^([A-Za-z]) ?([#b]*) ?(-?\d*)$/.exec(plain) ?? []
  if (first === undefined || accidentals === undefined || octave === undefined)
    return wrong('a pitch is a letter, # or b if any, and an octave, as D3 or F#3')
  const letter = first.toUpperCase()
  const octaves = /^[0-8]$/.test(octave)
    ? [octave]
    : /^\d/.test(octave) && Number(octave[0]) < 9
      ? [octave[0]!]
      : ['2', '3', '4']
  if (letter === 'H')
    return wrong(
      'the letters run from A to G, and what some call H is B',
      octaves.map((o) => `B${o}`),
    )
  if (!(letter in naturals)) return wrong('the letters run from A to G')
  if (accidentals.length > 1) {
    const likely = ['#', '', 'b'].filter((sign) => sign === '' || accidentals.includes(sign))
    return wrong(
      'it takes one # or one b',
      likely.flatMap((sign) => octaves.map((o) => letter + sign + o)),
    )
  }
  const likely = octaves.map((o) => letter + accidentals + o)
  if (octave === '') return wrong('its octave is missing', likely)
  if (octaves[0] !== octave) return wrong('no string has that octave', likely)
  return wrong(first === letter ? 'it is written without a space' : 'its letter is a capital', likely)
}
