import type {Element} from 'hast'
import {h} from 'hastscript'
import type {Plan} from '../../../plugins/plan/shape/plan.ts'
import type {Step} from '../../../plugins/plan/shape/work.ts'
import {hoursInWords} from '../../../plugins/sections/work-order/hours-in-words.ts'
import {withFractions} from '../../html/measures.ts'
import type {Beside} from './bench-cautions.ts'
import {benchStations} from './bench-stations.ts'
import {boxToTick} from './box-to-tick.ts'

export interface AroundStep {
  plan: Plan
  beside: Beside
  /** The tool of the step before. */
  inHand: string | undefined
}

/**
 * Write one step of the bench sheet: what to do and to mind, then setting, places, check and wait. The tool is named
 * unless it is in hand from the step before.
 */
export function benchStep(step: Step, {plan, beside, inHand}: AroundStep): Element {
  const {first, again} = beside
  const {id, does, tool, setting, check, isDone} = step
  const name = h('strong', `${step.step}${tool && tool !== inHand ? ` (${tool})` : ''}.`)
  const mindAgain = again.length > 0 ? [' Mind ', ...again, '.'] : []
  // Where each place is listed under its bit, the bits need not be said before.
  const isListed = step.stations.some(({bit}) => bit !== undefined)
  const ticked = (words: string) => boxToTick(`${id} ${words}`, withFractions(words))
  const last = [...(check ? [ticked(check), ' '] : []), ...waiting(step, plan)]
  return h('li', [
    boxToTick(id, [name, ' ', ...withFractions(does), ...mindAgain], isDone),
    first,
    setting && !isListed ? h('p', [ticked(setting)]) : undefined,
    ...benchStations(step, plan),
    last.length > 0 ? h('p.last', last) : undefined,
  ])
}

function waiting({waitH, meanwhile: ids = []}: Step, {work = []}: Plan): Element[] {
  if (waitH === undefined) return []
  const [first] = ids.flatMap((id) => work.find((one) => one.id === id)?.step.toLowerCase() ?? [])
  return [h('em', `Wait ${hoursInWords(waitH)}${first ? `; meanwhile ${first}` : ''}.`)]
}
