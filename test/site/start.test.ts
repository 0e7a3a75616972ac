import type {ChildProcess} from 'node:child_process'
import {once} from 'node:events'
import {mkdirSync, readdirSync, readFileSync, renameSync, rmSync} from 'node:fs'
import {createServer} from 'node:http'
import {join} from 'node:path'
import {afterAll, beforeAll, describe, expect, test} from 'vitest'
import {readBuild} from '../../plugins/build-file/read.ts'
import {openBrowser} from '../support/browser.ts'
import {fourLines, tempJournal} from '../support/temp-journal.ts'
import '../support/slow.ts'

const journal = tempJournal({
  'builds/needle-box.md': fourLines('Needle box'),
  'builds/night-ferry.md': fourLines('Night ferry', 'publish: false\n'),
})
let child: ChildProcess
let printed = ''
let home = ''
const taken = createServer()

beforeAll(async () => {
  // The usual port is taken, whether by this server or by another one.
  await new Promise<void>((resolve) =>
    taken.once('error', () => resolve()).listen(8080, '127.0.0.1', resolve),
  )
  child = journal.start('start')
  for (const stream of [child.stdout, child.stderr])
    stream?.on('data', (data: Buffer) => {
      printed += data
    })
  home = await until(() => /http:\/\/localhost:\d+\//.exec(printed)?.[0])
})
afterAll(async () => {
  const ended = once(child, 'exit')
  child.kill('SIGTERM')
  await ended
  taken.close()
  expect(readdirSync(join(journal.root, '.site'))).toEqual([])
  journal.remove()
})

async function until<T>(look: () => T | undefined | false | Promise<T | undefined | false>): Promise<T> {
  for (let tries = 0; tries < 1200; tries++) {
    // A connection kept open may be closed by the server just when it is used again; asking once more will do.
    const seen = await Promise.resolve()
      .then(look)
      .catch(() => undefined)
    if (seen) return seen
    expect(child?.exitCode ?? null).toBe(null)
    await new Promise((resolve) => setTimeout(resolve, 50))
  }
  throw new Error(`not seen in time; printed:\n${printed}`)
}

async function get(path: string): Promise<{status: number; text: string; headers: Headers}> {
  const answer = await fetch(home + path)
  return {status: answer.status, text: await answer.text(), headers: answer.headers}
}
const shows = (path: string, text: string) => until(async () => (await get(path)).text.includes(text))
const has = (path: string, status: number) => until(async () => (await get(path)).status === status)

describe('npm start', () => {
  test('serves at another port where 8080 is taken, with the policy in every answer', async () => {
    expect(home).not.toBe('http://localhost:8080/')
    const {status, headers} = await get('builds/needle-box/')
    expect(status).toBe(200)
    expect(headers.get('content-security-policy')).toContain("default-src 'none'")
    expect((await get('nowhere/')).status).toBe(404)
    expect((await get('..%2f..%2fetc/passwd')).status).toBe(404)
  })

  test('shows drafts to whoever writes, and says so', async () => {
    expect((await get('builds/night-ferry/')).text).toContain('Draft')
  })

  test('follows an edit', async () => {
    journal.write('builds/needle-box.md', fourLines('Needle box, second thoughts'))
    await shows('builds/needle-box/', 'second thoughts')
    await shows('', 'second thoughts')
  })

  test('follows a new file, a rename and a deletion', async () => {
    journal.write('builds/tea-tin/index.md', fourLines('Tea tin'))
    await has('builds/tea-tin/', 200)
    renameSync(join(journal.root, 'builds/tea-tin'), join(journal.root, 'builds/tea-box'))
    await has('builds/tea-box/', 200)
    await has('builds/tea-tin/', 404)
    rmSync(join(journal.root, 'builds/tea-box'), {recursive: true})
    await has('builds/tea-box/', 404)
    await until(async () => !(await get('')).text.includes('Tea tin'))
  })

  test('shows problems in the page and in the terminal, and every other page stands', async () => {
    journal.write('builds/needle-box.md', fourLines('Needle box').replace('24 1/4', '24 inn'))
    await shows('builds/needle-box/', '24 inn')
    expect((await get('builds/needle-box/')).text).toContain('is no unit of length')
    expect((await get('builds/night-ferry/')).status).toBe(200)
    await until(() => printed.includes('builds/needle-box.md\n  4:8 error'))
    journal.write('builds/needle-box.md', '---\ntitle: [\nscale: {')
    await shows('builds/needle-box/', 'Before you cut')
    journal.write('builds/needle-box.md', Buffer.from([0, 255, 254, 10, 0]))
    await until(() => /not-text/.test(printed))
    journal.write('builds/journal.yaml', 'title: {{\n')
    await until(() => printed.includes('builds/journal.yaml'))
    rmSync(join(journal.root, 'builds/journal.yaml'))
    journal.write('builds/needle-box.md', fourLines('Mended'))
    await shows('builds/needle-box/', 'Mended')
    expect(printed).not.toMatch(/\n {4}at /)
  })

  test('names a file that looks like a build and is none', async () => {
    journal.write('builds/Tea Tin.md', fourLines('Tea tin'))
    await shows('', 'tea-tin.md')
    rmSync(join(journal.root, 'builds/Tea Tin.md'))
  })

  test('survives the whole journal going and coming back', async () => {
    renameSync(join(journal.root, 'builds'), join(journal.root, 'away'))
    await has('builds/needle-box/', 200)
    mkdirSync(join(journal.root, 'builds'))
    journal.write('builds/oar-box.md', fourLines('Oar box'))
    await has('builds/oar-box/', 200)
    await has('builds/needle-box/', 404)
  })

  test('writes what was tried as a new build, after a look at the difference, and never over another', async () => {
    const browser = await openBrowser()
    try {
      const context = await browser.newContext()
      const tabs = [await context.newPage(), await context.newPage()] as const
      for (const tab of tabs) {
        await tab.goto(`${home}try/#from=oar-box&scale.length=25+1/2`)
        await tab.waitForSelector('#Try[data-checked]')
        await tab.fill('#TryName', 'Longer oar')
        await tab.click('[data-part=differ]')
        await tab.waitForSelector('[data-part=difference]:not([hidden])')
        const lines = await tab.locator('[data-part=difference] li').allTextContents()
        expect(lines).toEqual(expect.arrayContaining(['out: title: Oar box', 'in: title: Longer oar']))
        expect(lines).toEqual(expect.arrayContaining(['in: status: idea', 'in: based-on: oar-box']))
      }
      // Both tabs are loaded anew once the journal has another build, and say what came of it all the same.
      const told = tabs.map((tab) =>
        until(async () => (await tab.textContent('[data-part=written]'))?.trim() || undefined),
      )
      await Promise.all(
        tabs.map((tab) => tab.getByRole('button', {name: 'Write builds/longer-oar.md'}).click()),
      )
      expect((await Promise.all(told)).sort()).toEqual([
        'builds/longer-oar.md is there already; give it another name.',
        'builds/longer-oar.md is written. Its page is at /builds/longer-oar/.',
      ])
      await shows('builds/longer-oar/', '25 1/2 in')
      await shows('', 'Longer oar')
      const {build, problems} = readBuild(readFileSync(join(journal.root, 'builds/longer-oar.md'), 'utf8'), {
        slug: 'longer-oar',
      })
      expect([problems, build.values.scale?.length?.text]).toEqual([[], '25 1/2'])
      await until(async () =>
        (await tabs[0].locator('#TryFrom option').allTextContents()).includes('Longer oar'),
      )
    } finally {
      await browser.close()
    }
  })

  test('tells an open page that it has changed, and no other', async () => {
    const since = Date.now() + 1
    const own = new AbortController()
    const answer = await fetch(`${home}~changes?at=/builds/oar-box/&since=${since}`, {signal: own.signal})
    const reader = answer.body!.getReader()
    journal.write('builds/oar-box.md', fourLines('Oar box, again'))
    let heard = ''
    while (!heard.includes('data: changed')) heard += new TextDecoder().decode((await reader.read()).value)
    own.abort()
    expect(heard).toContain('data: changed')
  })
})
