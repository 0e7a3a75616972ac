import type {BlockContent} from 'mdast'
import type {Plan} from '../plan/plan.ts'
import type {Step} from '../plan/work/step.ts'
import {cautionSigns, comesFirst} from '../tables/hazards.ts'
import {hoursInWords, inWords, number} from '../words/quantities.ts'
import {type BenchStep, type Inline, link, note, paragraph, source, steps, strong} from './kit.ts'
import {fractions, lengthAlone} from './measures.ts'
import type {Section} from './section.ts'

/** The steps of this design in an order that works, ticked as far as the journal tells. */
export const workOrder: Section = {
  name: 'work-order',
  title: 'Work order',
  needs: ({plan}) => (plan.work ? [] : ['box', 'neck']),
  content: ({plan}) => {
    const {work = []} = plan
    const waits = work.find(({waitFrom}) => waitFrom)
    return [
      paragraph(comesFirst),
      paragraph(howFar(plan).join(' ')),
      steps(work.map((step) => inWordsOf(step, plan))),
      note(
        'A day’s heading or a ticked task that names a step ticks it, and with it all that must have come before.',
      ),
      ...(waits ? [source(`waiting times: ${waits.waitFrom}.`)] : []),
    ]
  },
}

function inWordsOf(step: Step, plan: Plan): BenchStep {
  const {does, tool, setting, stations, check, isDone} = step
  const lines: Inline[][] = [
    fractions([tool, setting].filter(Boolean).join(': ')),
    stationsInWords(stations, plan),
    waiting(step, plan.work ?? []),
    check ? ['Check: ', ...fractions(check)] : [],
    warned(step.cautions),
  ]
  const under: BlockContent[] = lines.filter((line) => line.length > 0).map((line) => note(...line))
  return {does: [strong(`${step.step}.`), ' ', ...fractions(does)], under, isDone}
}

function waiting({waitH, meanwhile = []}: Step, work: readonly Step[]): Inline[] {
  if (waitH === undefined) return []
  const others = meanwhile.map((id) => work.find((one) => one.id === id)?.step.toLowerCase() ?? id)
  const then = others.length > 0 ? `; meanwhile: ${inWords(others)}` : ''
  return [`Wait ${hoursInWords(waitH)}${then}.`]
}

function warned(ids: readonly string[]): Inline[] {
  if (ids.length === 0) return []
  const signs: Readonly<Record<string, {name: string} | undefined>> = cautionSigns
  return [strong('Mind: '), link('#cautions', ids.map((id) => signs[id]?.name ?? id).join(', ')), '.']
}

/** Say how far the build is, and how long its waits and its days take: a sentence each. */
export function howFar({work = [], workTime}: Plan): string[] {
  const done = work.filter(({isDone}) => isDone).length
  const next = work.find(({isDone}) => !isDone)
  const {waitH = 0, benchH} = workTime ?? {}
  return [
    `${done} of ${work.length} steps done${next && done > 0 ? `; next: ${next.step}` : ''}.`,
    ...(waitH > 0 ? [`Glue and finish ask for ${hoursInWords(waitH)} of waiting at least.`] : []),
    ...(benchH === undefined ? [] : [`The days told of so far: ${number(benchH, 1)} h at the bench.`]),
  ]
}

type Station = Step['stations'][number]

/** Say where a step is done, from the nut line: `line 1 at 1 3/8 in; line 2 at 2 21/32 in`. */
function stationsInWords(stations: readonly Station[], plan: Plan): Inline[] {
  return stations.flatMap((station, at): Inline[] => [
    `${at > 0 ? '; ' : ''}${station.what} at `,
    lengthAlone(station.stationMm, plan),
    ...(station.offMm ? [', ', lengthAlone(station.offMm, plan), ' off centre'] : []),
    ...(station.depthMm === undefined ? [] : [', ', lengthAlone(station.depthMm, plan, 'down'), ' deep']),
  ])
}
