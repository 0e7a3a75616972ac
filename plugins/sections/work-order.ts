import type {BlockContent} from 'mdast'
import type {Plan} from '../plan/plan.ts'
import type {Step} from '../plan/work/step.ts'
import {cautionSigns, comesFirst} from '../tables/hazards.ts'
import {waitSource} from '../tables/waits.ts'
import {stationName} from '../words/places.ts'
import {hoursInWords, inWords} from '../words/quantities.ts'
import {howFar, meanwhileNames, stepInWords} from '../words/steps.ts'
import {type BenchStep, type Inline, link, note, paragraph, source, steps, strong} from './kit.ts'
import {fractions, fromNut, lengthAlone, offCentre} from './measures.ts'
import type {Section} from './section.ts'

/** The steps of this design in an order that works, ticked as far as the journal tells. */
export const workOrder: Section = {
  name: 'work-order',
  title: 'Work order',
  needs: ({plan}) => (plan.work ? [] : ['box', 'neck']),
  content: ({plan}) => {
    const {work = []} = plan
    const hasWaits = work.some(({waitH}) => waitH !== undefined)
    return [
      paragraph(comesFirst),
      paragraph(howFar(plan).join(' ')),
      steps(work.map((step) => inWordsOf(step, plan))),
      note(
        'A day’s heading or a ticked task that names a step ticks it, and with it all that must have come before.',
      ),
      ...(hasWaits ? [source(`waiting times: ${waitSource}.`)] : []),
    ]
  },
}

function inWordsOf(one: Step, plan: Plan): BenchStep {
  const {step, does, tool, setting, check} = stepInWords(one, plan)
  const lines: Inline[][] = [
    fractions(setting ? `${tool}: ${setting}` : tool),
    stationsInWords(one.stations, plan),
    waiting(one, plan.work ?? []),
    check ? ['Check: ', ...fractions(check)] : [],
    warned(one.cautions),
  ]
  const under: BlockContent[] = lines.filter((line) => line.length > 0).map((line) => note(...line))
  return {does: [strong(`${step}.`), ' ', ...fractions(does)], under, isDone: one.isDone}
}

function waiting(step: Step, work: readonly Step[]): Inline[] {
  if (step.waitH === undefined) return []
  const others = meanwhileNames(step, work)
  const then = others.length > 0 ? `; meanwhile: ${inWords(others)}` : ''
  return [`Wait ${hoursInWords(step.waitH)}${then}.`]
}

function warned(ids: readonly string[]): Inline[] {
  if (ids.length === 0) return []
  const signs: Readonly<Record<string, {name: string} | undefined>> = cautionSigns
  return [strong('Mind: '), link('#cautions', ids.map((id) => signs[id]?.name ?? id).join(', ')), '.']
}

type Station = Step['stations'][number]

/** Say where a step is done, from the nut line: `line 1 at 1 3/8 in; line 2 at 2 21/32 in`. */
function stationsInWords(stations: readonly Station[], plan: Plan): Inline[] {
  return stations.flatMap((station, at): Inline[] => [
    `${at > 0 ? '; ' : ''}${stationName(station)} at `,
    ...fromNut(station.stationMm, plan),
    ...(station.offMm ? [', ', ...offCentre(station.offMm, plan)] : []),
    ...(station.depthMm === undefined ? [] : [', ', lengthAlone(station.depthMm, plan, 'down'), ' deep']),
  ])
}
