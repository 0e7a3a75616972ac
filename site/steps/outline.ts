import type {Build} from '../../plugins/build-file/schema/build.ts'
import type {BuildValues} from '../../plugins/build-file/schema/schema.ts'
import type {Settled} from '../../plugins/plan/kit/settled.ts'
import type {Plan} from '../../plugins/plan/plan.ts'
import {type Cache, keyOf} from '../kit/cache.ts'
import {isPlanResult, isReadResult} from './kept-shapes.ts'
import type {PlanResult} from './results.ts'
import {type PlanInput, planKey, readKey, type Steps} from './steps.ts'

/*
 * Of a thousand builds none is held in memory as a whole. What the rest of the journal asks of a build is its outline, a
 * few kB; whatever its own pages are made of besides is read again for them alone.
 */

/** Take of each build its outline alone, which the cache holds; what is not there is made by the whole steps. */
export function outlineSteps(whole: Steps, cache: Cache): Pick<Steps, 'look' | 'lookedAt' | 'read' | 'plan'> {
  return {
    look: whole.look,
    lookedAt: whole.lookedAt,
    read: (input) => {
      const key = readKey(input)
      const make = async () => {
        const read = await whole.read(input)
        return {...read, build: outlineOf(read.build)}
      }
      return cache.value(keyOf('outline', key), make, isReadResult(key, input.slug))
    },
    plan: (input) => {
      const key = planKey(input)
      const make = async () => {
        const {build, plan, ...planned} = await wholePlan(input, whole)
        return outlined({...planned, build: settledOutline(build), plan: planOutline(plan, build)})
      }
      return cache.value(keyOf('outline', key), make, isOutline(key, input.read.build.slug))
    },
  }
}

/** Plan a build of which the outline was read. */
export async function wholePlan(input: PlanInput, whole: Steps): Promise<PlanResult> {
  const {read, text, context} = input
  const {build} = await whole.read({slug: read.build.slug, text, journal: context.journal})
  return whole.plan({...input, read: {...read, build}})
}

function outlined(planned: PlanResult): PlanResult {
  const {days, links, ...settled} = planned.build
  return {...planned, shown: keyOf(JSON.stringify([planned.plan, settled]))}
}

const isOutline = (key: string, slug: string) => {
  const isPlan = isPlanResult(key, slug)
  return (value: unknown): value is PlanResult => isPlan(value) && value.shown !== undefined
}

const outlineOf = ({slug, values, days, links}: Build): Build => ({
  slug,
  values: valuesOutline(values),
  places: {},
  keys: {},
  days,
  links,
  directives: [],
  references: [],
})

function settledOutline(build: Settled): Settled {
  const {units, rulerMm, referenceHz, minutes} = build
  const nothing = {assumptions: [], proposals: [], told: []}
  return {...outlineOf(build), ...nothing, units, rulerMm, referenceHz, minutes}
}

/** The values that pages of the whole journal, other builds and the rack ask for. */
const valueNames = [
  'title',
  'summary',
  'tags',
  'status',
  'started',
  'finished',
  'publish',
  'based-on',
  'cover',
  'recordings',
  'played',
  'scale',
  'take',
  'stock',
] as const satisfies readonly (keyof BuildValues)[]

function valuesOutline(values: BuildValues): BuildValues {
  const {neck, box, strings, measured} = values
  return {
    ...picked(values, valueNames),
    ...(strings && {strings: strings.map(() => ({}))}),
    ...(neck?.joins && {neck: {joins: neck.joins}}),
    ...(box?.wood && {box: {wood: box.wood}}),
    ...(measured?.on && {measured: {days: [], on: measured.on}}),
  }
}

/** What those ask of a plan; the work and what is to get are asked of open builds alone. */
const planNames = [
  'slug',
  'status',
  'play',
  'units',
  'rulerMm',
  'handed',
  'tensionTotalN',
  'strings',
  'outline',
  'box',
  'bridge',
  'action',
  'asBuilt',
  'cuts',
  'bill',
] as const satisfies readonly (keyof Plan)[]

function planOutline(plan: Plan, {values}: Build): Plan {
  const {scale} = plan
  return {
    ...picked(plan, planNames),
    ...(!values.finished && picked(plan, ['work', 'settingUp'])),
    ...(scale && {scale: {lengthMm: scale.lengthMm, fretted: scale.fretted} as typeof scale}),
    assumptions: [],
  }
}

function picked<T extends object, K extends keyof T>(all: T, names: readonly K[]): Pick<T, K> {
  return Object.fromEntries(
    names.flatMap((name) => (all[name] === undefined ? [] : [[name, all[name]]])),
  ) as Pick<T, K>
}
