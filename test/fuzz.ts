import {spawn, spawnSync} from 'node:child_process'
import {once} from 'node:events'
import {readdirSync, readFileSync} from 'node:fs'
import {parseArgs} from 'node:util'
import fc from 'fast-check'
import {mendText} from '../plugins/build-file/heal/mend.ts'
import {readBuild} from '../plugins/build-file/read.ts'
import type {Build} from '../plugins/build-file/schema/build.ts'
import type {Problem} from '../plugins/build-file/schema/problem.ts'
import {checks} from '../plugins/checks/checks.ts'
import {planInstrument} from '../plugins/plan/instrument.ts'
import {type Plan, planBuild} from '../plugins/plan/plan.ts'
import {settle} from '../plugins/plan/settle.ts'
import {readBody} from '../plugins/syntax/body.ts'
import {textReader} from '../site/journal/read-text.ts'
import {wholeRun} from './support/whole-run.ts'

const usage = `npm run fuzz -- --seconds=N   looks for faults for N seconds, in builds with slips at random
npm run fuzz -- --seed=S      the same again
npm run fuzz -- --builds      only builds with slips: how they read, plan in time, and are mended
npm run fuzz -- --journals    only whole journals, harmed at random
npm run fuzz -- --kills       only builds of a site that are killed at any moment, with what is kept harmed between them

Prints its seed. Leaves with 1 if it finds any. A quarter of the time each goes to slipped builds, to whole journals, to
builds that are killed, and to the suite's properties from other seeds.`

// Every build of the journal and of the fixtures, with some of its words changed for words that makers slip into.
const sources = ['builds', 'test/journals']
  .flatMap((folder) => readdirSync(folder, {recursive: true, withFileTypes: true}))
  .filter(({name}) => name.endsWith('.md'))
  .map(({parentPath, name}) => readFileSync(`${parentPath}/${name}`, 'utf8'))

const words = [
  '0',
  '-1',
  '1/0',
  '24 inn',
  '1e999',
  'NaN',
  '.nan',
  'none',
  'true',
  '[]',
  '{}',
  '~',
  '3/4',
  '-2 1/4',
  '900',
  '0.001',
  '400 mm',
  '24 m',
  'D3',
  'G',
  'H2',
  '.017',
  '.300w',
  'ash',
  'through',
  'end',
  '2026-02-30',
  '"',
  '#',
  '- a',
  '*x',
  '&x',
  '\t',
  '---',
  '::lines',
  ':value[scale.lengthMm]',
  '¾',
  '😀',
]

const slips = fc.array(fc.tuple(fc.double({min: 0, max: 1, noNaN: true}), fc.constantFrom(...words)), {
  minLength: 1,
  maxLength: 6,
})
const build = fc.tuple(fc.constantFrom(...sources), slips).map(([source, changes]) => {
  const parts = source.split(/(?<=[\s,:[\]{}])/)
  for (const [at, word] of changes) parts[Math.floor(at * (parts.length - 1))] = `${word} `
  return parts.join('')
})

/** Read, plan and check a text, and throw where the result is not what every result must be. */
function holds(text: string): void {
  const read = readBuild(text, {slug: 'fuzz', body: readBody})
  const plan = inTime(read.build)
  const problems = [...read.problems, ...checks(read.build, plan)]
  const lines = text.split(/\r\n?|\n/)
  for (const {line, column, rule} of problems)
    if (line < 1 || line > lines.length || column < 1 || column > (lines[line - 1]?.length ?? 0) + 2)
      throw new Error(`${rule} stands at ${line}:${column}, outside the file`)
  const odd = oddValue(plan)
  if (odd) throw new Error(`the plan has ${odd}`)
  if (text.length % 8 === 0) mendsAndReadsBack(text)
}

/** Plan a build, and throw where that takes longer than it may, cuts left out or not, and does not say that it stopped. */
function inTime(build: Build): Plan {
  const context = {journal: {}, pieces: []}
  const settled = settle(build, context.journal)
  held('a plan without cuts', 50, () => planInstrument(settled, context))
  let plan = planBuild(settled, context)
  held('a plan', 2000, () => {
    plan = planBuild(settled, context)
    return plan.cuts?.proven === false
  })
  return plan
}

/** Throw where something takes more than so much of a processor, five times of five; it may say that it stopped. */
function held(what: string, mostMs: number, work: () => unknown): void {
  const spans: number[] = []
  while (spans.length < 5) {
    const before = process.cpuUsage()
    if (work() === true) return
    const {user} = process.cpuUsage(before)
    if (user <= mostMs * 1000) return
    spans.push(user / 1000)
  }
  throw new Error(`${what} takes ${Math.round(Math.min(...spans))} ms`)
}

/** What is certain is written, and the file then reads as was promised; a second time there is nothing to write. */
function mendsAndReadsBack(text: string): void {
  const read = textReader('fuzz.md', 'fuzz', {})
  const mended = mendText(text, read)
  const told = (problems: readonly Problem[]) =>
    problems.map(({rule, line, column}) => `${rule} ${line}:${column}`)
  const [promised, now] = [told(mended.left), told(read(mended.text).problems)]
  if (promised.join() !== now.join()) throw new Error(`a mended file reads otherwise: ${now.join(', ')}`)
  const again = mendText(mended.text, read)
  if (again.text !== mended.text) throw new Error('a mended file is mended again')
}

/** Find a number that is none, or a null, and name its path. */
function oddValue(value: unknown, path = 'plan'): string | undefined {
  if (value === null || (typeof value === 'number' && !Number.isFinite(value))) return `${value} at ${path}`
  if (typeof value !== 'object') return undefined
  for (const [key, item] of Object.entries(value)) {
    const odd = oddValue(item, `${path}.${key}`)
    if (odd) return odd
  }
  return undefined
}

const {values} = parseArgs({
  options: {
    seconds: {type: 'string'},
    seed: {type: 'string'},
    builds: {type: 'boolean'},
    journals: {type: 'boolean'},
    kills: {type: 'boolean'},
  },
})
const seconds = Number(values.seconds ?? '60')
const seed = Number(values.seed ?? Math.floor(Math.random() * 2 ** 31))
if (!(seconds > 0) || !Number.isInteger(seed)) {
  console.error(usage)
  process.exit(2)
}
/** Longer than any journal may take, also on a busy machine. */
const patienceMs = 300_000

console.log(`seed ${seed}`)
const isAll = !values.builds && !values.journals && !values.kills
const each = isAll ? seconds / 4 : seconds
if (isAll || values.builds) slippedBuilds()
if ((isAll || values.journals) && !(await harmedJournals())) process.exitCode = 1
if ((isAll || values.kills) && !killedBuilds()) process.exitCode = 1
if (isAll) properties()

/** Kill builds in a process of its own. */
function killedBuilds(): boolean {
  const words = ['--import', 'tsx', 'test/fuzz-kills.ts', String(seed), String(each)]
  return spawnSync(process.execPath, words, {stdio: 'inherit'}).status === 0
}

function slippedBuilds(): void {
  const found = fc.check(fc.property(build, holds), {
    seed,
    numRuns: 1_000_000,
    interruptAfterTimeLimit: each * 1000,
    markInterruptAsFailure: false,
  })
  console.log(`${found.numRuns} builds tried`)
  if (!found.failed) return
  console.log(`${String(found.errorInstance)}\n\n${found.counterexample?.[0] ?? ''}`)
  process.exitCode = 1
}

/** Harm whole journals in a process of its own; one that takes too long, or ends it, is a find, and the next follows. */
async function harmedJournals(): Promise<boolean> {
  const until = Date.now() + each * 1000
  let isSound = true
  for (let next = seed; Date.now() < until; ) {
    const left = Math.ceil((until - Date.now()) / 1000)
    const words = ['--import', 'tsx', 'test/fuzz-journals.ts', String(next), String(left)]
    const child = spawn(process.execPath, words, {stdio: ['ignore', 'inherit', 'inherit', 'ipc']})
    let patience = setTimeout(() => child.kill('SIGKILL'), patienceMs)
    child.on('message', (message: {seed: number}) => {
      next = message.seed
      clearTimeout(patience)
      patience = setTimeout(() => child.kill('SIGKILL'), patienceMs)
    })
    const [code, signal] = (await once(child, 'exit')) as [number | null, string | null]
    clearTimeout(patience)
    if (code !== 0) isSound = false
    if (code === 0 || (code === 1 && Date.now() >= until)) break
    console.log(`journal ${next}: ends the process with ${signal ?? code}`)
    next++
  }
  return isSound
}

function properties(): void {
  const files = readdirSync('test', {recursive: true, withFileTypes: true})
    .filter(({name}) => name.endsWith('.test.ts'))
    .map(({parentPath, name}) => `${parentPath}/${name}`)
    .filter((file) => readFileSync(file, 'utf8').includes('support/properties.ts'))
  const until = Date.now() + each * 1000
  for (let other = seed; Date.now() < until && !process.exitCode; other++) {
    console.log(`properties, seed ${other}`)
    const env = {...process.env, PROPERTY_SEED: String(other)}
    process.exitCode =
      spawnSync(process.execPath, [...wholeRun, '--reporter=dot', ...files], {stdio: 'inherit', env})
        .status ?? 1
  }
}
