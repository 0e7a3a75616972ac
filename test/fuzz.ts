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
npm run fuzz -- --builds      only builds, racks and settings with slips: how they read, plan in time, and are mended
npm run fuzz -- --journals    only whole journals, harmed at random
npm run fuzz -- --kills       only builds of a site that are killed at any moment, with what is kept harmed between them
npm run fuzz -- --saves       only saves that are followed while somebody writes: what stands is what a look at all gives
npm run fuzz -- --servers     only servers of journals that are harmed while they are shown, asked for odd things

Prints its seed. Leaves with 1 if it finds any. A sixth of the time each goes to slipped files, to whole journals, to
builds that are killed, to saves, to servers, and to the suite's properties from other seeds.`

// Every build, rack and settings of the journals, with some of its words changed for words that makers slip into.
const sources = ['builds', 'test/journals', 'test/fixtures']
  .flatMap((folder) => readdirSync(folder, {recursive: true, withFileTypes: true}))
  .filter(({name}) => /^(?:[a-z0-9-]+\.md|rack\.yaml|journal\.yaml)$/.test(name) && name !== 'output.md')
  .map(({parentPath, name}) => ({name, text: readFileSync(`${parentPath}/${name}`, 'utf8')}))

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
  '07.03.2026',
  '## 2026-03-07 Milling (1 h)',
  '## 2026-03-07',
  '(1 h 90 min)',
  '(2,5 hours)',
  '(-1 h)',
  '- [x] sand',
  ':step[neck]',
  '- {id: A1}',
  'A1-a',
  'clear: [9, 1]',
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
const isBuild = ({name}: {name: string}) => name.endsWith('.md')
const source = fc.oneof(
  {arbitrary: fc.constantFrom(...sources.filter(isBuild)), weight: 4},
  {arbitrary: fc.constantFrom(...sources.filter((one) => !isBuild(one))), weight: 1},
)
const file = fc.tuple(source, slips).map(([{name, text}, changes]) => {
  const parts = text.split(/(?<=[\s,:[\]{}])/)
  for (const [at, word] of changes) parts[Math.floor(at * (parts.length - 1))] = `${word} `
  return {name, text: parts.join('')}
})

/** Read, plan and check a file, and throw where the result is not what every result must be. */
function holds({name, text}: Slipped): void {
  const problems = isBuild({name}) ? problemsOf(text) : textReader(name, 'fuzz', {})(text).problems
  const lines = text.split(/\r\n?|\n/)
  for (const {line, column, rule} of problems)
    if (line < 1 || line > lines.length || column < 1 || column > (lines[line - 1]?.length ?? 0) + 2)
      throw new Error(`${rule} stands at ${line}:${column}, outside the file`)
  if (text.length % 8 === 0) mendsAndReadsBack(name, text)
}

interface Slipped {
  name: string
  text: string
}

function problemsOf(text: string): Problem[] {
  const read = readBuild(text, {slug: 'fuzz', body: readBody})
  const plan = inTime(read.build)
  const odd = oddValue(plan)
  if (odd) throw new Error(`the plan has ${odd}`)
  return [...read.problems, ...checks(read.build, plan)]
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
function mendsAndReadsBack(name: string, text: string): void {
  const read = textReader(name, 'fuzz', {})
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
    saves: {type: 'boolean'},
    servers: {type: 'boolean'},
  },
})
const seconds = Number(values.seconds ?? '60')
const seed = Number(values.seed ?? Math.floor(Math.random() * 2 ** 31))
if (!(seconds > 0) || !Number.isInteger(seed)) {
  console.error(usage)
  process.exit(2)
}
/** Longer than any journal may take, of a processor, and by the clock where it takes none. */
const patience = {seconds: 120, clockMs: 1_800_000}

console.log(`seed ${seed}`)
const {builds, journals, kills, saves, servers} = values
const isAll = !builds && !journals && !kills && !saves && !servers
const each = isAll ? seconds / 6 : seconds
if (isAll || builds) slippedBuilds()
if ((isAll || journals) && !(await harmedJournals())) process.exitCode = 1
if ((isAll || kills) && !isSound('fuzz-kills')) process.exitCode = 1
if ((isAll || saves) && !isSound('fuzz-saves')) process.exitCode = 1
if ((isAll || servers) && !isSound('fuzz-servers')) process.exitCode = 1
if (isAll) properties()

/** Run one of the parts in a process of its own. */
function isSound(part: 'fuzz-kills' | 'fuzz-saves' | 'fuzz-servers'): boolean {
  const words = ['--import', 'tsx', `test/${part}.ts`, String(seed), String(each)]
  return spawnSync(process.execPath, words, {stdio: 'inherit'}).status === 0
}

function slippedBuilds(): void {
  const found = fc.check(fc.property(file, holds), {
    seed,
    numRuns: 1_000_000,
    interruptAfterTimeLimit: each * 1000,
    markInterruptAsFailure: false,
  })
  console.log(`${found.numRuns} files tried`)
  if (!found.failed) return
  const {name = '', text = ''} = found.counterexample?.[0] ?? {}
  console.log(`${String(found.errorInstance)}\n\n${name}\n${text}`)
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
    let began = {seconds: 0, atMs: Date.now()}
    const look = setInterval(() => {
      const isTooLong =
        secondsOf(child.pid) - began.seconds > patience.seconds || Date.now() - began.atMs > patience.clockMs
      if (isTooLong) child.kill('SIGKILL')
    }, 5000)
    child.on('message', (message: {seed: number}) => {
      next = message.seed
      began = {seconds: secondsOf(child.pid), atMs: Date.now()}
    })
    const [code, signal] = (await once(child, 'exit')) as [number | null, string | null]
    clearInterval(look)
    if (code !== 0) isSound = false
    if (code === 0 || (code === 1 && Date.now() >= until)) break
    console.log(`journal ${next}: ends the process with ${signal ?? code}`)
    next++
  }
  return isSound
}

/** The processor time of a process, where the system tells it: a busy machine makes everything take long. */
function secondsOf(pid: number | undefined): number {
  try {
    // What stands behind the name: proc_pid_stat(5) counts user and system time in hundredths.
    const fields = readFileSync(`/proc/${pid}/stat`, 'utf8').split(') ')[1]!.split(' ')
    return (Number(fields[11]) + Number(fields[12])) / 100
  } catch {
    return 0
  }
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
