import {openTunings} from '../../tables/other-names.ts'

const semitones: Readonly<Record<string, number>> = {C: 0, D: 2, E: 4, F: 5, G: 7, A: 9, B: 11, H: 11}
const names = ['C', 'C#', 'D', 'Eb', 'E', 'F', 'F#', 'G', 'Ab', 'A', 'Bb', 'B']

const pitch = (midi: number): string => `${names[midi % 12]}${Math.floor(midi / 12) - 1}`

/**
 * Read a tuning as players say it: `G3 D4 G4`, `GDG`, `G-D-G`, `open G`. Without octaves the strings rise, from the
 * second or the third octave. Each reading is a list of pitches.
 */
export function readTuning(text: string, count: number | undefined): string[][] {
  const said = text.trim()
  const open = /^open\s+([A-H][#b♯♭]?)(?:\s+major)?$/i.exec(said)?.[1]
  const of = (octave: number, name: string) =>
    12 * (octave + 1) +
    semitones[name.charAt(0).toUpperCase()]! +
    (/[#♯]/.test(name) ? 1 : /.[b♭]/.test(name) ? -1 : 0)
  if (open)
    return (openTunings[count ?? 3] ?? []).flatMap((steps) =>
      [2, 3].map((octave) => steps.map((step) => pitch(of(octave, open) + step))),
    )
  const whole = said.match(/[A-Ha-h][#b♯♭]?\d/g)
  if (whole && said.replace(/[A-Ha-h][#b♯♭]?\d/g, '').replace(/[\s,;/|-]/g, '') === '')
    return [whole.map((note) => note.charAt(0).toUpperCase() + note.slice(1))]
  const letters = said.match(/[A-H][#b♯♭]?/gi)
  const isAll = letters && said.replace(/[A-H][#b♯♭]?/gi, '').replace(/[\s,;/|-]/g, '') === ''
  if (!letters || !isAll || letters.length > 12 || letters.length < 1) return []
  return [2, 3].map((octave) => {
    let last = 0
    return letters.map((letter) => {
      let midi = of(octave, letter)
      while (midi <= last) midi += 12
      last = midi
      return pitch(midi)
    })
  })
}
