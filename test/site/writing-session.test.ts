import {appendFileSync, existsSync, readFileSync, realpathSync} from 'node:fs'
import {join} from 'node:path'
import {afterAll, beforeAll, describe, expect, test} from 'vitest'
import {programVersion} from '../../site/kit/journal-cache.ts'
import {leaveStanding, resumeStanding, type Standing} from '../../site/publish/standing.ts'
import {newVersion} from '../../site/publish/versions.ts'
import {WritingSession} from '../../site/serve/writing-session.ts'
import {filesOf} from '../support/site-files.ts'
import {fourLines, tempJournal} from '../support/temp-journal.ts'

import '../support/slow.ts'

const journal = tempJournal({
  'builds/needle-box.md': fourLines('Needle box'),
  'builds/oar-box.md': fourLines('Oar box', 'based-on: needle-box\n'),
  'builds/tea-tin.md': fourLines('Tea tin'),
})
let standing: Standing
let session: WritingSession

beforeAll(async () => {
  standing = await resumeStanding(journal.root, await emptyFolder())
  session = new WritingSession(journal.root, standing)
  await session.refresh()
})
afterAll(() => journal.remove())

const emptyFolder = async () => realpathSync(await newVersion(join(journal.root, 'start')))

/** The addresses that one refresh writes again. */
async function refreshed(): Promise<string[]> {
  const all: string[] = []
  await session.refresh((changed) => void all.push(...changed))
  return all
}

/** The builds whose own pages were written again by one refresh. */
async function touched(): Promise<string[]> {
  const changed = await refreshed()
  return [...new Set(changed.flatMap((address) => /^\/builds\/([^/]+)\//.exec(address)?.[1] ?? []))].sort()
}

describe('a save while somebody writes', () => {
  test('that changes nothing writes nothing', async () => {
    expect(await refreshed()).toEqual([])
  })
  test('of one build writes its pages and those of its copies', async () => {
    journal.write('builds/tea-tin.md', fourLines('Tea tin').replace('24 1/4', '24 1/2'))
    expect(await touched()).toEqual(['tea-tin'])
    journal.write('builds/needle-box.md', fourLines('Needle box').replace('24 1/4', '23'))
    expect(await touched()).toEqual(['needle-box', 'oar-box'])
  })
  test('that adds a build leaves the others as they are, and the portfolio follows', async () => {
    journal.write('builds/pin-box.md', fourLines('Pin box'))
    const changed = await refreshed()
    expect(changed).toEqual(expect.arrayContaining(['/', '/builds/pin-box/']))
    expect(changed.filter((address) => /needle|oar|tea/.test(address))).toEqual([])
  })
  test('of a word reaches the search, and no other page of the whole journal', async () => {
    journal.write('builds/tea-tin.md', `${fourLines('Tea tin')}\nPlaned by lamplight.\n`)
    await refreshed()
    journal.write('builds/tea-tin.md', `${fourLines('Tea tin')}\nPlaned by moonlight.\n`)
    const changed = await refreshed()
    expect(changed.filter((address) => !address.startsWith('/builds/'))).toEqual(['/search.json'])
    expect(readFileSync(join(standing.folder, 'search.json'), 'utf8')).toContain('moonlight')
  })
  test('of the journal’s settings reaches every page', async () => {
    journal.write('builds/journal.yaml', 'title: The loft\n')
    expect(await touched()).toEqual(['needle-box', 'oar-box', 'pin-box', 'tea-tin'])
  })
})

test('who writes on another day begins where the last one ended, less what somebody changed since', async () => {
  await refreshed()
  const before = filesOf(standing.folder)
  leaveStanding(journal.root, standing, await programVersion())
  const waiting = join(journal.root, '.cache/start')
  appendFileSync(join(waiting, 'builds/tea-tin/index.html'), 'A line of nobody’s.')
  standing = await resumeStanding(journal.root, await emptyFolder())
  session = new WritingSession(journal.root, standing)
  expect(await refreshed()).toEqual(['/builds/tea-tin/'])
  expect(existsSync(waiting)).toBe(false)
  expect(filesOf(standing.folder)).toEqual(before)
})
