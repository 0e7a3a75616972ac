import {appendFileSync, mkdirSync, readlinkSync, rmSync, statSync, writeFileSync} from 'node:fs'
import {join} from 'node:path'
import {setTimeout as pause} from 'node:timers/promises'
import {afterAll, expect, test} from 'vitest'
import {type Below, lookBelow, nameOfState} from '../../site/journal/look-below.ts'
import {filesOf} from '../support/site-files.ts'
import {fourLines, tempJournal} from '../support/temp-journal.ts'
import '../support/slow.ts'

// Where nothing changed since the last build, its site is the one that would be made.

const journal = tempJournal({
  'builds/needle-box.md': fourLines('Needle box', 'take: gone\n'),
  'builds/Tea Tin.md': fourLines('Tea tin'),
})
const site = join(journal.root, '_site')
afterAll(() => journal.remove())

function build() {
  const {status, stdout, stderr} = journal.run('build')
  expect(status, stderr).toBe(0)
  return {said: [stdout, stderr], version: readlinkSync(site)}
}

/** Wait until no clock can take the last change for the one before it. */
async function settled(): Promise<void> {
  const ms = Math.max(
    ...['.', 'needle-box.md'].map((name) => statSync(join(journal.root, 'builds', name)).ctimeMs),
  )
  await pause(Math.max(0, ms + 2100 - Date.now()))
}

test('a build of what did not change says the same and leaves the site, unless somebody else did not', async () => {
  await settled()
  const first = build()
  const files = filesOf(site)
  expect(first.said[1]).toContain('tea-tin.md')
  const harm = [
    () => appendFileSync(join(site, 'index.html'), 'x'),
    () => rmSync(join(site, 'woods'), {recursive: true}),
    () => mkdirSync(join(site, 'empty')),
    () => writeFileSync(join(site, 'one-more.html'), ''),
  ]
  let last = build()
  expect(last).toEqual(first)
  for (const harmed of harm) {
    harmed()
    const now = build()
    expect(now.said).toEqual(first.said)
    expect(now.version).not.toBe(last.version)
    expect(filesOf(site)).toEqual(files)
    last = now
  }
  journal.write('builds/needle-box.md', fourLines('Other box', 'take: gone\n'))
  expect(build().version).not.toBe(last.version)
  expect(filesOf(site)['builds/needle-box/index.html']).toContain('Other box')
})

test('a state has a name once no change can hide in it, and another name after any', async () => {
  const folder = join(journal.root, 'builds')
  const below = await lookBelow(folder)
  expect([...below.lines.keys()].sort()).toEqual(['Tea Tin.md', 'needle-box.md'])
  const later = below.lastMs + 5000
  const name = nameOfState(below, later)
  expect(name).toEqual(nameOfState(await lookBelow(folder), later + 1000))
  const unnamed: [Below, number][] = [
    [below, below.lastMs],
    [below, below.lastMs - 1e6],
    [{...below, hasLinks: true}, later],
    [await lookBelow(join(folder, 'nowhere')), later],
  ]
  for (const [state, nowMs] of unnamed) expect(nameOfState(state, nowMs)).toBeUndefined()
  journal.write('builds/deep/er/song.mp3', 'la')
  const more = await lookBelow(folder)
  expect([...more.lines.keys()]).toContain('deep/er/song.mp3')
  expect(nameOfState(more, later + 1e6)).not.toBe(name)
})
