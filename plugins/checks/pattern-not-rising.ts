import type {Check} from './check.ts'

/** A list of lines that does not rise. */
export const patternNotRising: Check = {
  rule: 'pattern-not-rising',
  find: ({values}) => {
    const pattern = values.scale?.pattern
    if (!Array.isArray(pattern)) return []
    const slip = pattern.findIndex(({value}, i) => i > 0 && value <= pattern[i - 1]!.value)
    if (slip < 0) return []
    const [before, here] = [pattern[slip - 1]!.text, pattern[slip]!.text]
    return [
      {
        at: `scale.pattern.${slip + 1}`,
        message: `${here} comes after ${before}, and each line must be higher than the one before; put them in rising order, each once`,
        cause: `scale.pattern.${slip}`,
      },
    ]
  },
}
