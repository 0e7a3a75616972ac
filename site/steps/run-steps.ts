import type {Root} from 'mdast'
import {inOrder, readBuild} from '../../plugins/build-file/read.ts'
import {plainLines} from '../../plugins/build-file/reading/front-matter.ts'
import {emptyBuild} from '../../plugins/build-file/schema/build.ts'
import {type Problem, wholeFile} from '../../plugins/build-file/schema/problem.ts'
import type {RuleName} from '../../plugins/checks/all.ts'
import {checks} from '../../plugins/checks/checks.ts'
import {effectsOf} from '../../plugins/plan/effects.ts'
import {type Plan, planBuild} from '../../plugins/plan/plan.ts'
import {settle} from '../../plugins/plan/settle.ts'
import {readBody} from '../../plugins/syntax/body.ts'
import {parseBuildFile} from '../../plugins/syntax/parse-build-file.ts'
import {inchMm} from '../../plugins/tables/units.ts'
import {lookAtPicture} from '../pictures/look.ts'
import {downloads} from './downloads.ts'
import {drawBuild} from './draw-build.ts'
import {makeBuild} from './make-build.ts'
import {programFails, tried} from './program-fails.ts'
import type {MakeResult, PlanResult, ReadResult} from './results.ts'
import {
  type MakeInput,
  makeKey,
  type PlanInput,
  planKey,
  type ReadInput,
  readKey,
  type Steps,
} from './steps.ts'

/** So many trees wait in memory; of a larger journal some texts are parsed twice. */
const mostTrees = 32

/** Do the steps anew. A text is parsed once: its tree waits between the first step and the last. */
export function uncachedSteps(): Steps {
  const trees = new Map<string, Root>()
  return {
    look: ({bytes}) => lookAtPicture(bytes),
    lookedAt: async () => undefined,
    read: async (input) => readHere(input, trees),
    plan: async (input) => planHere(input),
    make: async (input) => {
      const tree = trees.get(input.readKey)
      trees.delete(input.readKey)
      return makeHere(input, tree)
    },
    draw: async (input) => drawBuild(input),
    compare: async ({build, original, journal}) => {
      const {mended} = original
      const read = ({slug, text}: typeof build) => readBuild(text, {slug, journal}).build
      return effectsOf(read(original), read(build), {journal, mended})
    },
    give: downloads,
  }
}

function readHere(input: ReadInput, trees: Map<string, Root>): ReadResult {
  const {slug, text, journal} = input
  const key = readKey(input)
  const body = (plain: string) => {
    const tree = parseBuildFile(plain)
    if (trees.size < mostTrees) trees.set(key, tree)
    return readBody(tree)
  }
  try {
    return {key, ...readBuild(text, {slug, journal, body})}
  } catch (error) {
    const {build, problems} = readDimensions(input)
    return {key, build, problems: inOrder([...problems, programFails('read', error)])}
  }
}

/** Where the prose cannot be read the dimensions may be; where neither can, a file that may be a draft is one. */
function readDimensions({slug, text, journal}: ReadInput): Pick<ReadResult, 'build' | 'problems'> {
  try {
    return readBuild(text, {slug, journal})
  } catch {
    const isDraft = /^["']?publish\b/m.test(plainLines(text))
    const draft = {publish: {value: false, text: 'false', place: wholeFile}}
    return {build: {...emptyBuild(slug), values: isDraft ? draft : {}}, problems: []}
  }
}

function planHere(input: PlanInput): PlanResult {
  const {read, surroundings, context} = input
  const key = planKey(input)
  const build = {...read.build, surroundings}
  const faults: Problem<RuleName>[] = []
  const failed = (what: string, error: unknown) => void faults.push(programFails(what, error))
  const settled = tried('settle', () => settle(build, context.journal), failed) ?? {
    ...build,
    ...nothingSettled,
  }
  const planned = tried('plan', () => planBuild(settled, context), failed)
  const found = planned && tried('check', () => checks(settled, planned), failed)
  return {
    key,
    build: settled,
    plan: planned ?? nothingPlanned(build.slug),
    problems: inOrder([...read.problems, ...(found ?? []), ...faults]),
  }
}

const nothingAssumed = {units: 'in', rulerMm: inchMm / 32, assumptions: [], proposals: []} as const
const nothingPlanned = (slug: string): Plan => ({slug, handed: 'right', ...nothingAssumed})
const nothingSettled = {...nothingAssumed, referenceHz: 440, minutes: 0, told: []}

function makeHere(input: MakeInput, tree: Root | undefined): MakeResult {
  const {planned, text, path, relatives, pictures, published, pathPrefix, isForVisitors} = input
  const {build, plan, problems} = planned
  const key = makeKey(input)
  const known = {build, plan, text: plainLines(text), path, relatives, pictures, published}
  return {key, ...makeBuild({...known, problems, pathPrefix, isForVisitors, ...(tree && {tree})})}
}
