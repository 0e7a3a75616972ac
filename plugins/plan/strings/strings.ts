import type {PlanPart} from '../part.ts'
import type {StringPlan} from '../shape/strings.ts'
import {alternatives} from './alternatives.ts'
import {balance} from './balance.ts'
import {coreDoubt} from './core-doubt.ts'
import {mendString} from './mend-string.ts'
import {noteFrequencyHz} from './note-frequency.ts'
import {stringFacts} from './string-facts.ts'
import {stringNames} from './string-names.ts'

/**
 * Compute each string at its pitch on this scale (see string-facts.ts), the common gauges that would do, and the pull
 * of all together (N), every string of a course counted. In the file's order; absent until each string has a note.
 */
export const strings: PlanPart = ({values, units, referenceHz}) => {
  const listed = (values.strings ?? []).flatMap((string) =>
    string.note ? [{...string, note: string.note}] : [],
  )
  if (listed.length === 0 || listed.length !== values.strings?.length) return {}
  const play = values.play?.value
  const lengthMm = values.scale?.length?.mm
  const names = stringNames(listed.map(({note}) => note.name))
  const places = listed.map(({note}) => ({
    frequencyHz: noteFrequencyHz(note.midi, referenceHz),
    lengthMm,
    play,
  }))
  const facts = listed.map((string, i) => stringFacts(string, places[i]!))
  const balanced = balance(facts, play)
  const planned = listed.map((string, i): StringPlan => {
    const {targetN, ...off} = balanced[i]!
    const doubt = coreDoubt(string, places[i]!)
    const mend = mendString(string, places[i]!, facts[i]!, balanced[i]!)
    const others = lengthMm === undefined ? [] : alternatives(string, places[i]!, targetN, units)
    const course = string.course?.value ?? 1
    const plan: StringPlan = {name: names[i]!, note: string.note.name, course, ...facts[i]!, ...off}
    if (doubt) plan.coreDoubt = doubt
    if (mend) plan.mend = mend
    if (others.length > 0) plan.alternatives = others
    return plan
  })
  const pullsN = planned.flatMap(({tensionN, course}) => (tensionN === undefined ? [] : [tensionN * course]))
  return {
    strings: planned,
    ...(pullsN.length === planned.length && {tensionTotalN: pullsN.reduce((sum, one) => sum + one, 0)}),
  }
}
