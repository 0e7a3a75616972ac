import {execFileSync} from 'node:child_process'
import {cpSync, mkdirSync, mkdtempSync, readdirSync, realpathSync, rmSync} from 'node:fs'
import {tmpdir} from 'node:os'
import {join} from 'node:path'
import {WritingSession} from '../site/serve/writing-session.ts'
import {changedSince, linesOf} from './support/changed-files.ts'
import {drawFrom, mutateJournal} from './support/mutate-journal.ts'
import {filesOf} from './support/site-files.ts'

// Harms a journal save by save, at times several at once, while a session of writing follows them: what stands must be
// what one that begins anew makes. Run in a process of its own: the seed, and the seconds.

// Rights mean nothing to root.
if (process.getuid?.() === 0) {
  process.setegid!(65_534)
  process.seteuid!(65_534)
}
const [seed, seconds] = process.argv.slice(2).map(Number) as [number, number]
const until = Date.now() + seconds * 1000
const root = realpathSync(mkdtempSync(join(tmpdir(), 'fuzz-saves-')))
const builds = join(root, 'builds')
/** After so many saves the journal is as it was. */
const mostSaves = 12

let [tried, bad, folders] = [0, 0, 0]
const begin = () => {
  const folder = join(root, `site-${folders++}`)
  mkdirSync(folder)
  return {folder, session: new WritingSession(root, {folder, files: {}})}
}

for (let at = seed; Date.now() < until; at++) {
  const draw = drawFrom(at)
  cpSync('builds', builds, {recursive: true})
  const {folder, session} = begin()
  await session.refresh()
  for (let save = 0; save < mostSaves && Date.now() < until; save++) {
    const before = await linesOf(builds)
    mutateJournal(builds, draw)
    const changed = await changedSince(before, builds)
    const saved = [session.refresh(() => {}, changed)]
    // Whoever asks for pages meanwhile changes nothing.
    if (draw.below(2)) void session.ready('/builds/left-bank/')
    tried++
    const anew = begin()
    // A journal whose builds were moved away is shown by nobody.
    const shown = await Promise.allSettled([...saved, anew.session.refresh()])
    if (shown.every(({status}) => status === 'rejected')) break
    const [stands, wanted] = [filesOf(folder), filesOf(anew.folder)]
    rmSync(anew.folder, {recursive: true})
    const other = [...new Set([...Object.keys(stands), ...Object.keys(wanted)])].filter(
      (name) => stands[name] !== wanted[name],
    )
    if (other.length === 0) continue
    bad++
    console.log(
      `saves ${at}: after ${save + 1} (${changed.join(', ')}) another ${other.slice(0, 5).join(', ')}`,
    )
    break
  }
  execFileSync('chmod', ['-R', 'u+rwx', root])
  for (const name of readdirSync(root))
    if (name !== '.cache') rmSync(join(root, name), {recursive: true, force: true})
}
rmSync(root, {recursive: true, force: true})
console.log(`${tried} saves tried, ${bad} of them bad`)
process.exit(bad > 0 ? 1 : 0)
