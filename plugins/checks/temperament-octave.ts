import type {Check} from './check.ts'

/** A twelfth step that is within this of the octave is the octave; typed ratios are exact, typed cents nearly so. */
const nearCents = 0.01

/** A temperament whose twelfth step is not the octave. */
export const temperamentOctave: Check = {
  rule: 'temperament-octave',
  find: ({values}) => {
    const steps = values.scale?.temperament
    const last = Array.isArray(steps) ? steps[11] : undefined
    if (!last || Math.abs(last.cents - 1200) <= nearCents) return []
    const octave = /[/:]/.test(last.text) ? '2/1' : '1200'
    return [
      {
        at: 'scale.temperament.12',
        message: `the twelfth step is ${last.text} and must be the octave, from which the steps repeat; ${octave} would do`,
        expected: [octave],
      },
    ]
  },
}
