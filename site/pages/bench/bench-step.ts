import type {Element} from 'hast'
import {h} from 'hastscript'
import type {Plan} from '../../../plugins/plan/shape/plan.ts'
import type {Step} from '../../../plugins/plan/shape/work.ts'
import {hoursInWords} from '../../../plugins/sections/work-order/hours-in-words.ts'
import {withFractions} from '../../html/measures.ts'
import type {Beside} from './bench-cautions.ts'
import {benchStations} from './bench-stations.ts'
import {boxToTick} from './box-to-tick.ts'

/** Write one step of the bench sheet: what to mind before what to do, then setting, places, check and wait. */
export function benchStep(step: Step, plan: Plan, {first, again}: Beside): Element {
  const {id, does, tool, setting, waitH, check, isDone} = step
  const name = h('strong', `${step.step}${tool ? ` (${tool})` : ''}.`)
  // Where each place is listed under its bit, the bits need not be said before.
  const isListed = step.stations.some(({bit}) => bit !== undefined)
  const mindAgain = again.length > 0 ? [' Mind ', ...again, '.'] : []
  return h('li', [
    boxToTick(id, [name, ' ', ...withFractions(does), ...mindAgain], isDone),
    first,
    setting && !isListed ? h('p', [boxToTick(`${id} ${setting}`, withFractions(setting))]) : undefined,
    ...benchStations(step, plan),
    check ? h('p', [boxToTick(`${id} ${check}`, withFractions(check))]) : undefined,
    waitH === undefined ? undefined : h('p', h('em', `Wait ${hoursInWords(waitH)}${meanwhile(step, plan)}.`)),
  ])
}

function meanwhile({meanwhile: ids = []}: Step, {work = []}: Plan): string {
  const [first] = ids.flatMap((id) => work.find((one) => one.id === id)?.step.toLowerCase() ?? [])
  return first ? `; meanwhile ${first}` : ''
}
