import type {PhrasingContent} from 'mdast'
import type {FoundValue} from '../plan/plan-value.ts'
import type {Plan} from '../plan/shape/plan.ts'
import {fractions} from './kit/fraction.ts'
import {inline, text} from './kit/inline.ts'
import {length} from './kit/length.ts'
import {number} from './kit/number.ts'
import {angle, area, cents, force, mass, massPerLength, percent} from './kit/quantities.ts'

/**
 * Word a value of the plan for a sentence, in the build's units to its ruler; the unit is read off the end of its
 * name. A value not computed yet reads `open`.
 */
export function wordValue(found: FoundValue, plan: Plan): PhrasingContent[] {
  if (found.is !== 'value') return [{type: 'emphasis', children: [text('open')]}]
  const {key, value} = found
  if (typeof value === 'boolean') return [text(value ? 'yes' : 'no')]
  if (typeof value === 'string') return inline(fractions(value))
  const [, word] = units.find(([ending]) => ending.test(key)) ?? []
  return inline([word ? word(value, plan) : number(value, 2)])
}

const units: readonly (readonly [RegExp, (value: number, plan: Plan) => string | PhrasingContent])[] = [
  [/Nmm2$/, (value) => `${number(value / 1e6, 1)} N·m²`],
  [/Mm2$/, area],
  [/Mm$/, length],
  [/Mpa$/, (value) => `${number(value, 0)} MPa`],
  [/KgM$/, massPerLength],
  [/Kg$/, mass],
  [/Hz$/, (value) => `${number(value, 1)} Hz`],
  [/Deg$/, angle],
  [/Cents$|^cents$/, (value) => cents(value, 1)],
  [/N$/, force],
  [/[a-z]L$/, (value) => `${number(value, 1)} L`],
  [/[a-z]H$|^hours$/, (value) => `${number(value, 1)} h`],
  [/Fraction$/, percent],
]
