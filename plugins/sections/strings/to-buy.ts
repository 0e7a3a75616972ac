import type {BlockContent} from 'mdast'
import type {Plan} from '../../plan/shape/plan.ts'
import type {StringPlan} from '../../plan/shape/strings.ts'
import {type Cell, force, type Inline, length, note, strong, table} from '../kit.ts'

/** List the exact strings to buy, and what else a shop has to be told: ends, and the longest one needed. */
export function toBuy(plan: Plan): BlockContent[] {
  const {strings = []} = plan
  const hasEnds = strings.some(({ends}) => ends !== undefined)
  const rowOf = (string: StringPlan): Cell[] => [
    string.course > 1 ? `${string.name}, ${string.course} alike` : string.name,
    string.gauge === undefined ? 'open' : strong(string.gauge),
    kindOf(string),
    ...(hasEnds ? [string.ends ?? 'not said'] : []),
    string.tensionN === undefined ? '' : force(string.tensionN, plan),
    string.pull ?? '',
  ]
  return [
    table({
      caption: 'Strings to buy, from the player’s bass side',
      columns: [
        {head: 'Tuned to'},
        {head: 'Gauge'},
        {head: 'Kind'},
        ...(hasEnds ? [{head: 'Ends'}] : []),
        {head: 'Pull', align: 'right'},
        {head: 'In the hand'},
      ],
      rows: strings.map(rowOf),
    }),
    ...remarks(plan, hasEnds).map((said) => note(...said)),
  ]
}

function kindOf({gauge, wound, material, wrap}: StringPlan): string {
  if (gauge === undefined) return ''
  if (!wound) return material === undefined ? 'plain' : `plain ${material}`
  return `wound${material === 'steel' ? '' : ` on ${material}`}${wrap === undefined ? '' : `, ${wrap}`}`
}

function remarks({strings = [], scale, units}: Plan, hasEnds: boolean): Inline[][] {
  const code = (value: string): Inline => ({type: 'inlineCode', value})
  const longest = strings.reduce<StringPlan | undefined>(
    (most, one) => ((one.lengthNeededMm ?? 0) > (most?.lengthNeededMm ?? 0) ? one : most),
    undefined,
  )
  return [
    ...(hasEnds ? [] : [['Which ends to buy is not said: ', code('ends'), ' is ball, loop or plain.']]),
    ...(scale?.lengthMm === undefined
      ? [['How hard they pull follows from ', code('scale.length'), '.']]
      : []),
    ...(longest ? reach(longest, units) : []),
  ]
}

function reach({name, lengthNeededMm, packetMm}: StringPlan, units: Plan['units']): Inline[][] {
  if (lengthNeededMm === undefined) return []
  const needs = length(lengthNeededMm, {units, rulerMm: units === 'in' ? 12.7 : 10}, 'up')
  if (packetMm === undefined)
    return [[`${name} needs no more than `, needs, ' from anchor to post with its winds.']]
  const rest = lengthNeededMm <= packetMm ? 'and a packet’s string reaches.' : 'more than a packet’s string.'
  return [[`${name} needs the most, `, needs, ` from anchor to post with its winds, ${rest}`]]
}
