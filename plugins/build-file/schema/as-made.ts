import type {BuildValues} from './schema.ts'
import type {MeasuredDay} from './values.ts'

/** Under frets these are measured to a bridge that is set back behind its line, and say nothing of the frets. */
const toTheBridge = /^(?:scale(?:\.length)?|bridge\.from-tail)$/

/** A measured value, and the day it was measured. */
type AsMade = MeasuredDay['paths'][number] & Pick<MeasuredDay, 'on'>

/**
 * List what was measured last that takes the place of what was drawn, where another is built by it. What was measured
 * only to be set right (`mended`: its paths) does not.
 */
export function asMade({measured, scale}: BuildValues, mended: readonly string[] = []): AsMade[] {
  const isFretted = scale?.fretted?.value === true
  const last = new Map<string, AsMade>()
  for (const {paths, on} of measured?.days ?? [])
    for (const one of paths) last.set(one.path, {...one, ...(on && {on})})
  return [...last.values()].filter(
    ({path}) => !mended.includes(path) && !(isFretted && toTheBridge.test(path)),
  )
}
