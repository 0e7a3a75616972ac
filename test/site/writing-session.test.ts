import {appendFileSync, existsSync, readFileSync, realpathSync} from 'node:fs'
import {join} from 'node:path'
import {afterAll, beforeAll, describe, expect, test} from 'vitest'
import {cacheOf, programVersion} from '../../site/kit/journal-cache.ts'
import {fileOf} from '../../site/kit/page.ts'
import {makeSite} from '../../site/make/make-site.ts'
import {planSite} from '../../site/make/plan-site.ts'
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
/** Called as the whole journal is looked at. */
let heard = () => {}

beforeAll(async () => {
  standing = await resumeStanding(journal.root, await emptyFolder())
  session = new WritingSession(journal.root, standing, {told: () => heard()})
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
  test('of one build shows its pages before all else is looked at, as they stay', async () => {
    journal.write('builds/needle-box.md', fourLines('Needle box').replace('24 1/4', '22'))
    const told: string[][] = []
    await session.refresh(
      (changed) => void told.push([...changed]),
      ['needle-box.md', 'nowhere.md', 'x/y.png'],
    )
    const [ahead = [], others, whole] = told
    expect(told).toHaveLength(3)
    expect(ahead).toContain('/builds/needle-box/')
    expect(ahead.filter((address) => !address.startsWith('/builds/needle-box/'))).toEqual([])
    expect(others!.filter((address) => !address.startsWith('/builds/oar-box/'))).toEqual([])
    expect(others).toContain('/builds/oar-box/')
    expect(whole).toContain('/search.json')
  })
  test('gives way to the next ones, which show all of it', async () => {
    const lengths = ['24', '24 1/8', '24 1/4']
    const all = lengths.map((length) => {
      journal.write('builds/needle-box.md', fourLines('Needle box').replace('24 1/4', length))
      return session.refresh(() => {}, ['needle-box.md'])
    })
    expect((await Promise.all(all)).map((one) => one !== undefined)).toEqual([false, false, true])
    expect(await refreshed()).toEqual([])
    const {folder} = standing
    const page = (slug: string) => readFileSync(join(folder, `builds/${slug}/index.html`), 'utf8')
    expect(page('needle-box')).toContain('24 1/4')
    const kept = filesOf(folder)
    const anew = new WritingSession(journal.root, {folder: await emptyFolder(), files: {}})
    const shown: string[] = []
    await anew.refresh((changed) => void shown.push(...changed))
    expect(shown.length).toBe(Object.keys(kept).length)
  })
  test('that changes what it was copied from, or all of it, is left to a look at all', async () => {
    const ahead = async (more: string) => {
      journal.write('builds/oar-box.md', more && fourLines('Oar box', more))
      let isAhead: boolean | undefined
      heard = () => {
        isAhead ??= false
      }
      await session.refresh(() => {
        isAhead ??= true
      }, ['oar-box.md'])
      return isAhead
    }
    expect(await ahead('based-on: tea-tin\n')).toBe(false)
    expect(await ahead('based-on: tea-tin\nsummary: Red oak\n')).toBe(true)
    expect(await ahead('')).toBe(false)
    expect(await ahead('based-on: needle-box\n')).toBe(false)
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

describe('the first start after a build', () => {
  const asked = '/builds/tea-tin/'
  const [before, others] = [['/', '/search.json', '/feed.xml', '/now/'], '/builds/needle-box/']
  const isPage = (address: string) => /^\/builds\/[^/]+\/$/.test(address)
  /** Begin to write where a build for other readers kept what it made. */
  async function begin(title: string) {
    journal.write('builds/journal.yaml', `title: ${title}\n`)
    const options = {prefix: '/elsewhere/', isWriting: false, assets: {}}
    await makeSite(await planSite(journal.root, options, await cacheOf(journal.root)))
    const folder = await emptyFolder()
    standing = {folder, files: {}}
    const shown: string[] = []
    session = new WritingSession(journal.root, standing, {}, 0)
    const all = session.refresh((changed) => void shown.push(...changed))
    return {
      all,
      shown,
      texts: () => before.map((address) => readFileSync(join(folder, fileOf(address)), 'utf8')),
    }
  }

  test('makes what is asked for first, and shows the whole journal before the rest is made', async () => {
    const {all, shown, texts} = await begin('The boat shed')
    // What every page is shown with waits for none.
    const {style = ''} = (await session.around()).assets
    await session.ready(style)
    expect(shown.filter((address) => !/^\/(?:assets|try)\//.test(address))).toEqual([])
    expect(existsSync(join(standing.folder, style))).toBe(true)
    await Promise.all([
      session.ready('/'),
      session.ready(`${asked}template-a4.pdf`),
      session.ready('/builds/x/'),
    ])
    expect(shown).toEqual(expect.arrayContaining([asked, ...before]))
    expect(shown.filter(isPage)).toEqual([asked])
    const first = texts()
    expect((await all)?.problems.length).toBeGreaterThan(0)
    expect(shown).toContain(others)
    expect(texts()).toEqual(first)
    expect(await refreshed()).toEqual([])
  })
  test('shows what is asked for before the rest where a check-out changes many files', async () => {
    journal.write('builds/tea-tin.md', fourLines('Tea tin').replace('24 1/4', '22 1/2'))
    journal.write('builds/pin-box.md', fourLines('Pin box').replace('24 1/4', '22 1/2'))
    const many = ['pin-box', 'needle-box', 'oar-box', 'tea-tin', 'rope-box'].map((slug) => `${slug}.md`)
    const shown: string[] = []
    const all = session.refresh((changed) => void shown.push(...changed.filter(isPage)), many)
    await session.ready(asked)
    expect(shown).toEqual([asked])
    expect(readFileSync(join(standing.folder, fileOf(asked)), 'utf8')).toContain('22 1/2')
    await all
    expect(shown.slice(1)).toEqual(['/builds/pin-box/'])
  })
  test('gives way to a save, which is shown before the rest is made', async () => {
    const {all, shown} = await begin('The net loft')
    await session.ready('/')
    journal.write('builds/tea-tin.md', fourLines('Tea tin').replace('24 1/4', '25 1/2'))
    const saved = session.refresh((changed) => void shown.push(...changed), ['tea-tin.md'])
    await session.ready(asked)
    expect(shown.filter(isPage).slice(0, 2)).toContain(asked)
    expect(readFileSync(join(standing.folder, fileOf(asked)), 'utf8')).toContain('25 1/2')
    expect([await all, (await saved) !== undefined]).toEqual([undefined, true])
    expect(await refreshed()).toEqual([])
  })
})
