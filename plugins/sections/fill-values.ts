import type {PhrasingContent, Root} from 'mdast'
import {SKIP, visit} from 'unist-util-visit'
import type {Plan} from '../plan/plan.ts'
import {stepCalled} from '../plan/work/step.ts'
import {type FoundValue, planValue} from '../words/plan-value.ts'
import {type PrintedPlan, printedPlan} from '../words/printed-plan.ts'
import {angle, cents, massPerLength, number, percent} from '../words/quantities.ts'
import {behindNut, toSideSeen} from '../words/sides.ts'
import {stepName} from '../words/steps.ts'
import {type Inline, inline, text} from './kit.ts'
import {area, force, fractions, length, mass} from './measures.ts'

import './kit-nodes.ts'

/**
 * Put the plan's values and the names of its steps where a sentence names them, in place; a name that the plan does not
 * have stays as written.
 */
export function fillValues(tree: Root, plan: Plan): void {
  visit(tree, 'stepReference', (node) => {
    const step = stepCalled(node.value, plan.work ?? [])
    const value = step ? stepName(step) : `:step[${node.value}]`
    node.data = {hName: 'span', hChildren: [{type: 'text', value}]}
  })
  let printed: PrintedPlan | undefined
  visit(tree, 'valueReference', (node, at, parent) => {
    printed ??= printedPlan(plan)
    const found = planValue(printed, node.value)
    if (found.is === 'unknown') {
      node.data = {hName: 'span', hChildren: [{type: 'text', value: `:value[${node.value}]`}]}
      return undefined
    }
    const data = {hName: 'span', hProperties: {className: ['value']}}
    parent!.children[at!] = {type: 'computedValue', data, children: wordValue(found, plan)}
    return SKIP
  })
}

/**
 * Word a value of the plan for a sentence, in the build's units to its ruler; the unit is read off the end of its
 * name. A value not computed yet reads `open`.
 */
function wordValue(found: FoundValue, plan: Plan): PhrasingContent[] {
  if (found.is !== 'value') return [{type: 'emphasis', children: [text('open')]}]
  const {key, value} = found
  if (typeof value === 'boolean') return [text(value ? 'yes' : 'no')]
  if (typeof value === 'string') return inline(fractions(value))
  const [, word] = units.find(([ending]) => ending.test(key)) ?? []
  return inline([word ? word(value, plan) : number(value, 2)].flat())
}

/** Say how far off the centre line something lies, and on which side, which no sign tells. */
function offInWords(mm: number, plan: Plan): Inline[] {
  return mm === 0 ? [toSideSeen(0, plan)] : [length(Math.abs(mm), plan), ` ${toSideSeen(mm, plan)}`]
}

/** Say how far from the nut line something lies, and behind it where it does. */
function stationInWords(mm: number, plan: Plan): Inline[] {
  return mm < 0 ? [length(-mm, plan), ` ${behindNut}`] : [length(mm, plan)]
}

const units: readonly (readonly [RegExp, (value: number, plan: Plan) => Inline | Inline[]])[] = [
  [/Nmm2$/, (value) => `${number(value / 1e6, 1)} N·m²`],
  [/Mm2$/, area],
  [/^(?:off|nutOff|bridgeOff)Mm$/, offInWords],
  [/^(?:station|from|to)Mm$/, stationInWords],
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
