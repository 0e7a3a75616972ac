import {once} from 'node:events'
import {cpSync, readdirSync, rmSync, statSync, truncateSync, utimesSync, writeFileSync} from 'node:fs'
import {get} from 'node:http'
import {join} from 'node:path'
import {setTimeout as pause} from 'node:timers/promises'
import {numbers} from './cut-stock/random-cutting.ts'
import {filesOf} from './support/site-files.ts'
import {fourLines, type TempJournal, tempJournal} from './support/temp-journal.ts'

// Kills builds and the server of whoever writes at any moment, cuts, poisons and deletes what is kept between them, and
// lets several run at once: whoever reads the site meets one whole state of the journal or the other, and what is built
// or shown last is what nothing at all would give. Run in a process of its own: the seed, and the seconds.

const [seed, seconds] = process.argv.slice(2).map(Number) as [number, number]
const random = numbers(seed)
const journal = tempJournal({
  'builds/journal.yaml': 'title: The loft\n',
  'builds/needle-box.md': fourLines('Needle box'),
  'builds/oar-box.md': fourLines('Oar box', 'based-on: needle-box\n'),
})
const site = join(journal.root, '_site')
const store = join(journal.root, '.site')
const texts = ['', 'summary: Red oak\n', 'status: idea\n'].map((more) =>
  fourLines('Oar box', `based-on: needle-box\n${more}`),
)
const until = Date.now() + seconds * 1000

/** Each state of the journal, built and shown of nothing. */
const states = await Promise.all(
  texts.map(async (text) => {
    const alone = tempJournal()
    cpSync(join(journal.root, 'builds'), join(alone.root, 'builds'), {recursive: true})
    alone.write('builds/oar-box.md', text)
    const code = await ended(alone.start('build'))
    if (code !== 0) throw new Error('the first build fails')
    const state = {built: JSON.stringify(filesOf(join(alone.root, '_site'))), shown: await shownBy(alone)}
    alone.remove()
    return state
  }),
)
journal.run('build')
const buildMs = spanOf(() => journal.run('build'))
journal.write('builds/oar-box.md', texts[1]!)
const changeMs = spanOf(() => journal.run('build'))

/** Times that a clock gives files which is turned, in seconds. */
const times = [0, 1, 1e9, 2 ** 31, 4e9]
const poison = ['{}', 'null', '[]', '{"key": 1}', '\0']
let [kills, starts] = [0, 0]
for (let round = 0; Date.now() < until; round++) {
  const at = Math.floor(random() * texts.length)
  journal.write('builds/oar-box.md', texts[at]!)
  const isStart = round % 5 === 4
  // Moments are spread evenly over all that one of them does, and fall at random within their part of it.
  const share = ((round % 16) + random()) / 16
  const children = Array.from({length: isStart ? 1 : 2}, () => journal.start(isStart ? 'start' : 'build'))
  const all = children.map(ended)
  await pause(share * (isStart ? buildMs + changeMs : changeMs * 1.4))
  if (isStart) journal.write('builds/oar-box.md', texts[(at + 1) % texts.length]!)
  if (isStart) await pause(random() * changeMs)
  if (random() < 0.4) harm()
  for (const child of children) child.kill('SIGKILL')
  await Promise.all(all)
  if (isStart) starts++
  else kills += children.length
  const stands = JSON.stringify(filesOf(site))
  if (!states.some(({built}) => built === stands)) fails('the site is no state of the journal')
  if (round % 8 === 7) await mendsItself()
}
await mendsItself()
console.log(`${kills} builds and ${starts} servers killed`)
journal.remove()

/** What is built and shown after all is right, and nothing is left of what was killed: the site, and the version before it. */
async function mendsItself(): Promise<void> {
  const at = Math.floor(random() * texts.length)
  journal.write('builds/oar-box.md', texts[at]!)
  const {status, stderr} = journal.run('build')
  if (status !== 0) fails(`a build fails: ${stderr}`)
  if (JSON.stringify(filesOf(site)) !== states[at]!.built) fails('the site is another')
  if ((await shownBy(journal)) !== states[at]!.shown) fails('what is shown is another')
  const left = readdirSync(store).filter((name) => !name.endsWith('.spare'))
  if (left.length !== 1 || readdirSync(store).length > 2) fails(`${left.join(', ')} are left`)
}

/** Show a journal to whoever writes, until all of it is there; answers its files. */
async function shownBy({root, start}: TempJournal): Promise<string> {
  const child = start('start')
  const all = ended(child)
  let said = ''
  let home: string | undefined
  while (home === undefined) {
    const [part] = await once(child.stdout!, 'data')
    said += part
    home = /http:\/\/localhost:\d+\//.exec(said)?.[0]
  }
  // The portfolio of few builds is there once all else is. A connection that is kept would be another server's later.
  const [answer] = await once(get(home, {agent: false}), 'response')
  await once(answer.resume(), 'end')
  const folder = readdirSync(join(root, '.site')).find((name) => name.startsWith(`start-${child.pid}-`))
  const files = JSON.stringify(filesOf(join(root, '.site', folder!)))
  child.kill('SIGTERM')
  await all
  return files
}

async function ended(child: ReturnType<TempJournal['start']>): Promise<number | null> {
  const [code] = (await once(child, 'exit')) as [number | null]
  return code
}

function spanOf(work: () => unknown): number {
  const began = performance.now()
  work()
  return performance.now() - began
}

/** Date files of the journal, of what is kept and of the site as a clock would that was turned meanwhile. */
function setTimes(): void {
  for (const entry of readdirSync(journal.root, {recursive: true, withFileTypes: true})) {
    const at = times[Math.floor(random() * times.length)]!
    if (entry.isFile() && random() < 0.3) utimesSync(join(entry.parentPath, entry.name), at, at)
  }
}

/** Cut, poison, delete or date otherwise a file that is kept between builds. */
function harm(): void {
  const kept = join(journal.root, '.cache')
  try {
    const files = readdirSync(kept, {recursive: true, withFileTypes: true}).filter((entry) => entry.isFile())
    const one = files[Math.floor(random() * files.length)]
    if (!one) return
    const file = join(one.parentPath, one.name)
    const how = Math.floor(random() * 10)
    if (how < 2) rmSync(file)
    else if (how < 4) setTimes()
    else if (how < 6) truncateSync(file, Math.floor(random() * statSync(file).size))
    else if (how < 9) writeFileSync(file, poison[Math.floor(random() * poison.length)]!)
    else rmSync(kept, {recursive: true, force: true})
  } catch (error) {
    // A build at work may have taken it away first, or put another beside it.
    if (!['ENOENT', 'ENOTEMPTY'].includes((error as NodeJS.ErrnoException).code ?? '')) throw error
  }
}

function fails(why: string): never {
  console.log(`seed ${seed}: ${why} after ${kills + starts} kills; the journal is ${journal.root}`)
  process.exit(1)
}
