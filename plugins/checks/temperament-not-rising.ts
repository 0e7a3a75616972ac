import type {Check} from './check.ts'

/** A temperament whose steps do not rise from the open string. */
export const temperamentNotRising: Check = {
  rule: 'temperament-not-rising',
  find: ({values}) => {
    const steps = values.scale?.temperament
    if (!Array.isArray(steps)) return []
    const slip = steps.findIndex(({cents}, i) => cents <= (steps[i - 1]?.cents ?? 0))
    if (slip < 0) return []
    const before = slip === 0 ? 'the open string' : steps[slip - 1]!.text
    return [
      {
        at: `scale.temperament.${slip + 1}`,
        message: `${steps[slip]!.text} is not above ${before}; the twelve steps rise from the open string to the octave`,
        ...(slip > 0 && {cause: `scale.temperament.${slip}`}),
      },
    ]
  },
}
