import {once} from 'node:events'
import {cpSync, readdirSync, rmSync, statSync, truncateSync, writeFileSync} from 'node:fs'
import {join} from 'node:path'
import {setTimeout as pause} from 'node:timers/promises'
import {numbers} from './cut-stock/random-cutting.ts'
import {filesOf} from './support/site-files.ts'
import {fourLines, tempJournal} from './support/temp-journal.ts'

// Kills builds at any moment, cuts, poisons and deletes what is kept between them, and lets several run at once: whoever
// reads the site meets one whole state of the journal or the other, and what is built last is what a build of nothing
// gives. Run in a process of its own: the seed, and the seconds.

const [seed, seconds] = process.argv.slice(2).map(Number) as [number, number]
const random = numbers(seed)
const journal = tempJournal({
  'builds/journal.yaml': 'title: The loft\n',
  'builds/needle-box.md': fourLines('Needle box'),
  'builds/oar-box.md': fourLines('Oar box', 'based-on: needle-box\n'),
})
const site = join(journal.root, '_site')
const texts = ['', 'summary: Red oak\n', 'status: idea\n'].map((more) =>
  fourLines('Oar box', `based-on: needle-box\n${more}`),
)
/** Each state of the journal, built of nothing. */
const states = texts.map((text) => {
  const alone = tempJournal()
  cpSync(join(journal.root, 'builds'), join(alone.root, 'builds'), {recursive: true})
  alone.write('builds/oar-box.md', text)
  const {status, stderr} = alone.run('build')
  if (status !== 0) throw new Error(stderr)
  const files = JSON.stringify(filesOf(join(alone.root, '_site')))
  alone.remove()
  return files
})
const began = performance.now()
if (journal.run('build').status !== 0) throw new Error('the first build fails')
const tookMs = performance.now() - began

const poison = ['{}', 'null', '[]', '{"key": 1}', '\0']
const until = Date.now() + seconds * 1000
let kills = 0
for (; Date.now() < until; kills++) {
  const at = Math.floor(random() * texts.length)
  journal.write('builds/oar-box.md', texts[at]!)
  const children = Array.from({length: random() < 0.2 ? 2 : 1}, () => journal.start('build'))
  const ended = children.map((child) => once(child, 'exit'))
  await pause(random() * tookMs * 1.1)
  if (random() < 0.4) harm()
  for (const child of children) child.kill('SIGKILL')
  await Promise.all(ended)
  const stands = states.indexOf(JSON.stringify(filesOf(site)))
  if (stands < 0) fails(`the site is no state of the journal after ${kills + 1} kills`)
  if (random() < 0.3) {
    if (random() < 0.4) harm()
    const {status, stderr} = journal.run('build')
    if (status !== 0) fails(`a build fails after ${kills + 1} kills: ${stderr}`)
    if (JSON.stringify(filesOf(site)) !== states[at]) fails(`the site is another after ${kills + 1} kills`)
    const versions = readdirSync(join(journal.root, '.site'))
    if (versions.length !== 1) fails(`${versions.length} versions are left after ${kills + 1} kills`)
  }
}
console.log(`${kills} builds killed`)
journal.remove()

/** Cut, poison or delete a file that is kept between builds. */
function harm(): void {
  const kept = join(journal.root, '.cache')
  try {
    const files = readdirSync(kept, {recursive: true, withFileTypes: true}).filter((entry) => entry.isFile())
    const one = files[Math.floor(random() * files.length)]
    if (!one) return
    const file = join(one.parentPath, one.name)
    const how = Math.floor(random() * 4)
    if (how === 0) rmSync(file)
    else if (how === 1) truncateSync(file, Math.floor(random() * statSync(file).size))
    else if (how === 2) writeFileSync(file, poison[Math.floor(random() * poison.length)]!)
    else rmSync(kept, {recursive: true, force: true})
  } catch (error) {
    // A build at work may have taken it away first, or put another beside it.
    if (!['ENOENT', 'ENOTEMPTY'].includes((error as NodeJS.ErrnoException).code ?? '')) throw error
  }
}

function fails(why: string): never {
  console.log(`seed ${seed}: ${why}; the journal is ${journal.root}`)
  process.exit(1)
}
