import type {Plan} from '../plan/plan.ts'
import type {Step, Tool} from '../plan/work/step.ts'
import type {StepFacts} from '../plan/work/step-facts.ts'
import {namesOf} from '../tables/work-kinds.ts'
import type {Ruler} from './lengths.ts'
import {hoursInWords, number} from './quantities.ts'
import {type StepWords, type WordsOf, writing} from './step-writing.ts'
import {boxSteps} from './steps-box.ts'
import {joiningSteps} from './steps-joining.ts'
import {neckSteps} from './steps-neck.ts'

/** Say what is done in a step, with what, and how it is checked. */
export function stepInWords(step: Step, ruler: Ruler): StepWords {
  const {facts, tool} = step
  const said = (words[facts.of] as (facts: StepFacts, by: ReturnType<typeof writing>) => Said)(
    facts,
    writing(ruler),
  )
  return {step: stepName(step), tool: toolNames[tool], ...said}
}

type Said = ReturnType<WordsOf['mill']>
const words: WordsOf = {...neckSteps, ...boxSteps, ...joiningSteps}

/** Name a step: `Saw the scarf`. */
export function stepName({id, kind, facts}: Pick<Step, 'id' | 'kind' | 'facts'>): string {
  if (facts.of === 'finish') return facts.name.charAt(0).toUpperCase() + facts.name.slice(1)
  if (facts.of === 'cut-rod') return `Cut the ${facts.for}’s ${facts.rod}`
  return namesOf(id, kind).name
}

/** Say how far the build is, and how long its waits and its days take: a sentence each. */
export function howFar({work = [], workTime}: Plan): string[] {
  const done = work.filter(({isDone}) => isDone).length
  const next = work.find(({isDone}) => !isDone)
  const {waitH = 0, benchH} = workTime ?? {}
  return [
    `${done} of ${work.length} steps done${next && done > 0 ? `; next: ${stepName(next)}` : ''}.`,
    ...(waitH > 0 ? [`Glue and finish ask for ${hoursInWords(waitH)} of waiting at least.`] : []),
    ...(benchH === undefined ? [] : [`The days told of so far: ${number(benchH, 1)} h at the bench.`]),
  ]
}

/** Name in lower case what can be done while a step's glue or finish dries. */
export function meanwhileNames({meanwhile = []}: Step, work: readonly Step[]): string[] {
  return meanwhile
    .flatMap((id) => work.find((one) => one.id === id) ?? [])
    .map((one) => stepName(one).toLowerCase())
}

const toolNames: Readonly<Record<Tool, string>> = {
  block: 'block and paper',
  carrier: 'saw and carrier, plane',
  chisel: 'fine saw and chisel',
  clamps: 'glue and clamps',
  'drill press': 'drill press',
  file: 'file',
  'fret saw': 'fret saw and mitre box',
  hacksaw: 'vice and hacksaw',
  hammer: 'hammer and nippers',
  'hand drill': 'hand drill, stop',
  hands: 'hands and cutters',
  'hot pen': 'hot pen',
  iron: 'soldering iron',
  jointer: 'plane, or jointer',
  knife: 'rule and knife',
  planer: 'plane, or planer',
  pliers: 'pliers, magnet and rag',
  rag: 'rag or brush',
  'rip saw': 'rip or table saw',
  router: 'router, or rasp',
  saw: 'saw, plane and file',
  scraper: 'water and scraper',
  screwdriver: 'screwdriver',
  tuner: 'rule, files and tuner',
}
