import {readFileSync} from 'node:fs'
import {readBuild} from '../../plugins/build-file/read.ts'
import {checks} from '../../plugins/checks/checks.ts'
import {planBuild} from '../../plugins/plan/plan.ts'
import {settle} from '../../plugins/plan/settle.ts'
import {planCuts} from '../../plugins/plan/stock/cut-list.ts'
import type {Measure} from '../bench.ts'

interface Took {
  ms: number
  /** The same in the slowest round. */
  atWorstMs: number
}

/**
 * Run something until it is warm, and say what one run takes: the median of a round of 500. Of five rounds the
 * quickest counts, since what else a machine does only ever adds.
 */
function medianMs(run: () => void): Took {
  for (let i = 0; i < 3000; i++) run()
  const rounds = Array.from({length: 5}, () => {
    const took = Array.from({length: 500}, () => {
      const start = performance.now()
      run()
      return performance.now() - start
    })
    return took.sort((a, b) => a - b)[250]!
  })
  return {ms: Math.min(...rounds), atWorstMs: Math.max(...rounds)}
}

const detail = ({ms, atWorstMs}: Took) =>
  `${ms.toFixed(3)} ms, median, warm; ${atWorstMs.toFixed(3)} ms in the slowest of five rounds`

/** The plan of the long example without cuts against the millisecond it may take; reading and checks against the plan. */
export async function bench(): Promise<Measure[]> {
  const text = readFileSync('test/journals/long-example/builds/lantern-pier/index.md', 'utf8')
  const {build} = readBuild(text, {slug: 'lantern-pier'})
  const context = {journal: {}, pieces: []}
  const plan = planBuild(build, context)
  const settled = settle(build, context.journal)
  const whole = medianMs(() => planBuild(build, context))
  const cut = medianMs(() => planCuts(settled, plan.neck, context.pieces))
  const planned = {ms: whole.ms - cut.ms, atWorstMs: whole.atWorstMs - cut.ms}
  const read = medianMs(() => readBuild(text, {slug: 'lantern-pier'}))
  const checked = medianMs(() => checks(build, plan))
  return [
    {
      name: 'plan of the long example without cuts, against 1 ms',
      ratio: planned.ms,
      detail: detail(planned),
    },
    {name: 'reading it, against planning it', ratio: read.ms / planned.ms, detail: detail(read)},
    {name: 'checking it, against planning it', ratio: checked.ms / planned.ms, detail: detail(checked)},
  ]
}
