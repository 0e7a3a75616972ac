import type {Root} from 'mdast'
import {emptyBuild} from '../../plugins/build-file/build.ts'
import {plainLines} from '../../plugins/build-file/front-matter.ts'
import type {Problem} from '../../plugins/build-file/problem.ts'
import {inOrder, readBuild} from '../../plugins/build-file/read.ts'
import type {RuleName} from '../../plugins/checks/all.ts'
import {checks} from '../../plugins/checks/checks.ts'
import {type Plan, planBuild} from '../../plugins/plan/plan.ts'
import {settle} from '../../plugins/plan/settle.ts'
import {readBody} from '../../plugins/syntax/body.ts'
import {parseBuildFile} from '../../plugins/syntax/parse-build-file.ts'
import {inchMm} from '../../plugins/tables/units.ts'
import {lookAtPicture} from '../pictures/look.ts'
import {downloads} from './downloads.ts'
import {makeBuild, programFails} from './make-build.ts'
import {
  type MakeInput,
  type MakeResult,
  makeKey,
  type PlanInput,
  type PlanResult,
  planKey,
  type ReadInput,
  type ReadResult,
  readKey,
  type Steps,
} from './steps.ts'

/** Do the steps anew. A text is parsed once: its tree waits between the first step and the last. */
export function uncachedSteps(): Steps {
  const trees = new Map<string, Root>()
  return {
    look: ({bytes}) => lookAtPicture(bytes),
    read: async (input) => readHere(input, trees),
    plan: async (input) => planHere(input),
    make: async (input) => {
      const tree = trees.get(input.readKey)
      trees.delete(input.readKey)
      return makeHere(input, tree)
    },
    give: downloads,
  }
}

function readHere(input: ReadInput, trees: Map<string, Root>): ReadResult {
  const {slug, text, journal} = input
  const key = readKey(input)
  const body = (plain: string) => {
    const tree = parseBuildFile(plain)
    trees.set(key, tree)
    return readBody(tree)
  }
  try {
    return {key, ...readBuild(text, {slug, journal, body})}
  } catch (error) {
    return {key, build: emptyBuild(slug), problems: [gravely('read', error)]}
  }
}

function planHere(input: PlanInput): PlanResult {
  const {read, surroundings, journal, pieces, gone} = input
  const key = planKey(input)
  const build = {...read.build, surroundings}
  try {
    const settled = settle(build, journal)
    const plan = planBuild(settled, {journal, pieces, gone})
    return {key, build: settled, plan, problems: inOrder([...read.problems, ...checks(settled, plan)])}
  } catch (error) {
    return {
      key,
      build: {...build, ...nothingSettled},
      plan: nothingPlanned(build.slug),
      problems: inOrder([...read.problems, gravely('plan', error)]),
    }
  }
}

const nothingAssumed = {units: 'in', rulerMm: inchMm / 32, assumptions: []} as const
const nothingPlanned = (slug: string): Plan => ({slug, handed: 'right', ...nothingAssumed})
const nothingSettled = {...nothingAssumed, referenceHz: 440, minutes: 0, told: []}

function makeHere(input: MakeInput, tree: Root | undefined): MakeResult {
  const {planned, text, path, relatives, pictures, published, pathPrefix} = input
  const {build, plan, problems} = planned
  const key = makeKey(input)
  const known = {build, plan, text: plainLines(text), path, relatives, pictures, published, pathPrefix}
  return {key, ...makeBuild({...known, problems, ...(tree && {tree})})}
}

/** A file that cannot be read or planned has no page. */
const gravely = (step: string, error: unknown): Problem<RuleName> => ({
  ...programFails(step, error),
  severity: 'error',
})
