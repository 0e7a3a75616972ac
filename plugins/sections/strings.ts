import type {BlockContent} from 'mdast'
import {pullPlot} from '../drawings/plots/pull-plot.ts'
import type {Plan} from '../plan/plan.ts'
import type {StringPlan} from '../plan/strings/strings.ts'
import {writeGauge} from '../words/lengths.ts'
import {forceWords, inWords, number} from '../words/quantities.ts'
import {figure, fold, holds, type Inline, note, paragraph, strong} from './kit.ts'
import {type Cell, table} from './kit-table.ts'
import {force, length} from './measures.ts'
import type {Section, SectionInput} from './section.ts'
import {stringFigures} from './string-figures.ts'

/** What strings to buy, how hard each pulls, what else would do, and what else they can be tuned to. */
export const strings: Section = {
  name: 'strings',
  title: 'Strings',
  needs: ({plan, build}) => (plan.strings ? [] : missing(build)),
  content: ({plan}) => {
    const [buy, pulls] = [toBuy(plan), pullsPlotted(plan)]
    const [gauges, tunings] = [otherGauges(plan), otherTunings(plan)]
    const name = holds(
      ['strings to buy', buy],
      ['pulls', pulls],
      ['other gauges', gauges],
      ['other tunings', tunings],
    )
    return [
      ...pullsInWords(plan).map((said) => paragraph(...said)),
      ...fold(name, [...buy, ...pulls, ...gauges, ...tunings, ...stringFigures(plan)]),
    ]
  },
}

function missing({values}: SectionInput['build']): string[] {
  const at = (values.strings ?? []).findIndex(({note}) => !note)
  return at < 0 ? ['strings'] : [`strings.${at + 1}.note`]
}

/** Say in one line how hard the strings pull: `All pull firm, together 64.7 lbf (288 N).` Nothing where no pull is known. */
function pullsInWords(plan: Plan): Inline[][] {
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

/** List the exact strings to buy, and what else a shop has to be told: ends, and the longest one needed. */
function toBuy(plan: Plan): BlockContent[] {
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
    ...turnsToPitch(strings),
  ]
}

function turnsToPitch(strings: readonly StringPlan[]): Inline[][] {
  const turns = strings.flatMap(({name, buttonTurns}) =>
    buttonTurns === undefined ? [] : [`${number(buttonTurns, 1)} for ${name}`],
  )
  if (turns.length === 0) return []
  return [
    [
      `Turns of the button from taut to pitch: ${inWords(turns)}; that is what the string stretches (Hooke’s law), on a post as thick as its hole.`,
    ],
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

/** Plot each string's pull against its limits; its table is that of the strings to buy. */
function pullsPlotted(plan: Plan): BlockContent[] {
  const rows = (plan.strings ?? []).flatMap(({name, gauge, tensionN, pullLimits: limits, pull}) =>
    tensionN === undefined || !limits
      ? []
      : [
          {
            label: gauge ? `${name} ${gauge}` : name,
            tensionN,
            says: forceWords(tensionN, plan),
            limits,
            pull,
          },
        ],
  )
  if (rows.length === 0) return []
  const says = `${rows.map(({label, says: pulls, pull}) => `${label} pulls ${pulls}, ${pull}`).join('; ')}.`
  return [
    figure(pullPlot(rows, {id: 'pull-plot', says}), {
      alt: says,
      caption: ['Pull of each string; the band runs from slack to stiff (common practice, no source).'],
    }),
  ]
}

/** List other common gauges that would do for each string, and what each would pull. */
function otherGauges(plan: Plan): BlockContent[] {
  const rows = (plan.strings ?? []).flatMap(({name, alternatives = []}) => {
    const said = alternatives.flatMap(({gauge, tensionN}, at): Inline[] => [
      ...(at === 0 ? [] : ['; ']),
      strong(writeGauge(gauge, plan.units)),
      ` ${forceWords(tensionN, plan)}`,
    ])
    return said.length > 0 ? [[name, said]] : []
  })
  if (rows.length === 0) return []
  return [
    table({
      caption: 'Other common gauges that would do, and what each would pull',
      columns: [{head: 'For'}, {head: 'The nearest first'}],
      rows,
    }),
  ]
}

/** List other common tunings that the same strings carry, and what each string would pull. */
function otherTunings(plan: Plan): BlockContent[] {
  const {tunings = []} = plan
  if (tunings.length === 0) return []
  const pulls = (tensionsN: readonly number[], words: readonly string[]) =>
    tensionsN.map((tensionN, at) => `${forceWords(tensionN, plan)} ${words[at]}`).join('; ')
  return [
    table({
      caption: 'Other common tunings that these strings carry',
      columns: [{head: 'Notes'}, {head: 'Tuning'}, {head: 'Pull, string by string'}],
      rows: tunings.map(({name, notes, tensionsN, pulls: words}) => [
        notes.join(' '),
        name,
        pulls(tensionsN, words),
      ]),
    }),
  ]
}
