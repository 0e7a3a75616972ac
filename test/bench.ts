import {readdirSync, readFileSync, writeFileSync} from 'node:fs'
import {cpus, loadavg, type} from 'node:os'
import {parseArgs} from 'node:util'

const usage = `npm run bench                         measures everything that is in test/bench/
npm run bench -- site                 that file alone
npm run bench -- site --builds=100,1000,5000
                                      the whole site at so many builds; the more, the longer
npm run bench -- site --readme        writes the figures into the README's table, beside those kept of other numbers`

/** What was measured against what, as a ratio within one run. */
export interface Measure {
  name: string
  ratio: number
  detail: string
}

/** What a run asks for. */
export interface Asked {
  /** The numbers of builds to measure the whole site at. */
  counts: readonly number[]
  /** What is measured is kept for the README, and what was is measured with it. */
  isKept: boolean
  /** Told what is measured now. */
  told: (what: string) => void
}

const {values, positionals} = parseArgs({
  options: {builds: {type: 'string', default: '100,1000'}, readme: {type: 'boolean', default: false}},
  allowPositionals: true,
})
const counts = values.builds.split(',').map(Number)
const files = readdirSync(new URL('bench/', import.meta.url)).sort()
const wanted =
  positionals.length === 0 ? files : files.filter((file) => positionals.includes(file.slice(0, -3)))
if (wanted.length < positionals.length || !counts.every((count) => Number.isInteger(count) && count > 7)) {
  console.error(usage)
  process.exit(2)
}

/** More was at work than there are cores for, before anything was measured. */
const isBusy = loadavg()[0]! > cpus().length

const told = (what: string) => console.error(`${new Date().toTimeString().slice(0, 8)} ${what}`)
const all: Measure[] = []
// Every file of test/bench measures one thing against another in the same run: ratios survive a change of machine.
for (const file of wanted) {
  const {bench} = (await import(new URL(`bench/${file}`, import.meta.url).href)) as {
    bench: (asked: Asked) => Promise<Measure[]>
  }
  for (const measure of await bench({counts, told, isKept: values.readme})) {
    const {name, ratio, detail} = measure
    console.log(`${name}: ${ratio < 100 ? ratio.toPrecision(3) : ratio.toFixed(0)} (${detail})`)
    all.push(measure)
  }
}
if (values.readme) writeFigures()

/** Write what was measured into the README, between its marks, with the day and the machine. */
function writeFigures(): void {
  const [start, end] = ['<!-- figures -->', '<!-- /figures -->']
  const before = readFileSync('README.md', 'utf8')
  const [from, to] = [before.indexOf(start), before.indexOf(end)]
  if (from < 0 || to < from) throw new Error(`the README has no ${start}`)
  const [first] = cpus()
  const machine = `${cpus().length} cores (${first?.model.trim() ?? 'unknown'}), ${type()}, Node ${process.version}`
  const busy = ', while much else ran on it: what the clock says is too long'
  const table = [
    `Measured on ${new Date().toISOString().slice(0, 10)} with \`npm run bench\` on ${machine}${isBusy ? busy : ''}:`,
    '',
    '| what | times | that is |',
    '| --- | --- | --- |',
    ...all.map(
      ({name, ratio, detail}) =>
        `| ${name} | ${ratio < 10 ? ratio.toPrecision(2) : ratio.toFixed(0)} | ${detail} |`,
    ),
  ]
  writeFileSync(
    'README.md',
    `${before.slice(0, from + start.length)}\n\n${table.join('\n')}\n\n${before.slice(to)}`,
  )
}
