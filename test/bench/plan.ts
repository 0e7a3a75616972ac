import {readFileSync} from 'node:fs'
import {readBuild} from '../../plugins/build-file/read.ts'
import {checks} from '../../plugins/checks/checks.ts'
import {cuts} from '../../plugins/plan/cuts/cuts.ts'
import {parts} from '../../plugins/plan/parts.ts'
import {planBuild} from '../../plugins/plan/plan-build.ts'
import {settle} from '../../plugins/plan/settle.ts'
import type {Plan} from '../../plugins/plan/shape/plan.ts'
import type {Measure} from '../bench.ts'

/** Run something often enough to be warm, and say what one run takes: the median, in ms. */
function medianMs(run: () => void, times = 1500): number {
  for (let i = 0; i < times / 2; i++) run()
  const took = Array.from({length: times}, () => {
    const start = performance.now()
    run()
    return performance.now() - start
  }).sort((a, b) => a - b)
  return took[times / 2]!
}

/** The plan of the long example without cuts against the millisecond it may take; reading and checks against the plan. */
export async function bench(): Promise<Measure[]> {
  const text = readFileSync('test/journals/long-example/builds/lantern-pier/index.md', 'utf8')
  const {build} = readBuild(text, {slug: 'lantern-pier'})
  const context = {journal: {}, pieces: []}
  const plan = planBuild(build, context)
  const uncut = parts.filter((part) => part !== cuts)
  const planMs = medianMs(() => {
    const {settled, assumptions} = settle(build, context.journal)
    const soFar: Plan = {...plan, assumptions}
    for (const part of uncut) Object.assign(soFar, part(settled, soFar, context))
  })
  const readMs = medianMs(() => readBuild(text, {slug: 'lantern-pier'}))
  const checksMs = medianMs(() => checks(build, plan))
  return [
    {
      name: 'plan of the long example without cuts, against 1 ms',
      ratio: planMs,
      detail: `${planMs.toFixed(3)} ms, median, warm`,
    },
    {name: 'reading it, against planning it', ratio: readMs / planMs, detail: `${readMs.toFixed(3)} ms`},
    {name: 'checking it, against planning it', ratio: checksMs / planMs, detail: `${checksMs.toFixed(3)} ms`},
  ]
}
