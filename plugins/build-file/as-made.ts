import type {BuildValues} from './schema.ts'
import type {MeasuredDay} from './values.ts'

/** Under frets these are measured to a bridge that is set back behind its line, and say nothing of the frets. */
const toTheBridge = /^(?:scale(?:\.length)?|bridge\.from-tail)$/

/** List what was measured last that takes the place of what was drawn, where another is built by it. */
export function asMade({measured, scale}: BuildValues): MeasuredDay['paths'] {
  const isFretted = scale?.fretted?.value === true
  const last = new Map<string, MeasuredDay['paths'][number]>()
  for (const {paths} of measured?.days ?? []) for (const one of paths) last.set(one.path, one)
  return [...last.values()].filter(({path}) => !(isFretted && toTheBridge.test(path)))
}
