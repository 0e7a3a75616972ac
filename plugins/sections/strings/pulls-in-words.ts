import type {Plan} from '../../plan/shape/plan.ts'
import {force, type Inline, inWords, strong} from '../kit.ts'

/** Say in one line how hard the strings pull: `All pull firm, together 64.7 lbf (288 N).` Nothing where no pull is known. */
export function pullsInWords(plan: Plan): Inline[][] {
  const {strings = [], tensionTotalN} = plan
  const known = strings.flatMap(({name, pull}) => (pull === undefined ? [] : [{name, pull}]))
  if (known.length === 0) return []
  const words = [...new Set(known.map(({pull}) => pull))]
  const namesOf = (word: string) => known.filter(({pull}) => pull === word).map(({name}) => name)
  const isAll = words.length === 1 && known.length === strings.length && known.length > 1
  const said = isAll
    ? `All pull ${words[0]}`
    : words
        .map((word) => `${inWords(namesOf(word))} ${namesOf(word).length > 1 ? 'pull' : 'pulls'} ${word}`)
        .join('; ')
  const total =
    tensionTotalN === undefined ? [] : [known.length > 1 ? ', together ' : ': ', force(tensionTotalN, plan)]
  return [[strong(said), ...total, '.']]
}
