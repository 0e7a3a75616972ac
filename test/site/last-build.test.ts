import {appendFileSync, mkdirSync, readlinkSync, rmSync, statSync, writeFileSync} from 'node:fs'
import {dirname, join} from 'node:path'
import {setTimeout as pause} from 'node:timers/promises'
import {afterAll, expect, test} from 'vitest'
import {type Below, isSureState, lookBelow, nameOfState} from '../../site/journal/look-below.ts'
import {noteBuild, saidBefore} from '../../site/publish/last-build.ts'
import {note, type Standing} from '../../site/publish/standing.ts'
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

test('a build of what did not change says the same, and leaves the site', async () => {
  await settled()
  const first = build()
  expect(first.said[1]).toContain('tea-tin.md')
  expect(build()).toEqual(first)
  journal.write('builds/needle-box.md', fourLines('Other box', 'take: gone\n'))
  expect(build().version).not.toBe(first.version)
  expect(filesOf(site)['builds/needle-box/index.html']).toContain('Other box')
})

test('a site that somebody harmed is not the one that would be made', () => {
  const folder = join(journal.root, 'site')
  const from = (key: string, isSure = true) => ({key, isSure})
  const said = {unread: [], problems: [], builds: 1, pages: 2}
  const whole = () => {
    rmSync(folder, {recursive: true, force: true})
    const standing: Standing = {folder, files: {}}
    for (const name of ['index.html', 'woods/index.html']) {
      mkdirSync(dirname(join(folder, name)), {recursive: true})
      writeFileSync(join(folder, name), name)
      note(standing, {address: `/${name.replace('index.html', '')}`, key: name})
    }
    return noteBuild(standing, from('this'), said)
  }
  expect(saidBefore(whole(), from('this'))).toEqual(said)
  expect(saidBefore(whole(), from('that'))).toBeUndefined()
  expect(saidBefore(whole(), from('this', false))).toBeUndefined()
  expect(saidBefore({...whole(), made: undefined}, from('this'))).toBeUndefined()
  const harms = [
    () => appendFileSync(join(folder, 'index.html'), 'x'),
    () => rmSync(join(folder, 'woods'), {recursive: true}),
    () => mkdirSync(join(folder, 'empty')),
    () => writeFileSync(join(folder, 'one-more.html'), ''),
    () => rmSync(folder, {recursive: true}),
  ]
  for (const harm of harms) {
    const standing = whole()
    harm()
    expect(saidBefore(standing, from('this'))).toBeUndefined()
  }
})

test('a state has another name after any change, and is sure once none can hide in it', async () => {
  const folder = join(journal.root, 'builds')
  const below = await lookBelow(folder)
  expect([...below.lines.keys()].sort()).toEqual(['Tea Tin.md', 'needle-box.md'])
  const later = below.lastMs + 5000
  const name = nameOfState(below)
  expect(nameOfState(await lookBelow(folder))).toBe(name)
  expect(isSureState(below, later)).toBe(true)
  const unsure: [Below, number][] = [
    [below, below.lastMs],
    [below, below.lastMs - 1e6],
    [{...below, hasLinks: true}, later],
    [await lookBelow(join(folder, 'nowhere')), later],
  ]
  for (const [state, nowMs] of unsure) expect(isSureState(state, nowMs)).toBe(false)
  journal.write('builds/.needle-box.md.swp', 'x')
  journal.write('builds/.git/index', 'x')
  expect(nameOfState(await lookBelow(folder))).toBe(name)
  journal.write('builds/deep/er/song.mp3', 'la')
  const more = await lookBelow(folder)
  expect([...more.lines.keys()]).toContain('deep/er/song.mp3')
  expect(nameOfState(more)).not.toBe(name)
})
