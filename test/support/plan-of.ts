import {inOrder, readBuild} from '../../plugins/build-file/read.ts'
import type {Problem} from '../../plugins/build-file/schema/problem.ts'
import {checks} from '../../plugins/checks/checks.ts'
import type {Piece} from '../../plugins/plan/kit/context.ts'
import type {Settled} from '../../plugins/plan/kit/settled.ts'
import {type Plan, planBuild} from '../../plugins/plan/plan.ts'
import {settle} from '../../plugins/plan/settle.ts'
import {type PrintedPlan, printedPlan} from '../../plugins/words/printed-plan.ts'

/**
 * Read and plan a build given as front matter without its fences; line 1 of it is line 2 of the file. It is checked
 * once somebody asks for its problems.
 */
export function planOf(
  frontMatter: string,
  pieces: Piece[] = [],
): {build: Settled; plan: Plan; problems: Problem[]} {
  const journal = {}
  const {build, problems} = readBuild(`---\n${frontMatter.trim()}\n---\n`, {slug: 'needle-box', journal})
  const settled = settle(build, journal)
  const plan = planBuild(settled, {journal, pieces})
  let found: Problem[] | undefined
  return {
    build: settled,
    plan,
    get problems() {
      found ??= inOrder([...problems, ...checks(settled, plan)])
      return found
    },
  }
}

/** Plan a build as planOf does, and give the plan as it is printed: with its texts. */
export function printedOf(frontMatter: string, pieces?: Piece[]): PrintedPlan {
  return printedPlan(planOf(frontMatter, pieces).plan)
}
