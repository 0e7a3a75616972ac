import {readBuild, readRack} from '../../plugins/build-file/read.ts'
import type {FileExample} from '../../plugins/build-file/rules/rule-text.ts'
import type {Build} from '../../plugins/build-file/schema/build.ts'
import type {Problem} from '../../plugins/build-file/schema/problem.ts'
import {checks} from '../../plugins/checks/checks.ts'
import {type Plan, planBuild} from '../../plugins/plan/plan.ts'
import {noRack, type RackContext, rackOf, throughRack} from '../../plugins/plan/stock/rack.ts'
import {readBody} from '../../plugins/syntax/body.ts'

const usual = [
  'title: Needle box',
  'scale: 24 1/4',
  'strings: [D3 .030w, A3 .020w, D4 .013]',
  'neck: {width: 1 5/8, thickness: 3/4, wood: black cherry}',
  'box: 10 1/8 x 7 x 2',
]

/** Write the file of an example: front matter gets what it leaves out of the usual build, after what it says. */
export function fileOf(example: FileExample): string {
  const text = typeof example === 'string' ? example : example.text
  if (/^(---|# )/.test(text)) return text
  const said = new Set([...text.matchAll(/^([a-z-]+):/gm)].map(([, key]) => key))
  const rest = usual.filter((line) => !said.has(line.slice(0, line.indexOf(':'))))
  return `---\n${[text, ...rest].join('\n')}\n---\n`
}

export interface KnownExample {
  build: Build
  plan: Plan
  problems: Problem[]
}

/** Read, plan and check a file with what lies around it in an example. */
export async function knowExample(text: string, example: FileExample): Promise<KnownExample> {
  const {files, builds, rack, troubles, others = []} = typeof example === 'string' ? {} : example
  const surroundings = files || builds ? {files: files ?? [], builds: builds ?? [], troubles} : undefined
  const {build, problems} = readBuild(text, {
    slug: 'needle-box',
    body: readBody,
    ...(surroundings && {surroundings}),
  })
  let around: RackContext = noRack
  if (rack) {
    const beside = others.map((other, at) => readBuild(other, {slug: `other-${at + 1}`}).build)
    await throughRack(rackOf(readRack(rack).pieces), [build, ...beside], async (one, context) => {
      if (one === build) around = context
      return planBuild(one, {journal: {}, ...context})
    })
  }
  const plan = planBuild(build, {journal: {}, ...around})
  return {build, plan, problems: [...problems, ...checks(build, plan)]}
}
