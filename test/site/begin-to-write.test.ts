import {appendFileSync, readFileSync, realpathSync} from 'node:fs'
import {join} from 'node:path'
import {afterAll, beforeAll, expect, test} from 'vitest'
import {programVersion} from '../../site/kit/journal-cache.ts'
import {fileOf} from '../../site/kit/page.ts'
import {leaveStanding, resumeStanding, type Standing} from '../../site/publish/standing.ts'
import {newVersion} from '../../site/publish/versions.ts'
import {WritingSession} from '../../site/serve/writing-session.ts'
import {filesOf} from '../support/site-files.ts'
import {fourLines, tempJournal} from '../support/temp-journal.ts'

import '../support/slow.ts'

// Whoever begins waits for the page that is asked for, and for no other.

const journal = tempJournal({
  'builds/rack.yaml': '- {id: A1, wood: white ash, length: 40, width: 3 1/2, thickness: 1}\n',
  'builds/needle-box.md': fourLines('Needle box'),
  'builds/oar-box.md': fourLines('Oar box', 'based-on: needle-box\n'),
  'builds/reed-box.md': fourLines('Reed box', 'based-on: oar-box\n'),
  'builds/tea-tin.md': fourLines('Tea tin', 'started: 2026-03-03\ntake: [A1]\n'),
})
afterAll(() => journal.remove())

const emptyFolder = async () => realpathSync(await newVersion(join(journal.root, 'start')))

/** Begin to write in a folder; tells what was told of the reading of all builds so far. */
async function begin({folder, files}: Standing = {folder: '', files: {}}) {
  const standing = {folder: folder || (await emptyFolder()), files}
  const read: string[] = []
  const session = new WritingSession(journal.root, standing, {
    told: (what, done) => read.push(`${what} ${done}`),
  })
  const page = (address: string) => readFileSync(join(standing.folder, fileOf(address)), 'utf8')
  return {standing, session, read, page}
}

beforeAll(async () => {
  await (await begin()).session.refresh()
})

test('a build that was saved meanwhile is shown before the others are read, as it stays', async () => {
  journal.write('builds/oar-box.md', fourLines('Oar box', 'based-on: needle-box\n').replace('24 1/4', '23'))
  const {standing, session, read, page} = await begin()
  const whole = session.refresh()
  await session.ready('/builds/oar-box/')
  expect(read).toEqual([])
  const [own, changes] = [page('/builds/oar-box/'), page('/builds/oar-box/changes/')]
  expect(changes).toContain('Reed box')
  await whole
  expect(read).toContain('Planning 4')
  expect([page('/builds/oar-box/'), page('/builds/oar-box/changes/')]).toEqual([own, changes])
  const anew = await begin()
  await anew.session.refresh()
  expect(filesOf(standing.folder)).toEqual(filesOf(anew.standing.folder))
})

test('where another is called otherwise meanwhile, the page follows once that is read', async () => {
  journal.write('builds/reed-box.md', fourLines('Cane box', 'based-on: oar-box\n'))
  const {session, read, page} = await begin()
  const changed: string[] = []
  const whole = session.refresh((addresses) => void changed.push(...addresses))
  await session.ready('/builds/oar-box/changes/')
  expect([read, page('/builds/oar-box/changes/').includes('Reed box')]).toEqual([[], true])
  changed.length = 0
  await whole
  expect(changed).toContain('/builds/oar-box/changes/')
  expect(page('/builds/oar-box/changes/')).toContain('Cane box')
})

test('one that takes from the rack is shown as the rack stood for it last', async () => {
  const {session, read, page} = await begin()
  const whole = session.refresh()
  await session.ready('/builds/tea-tin/')
  expect(read).toEqual([])
  const own = page('/builds/tea-tin/')
  await whole
  expect(page('/builds/tea-tin/')).toBe(own)
})

test('one that took nothing from the rack before waits for those that take before it', async () => {
  journal.write('builds/tea-tin.md', fourLines('Tea tin', 'started: 2026-03-03\n'))
  await (await begin()).session.refresh()
  journal.write('builds/tea-tin.md', fourLines('Tea tin', 'started: 2026-03-03\ntake: [A1]\n'))
  const {session, read} = await begin()
  const whole = session.refresh()
  await session.ready('/builds/tea-tin/')
  expect(read).toContain('Planning 4')
  await whole
})

test('a save is shown before the others are read', async () => {
  const {session, page} = await begin()
  const first = session.refresh()
  journal.write('builds/oar-box.md', fourLines('Oar box', 'based-on: needle-box\n').replace('24 1/4', '22'))
  const next = session.refresh(() => {}, ['oar-box.md'])
  await session.ready('/builds/oar-box/')
  expect(page('/builds/oar-box/')).toContain('22')
  expect((await Promise.all([first, next]))[1]).toBeDefined()
})

test('where all is as it was left nobody waits for what stands, and what somebody changed in it is made again', async () => {
  const {session, standing} = await begin()
  await session.refresh()
  expect(session.isWhole).toBe(true)
  const leave = async (left: Standing) => leaveStanding(journal.root, left, await programVersion())
  await leave({...standing, made: 'as it lay'})
  const there = await resumeStanding(journal.root, await emptyFolder())
  expect(there.made).toBe('as it lay')
  const again = await begin(there)
  const whole = again.session.refresh(() => {}, [], true)
  await again.session.ready('/')
  expect([again.read, again.session.isWhole]).toEqual([[], true])
  await whole
  expect(again.session.isWhole).toBe(true)
  await leave({...there, made: 'as it lay'})
  appendFileSync(join(journal.root, '.cache/start/index.html'), 'A line of nobody’s.')
  expect((await resumeStanding(journal.root, await emptyFolder())).made).toBeUndefined()
})

test('what stands is not whole while a save is not shown', async () => {
  const {session} = await begin()
  const whole = session.refresh()
  expect(session.isWhole).toBe(false)
  await whole
  expect(session.isWhole).toBe(true)
})
