import type {BuildValues} from './schema.ts'
import type {MeasuredValues} from './values.ts'

/** Under frets these are measured to a bridge that is set back behind its line, and say nothing of the frets. */
const toTheBridge = /^(?:scale(?:\.length)?|bridge\.from-tail)$/

/** List what was measured that takes the place of what was drawn, where another is built by it. */
export function asMade({measured, scale}: BuildValues): MeasuredValues['paths'] {
  const isFretted = scale?.fretted?.value === true
  return (measured?.paths ?? []).filter(({path}) => !(isFretted && toTheBridge.test(path)))
}
