import type {Element, ElementContent} from 'hast'
import {h} from 'hastscript'
import type {Plan} from '../../plugins/plan/plan.ts'
import type {Step} from '../../plugins/plan/work/step.ts'
import {namesOf} from '../../plugins/tables/work-kinds.ts'
import {bitName, holeGroup, shortBitName, stringOf} from '../../plugins/words/holes.ts'
import {bareLength, type Ruler} from '../../plugins/words/lengths.ts'
import {shortStationName, stationName} from '../../plugins/words/places.ts'
import {hoursInWords} from '../../plugins/words/quantities.ts'
import {behind, sideWord} from '../../plugins/words/sides.ts'
import {meanwhileNames, stepInWords, stepName} from '../../plugins/words/steps.ts'
import {withFractions} from '../kit/markup.ts'

/** What stands beside a step: cautions met first here, with what to do, and by name those met before. */
export interface Beside {
  first: Element | undefined
  again: ElementContent[]
}

interface AroundStep {
  plan: Plan
  beside: Beside
  /** The tool of the step before. */
  inHand: Step['tool'] | undefined
  picture: Element | undefined
}

/**
 * Write one step of the bench sheet: what to do and to mind, then setting, places, check and wait. The tool is named
 * unless it is in hand from the step before; that is said where the step is shown by itself.
 */
export function benchStep(step: Step, {plan, beside, inHand, picture}: AroundStep): Element {
  const {first, again} = beside
  const {id, isDone} = step
  const {step: called, does, tool, setting, check} = stepInWords(step, plan)
  const hand = ` (${tool})`
  const name = h('strong', [called, step.tool === inHand ? h('span.in-hand', hand) : hand, '.'])
  const mindAgain = again.length > 0 ? [' Mind ', ...again, '.'] : []
  // Where each place is listed under its bit, the bits need not be said before.
  const isListed = step.stations.some(({bit}) => bit !== undefined)
  const ticked = (words: string) => boxToTick(`${id} ${words}`, withFractions(words))
  const last = [...(check ? [ticked(check), ' '] : []), ...waiting(step, plan)]
  return h('li', {id, dataStep: nameToTick(step)}, [
    picture,
    boxToTick(id, [name, ' ', ...withFractions(does), ...mindAgain], isDone),
    first,
    setting && !isListed ? h('p.set', [ticked(setting), ' ']) : undefined,
    ...benchStations(step, plan),
    last.length > 0 ? h('p.last', last) : undefined,
  ])
}

/** How a build file ticks a step: by its name, or by its id where another step is called so too. */
const nameToTick = (step: Step) => {
  const name = stepName(step)
  return namesOf(step.id, step.kind).name === name ? name : step.id
}

function waiting(step: Step, {work = []}: Plan): Element[] {
  if (step.waitH === undefined) return []
  const [first] = meanwhileNames(step, work)
  return [h('em', `Wait ${hoursInWords(step.waitH)}${first ? `; meanwhile ${first}` : ''}.`)]
}

type Station = Step['stations'][number]

/** List a step's places, each with its box: lines by their number, holes under their face, bit and what they are for. */
function benchStations({id, stations}: Step, plan: Plan): Element[] {
  const groups = new Map<string, Station[]>()
  for (const station of stations) {
    const of = groupOf(station)
    groups.set(of, [...(groups.get(of) ?? []), station])
  }
  const isFromBox = stations.some(({alongMm}) => alongMm !== undefined)
  const from = isFromBox ? [h('p.on-screen', h('em', 'From the box’s head end:'))] : []
  const lists = [...groups].map(([of, places]) =>
    h(of ? 'div.places.holes' : 'div.places', [
      ...(of ? [h('em', [...withFractions(of), ...proposedMark(places, plan), ': '])] : []),
      h(
        'ul',
        places.flatMap((place) => [h('li', [boxToTick(`${id} ${keyOf(place)}`, words(place, plan))]), ' ']),
      ),
    ]),
  )
  return [...from, ...lists]
}

/** Say that holes are proposed, so that nobody takes them for the file's own; paper has no room for it. */
const proposedMark = (places: readonly Station[], {holes = []}: Plan): Element[] =>
  holes.some(
    (hole) =>
      hole.proposed &&
      places.some(
        ({face, stationMm, offMm}) =>
          face === hole.face && stationMm === hole.stationMm && offMm === hole.offMm,
      ),
  )
    ? [h('span.on-screen', ' (proposed)')]
    : []

/** Holes of one face, bit and kind stand together: `neck back, 5/16 in, ferrule`. */
function groupOf({what, face, bit}: Station): string {
  if (bit === undefined) return ''
  return [face, shortBitName(bit), 'hole' in what && holeGroup(what)].filter(Boolean).join(', ')
}

const keyOf = ({what, stationMm, offMm = 0, bit}: Station) =>
  `${stationName({what})} ${stationMm.toFixed(2)} ${offMm.toFixed(2)} ${bit ? bitName(bit) : ''}`.trim()

function words({what, stationMm, alongMm, offMm, depthMm}: Station, plan: Plan) {
  const atMm = alongMm ?? stationMm
  const name = 'hole' in what ? stringOf(what) : shortStationName({what})
  return [
    name && `${name}: `,
    h('strong', [...bare(Math.abs(atMm), plan), ...(atMm < 0 ? [` ${behind}`] : [])]),
    ...(offMm ? [', ', ...bare(Math.abs(offMm), plan), ` ${sideWord(offMm, plan)}`] : []),
    ...(depthMm === undefined ? [] : [' deep ', ...bare(depthMm, plan, 'down')]),
  ]
}

/** Write a length (mm) to the ruler without its unit, which the sheet names once. */
function bare(mm: number, ruler: Ruler, rounding: 'nearest' | 'down' = 'nearest'): ElementContent[] {
  return withFractions(bareLength(mm, ruler, rounding))
}

/** Set a box before what it ticks. The browser keeps ticks by `key`, which no other box of the sheet has. */
function boxToTick(key: string, words: (string | ElementContent)[], isTicked = false): Element {
  const box = h('input', {type: 'checkbox', value: key, ...(isTicked && {checked: true})})
  return h('label', [box, ' ', h('span', words)])
}
