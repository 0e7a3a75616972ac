import {realpathSync} from 'node:fs'
import {join} from 'node:path'
import {afterAll, beforeAll, describe, expect, test} from 'vitest'
import {newVersion} from '../../site/publish/versions.ts'
import {WritingSession} from '../../site/serve/writing-session.ts'
import {fourLines, tempJournal} from '../support/temp-journal.ts'
import '../support/slow.ts'

const journal = tempJournal({
  'builds/needle-box.md': fourLines('Needle box'),
  'builds/oar-box.md': fourLines('Oar box', 'based-on: needle-box\n'),
  'builds/tea-tin.md': fourLines('Tea tin'),
})
let session: WritingSession

beforeAll(async () => {
  session = new WritingSession(journal.root, realpathSync(await newVersion(join(journal.root, 'start'))))
  await session.refresh()
})
afterAll(() => journal.remove())

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
  test('of the journal’s settings reaches every page', async () => {
    journal.write('builds/journal.yaml', 'title: The loft\n')
    expect(await touched()).toEqual(['needle-box', 'oar-box', 'pin-box', 'tea-tin'])
  })
})
