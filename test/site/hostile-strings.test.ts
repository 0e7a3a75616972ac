import {mkdtempSync, realpathSync, rmSync} from 'node:fs'
import {createRequire} from 'node:module'
import {tmpdir} from 'node:os'
import {join} from 'node:path'
import {getDocument} from 'pdfjs-dist/legacy/build/pdf.mjs'
import type {Browser, Page} from 'playwright-core'
import {afterAll, beforeAll, describe, expect, test} from 'vitest'
import {readBuild} from '../../plugins/build-file/read.ts'
import {openCache} from '../../site/kit/cache.ts'
import {makeSite} from '../../site/make/make-site.ts'
import {planSite} from '../../site/make/plan-site.ts'
import {siteAssets} from '../../site/publish/assets.ts'
import {writeFiles, writePages} from '../../site/publish/write-site.ts'
import {openBrowser} from '../support/browser.ts'
import {type Served, serveSite} from '../support/demo-site.ts'
import {filesOf} from '../support/site-files.ts'
import {tempJournal} from '../support/temp-journal.ts'
import {wholePages} from '../support/whole-pages.ts'
import {xmlFault} from '../support/xml-fault.ts'

import '../support/slow.ts'

// Outside check: the Big List of Naughty Strings (MIT), 461 texts that have broken programs, most of them to run
// something in a page. Each goes through every field that takes a maker's words, and through fields that do not, whose
// messages repeat them; the pages are opened in a browser that is told to leave the site's own policy aside.

const strings = createRequire(import.meta.url)('big-list-of-naughty-strings') as string[]
const some = (part: number) => strings.filter((_, at) => at % 3 === part)
const quoted = (text: string) => JSON.stringify(text)
const list = (texts: readonly string[]) => `[${texts.map(quoted).join(', ')}]`
const isShort = (text: string) => text.length > 0 && text.length < 60

/** A build whose fields hold a third of the strings each, at another field for each build. */
function build(part: number): string {
  const [own, next, other] = [0, 1, 2].map((step) => some((part + step) % 3)) as [
    string[],
    string[],
    string[],
  ]
  const pieces = own.filter((_, at) => at % 12 === 0).map((text, at) => ({text, size: 2 + (at % 5)}))
  const front = [
    `title: ${quoted(own.join(' '))}`,
    `summary: ${quoted(next.join(' '))}`,
    `tags: ${list(other)}`,
    `cautions: ${list(own)}`,
    `extras: ${list(next)}`,
    'started: 2026-03-07',
    'finished: 2026-03-08',
    'box: {wood: basswood, length: 10 1/8, width: 7, depth: 2}',
    'scale: 24 1/4',
    'strings: [D3 .030w, A3 .020w, D4 .013]',
    `neck: {laminations: [{wood: ${quoted(next[70]!)}, thickness: 3/4}]}`,
    `parts:\n${pieces.map(({text, size}) => `  - {name: ${quoted(text)}, wood: ${quoted(text)}, length: ${size}, width: 1, thickness: 1/4}`).join('\n')}`,
    `recordings: [{file: ${quoted(next.find(isShort)!)}, says: ${quoted(own.join(' '))}}]`,
    `played: [{on: 2026-03-09, by: ${quoted(other.join(' '))}, says: ${quoted(own.join(' '))}}]`,
    `cover: ${quoted(other[90]!)}`,
    ...(part > 0 ? ['based-on: build-0'] : [`based-on: ${quoted(next[80]!)}`]),
    ...own
      .filter(isShort)
      .slice(0, 60)
      .map((text, at) => `${quoted(`${text} ${at}`)}: ${quoted(text)}`),
    `tuners: {side: ${quoted(own[40]!)}}`,
    `finish: ${list(other.slice(60, 120))}`,
  ]
  const days = own.filter(isShort).slice(0, 40)
  const prose = [
    ...next,
    ...days.map((text, at) => `## 2026-03-07 ${text} (${at} min)`),
    ...other
      .filter(isShort)
      .slice(0, 100)
      .map((text) => `[${text}](<${text}>) and ![${text}](<${text}> "${text}")`),
    ...own
      .slice(0, 40)
      .map((text) => `Here :value[${text}] stands.\n\n::${text}\n\n::drawing{view=${quoted(text)}}`),
    `| a | b |\n|-|-|\n${own
      .slice(80, 120)
      .map((text) => `| ${text} | ${text} |`)
      .join('\n')}`,
  ]
  return `---\n${front.join('\n')}\n---\n\n${prose.join('\n\n')}\n`
}

const journal = tempJournal({
  'builds/journal.yaml': `title: ${quoted(some(0).join(' '))}\nmaker: ${quoted(some(1).join(' '))}\nask: ${quoted(some(2).join(' '))}\nsite: https://journal.example\n`,
  'builds/rack.yaml': strings
    .filter(isShort)
    .slice(200, 240)
    .map(
      (text, at) =>
        `- {id: ${quoted(`${text} ${at}`)}, wood: ${quoted(text)}, length: 10, width: 2, thickness: 1}`,
    )
    .join('\n'),
  ...Object.fromEntries([0, 1, 2].map((part) => [`builds/build-${part}.md`, build(part)])),
})
const folder = realpathSync(mkdtempSync(join(tmpdir(), 'hostile-')))
let files: Record<string, string> = {}
let server: Served
let browser: Browser

beforeAll(async () => {
  const assets = await siteAssets()
  const cache = openCache(`${journal.root}/.cache`, 'a')
  const options = {prefix: '/', isWriting: true, assets: assets.addresses}
  const made = await makeSite(await planSite(journal.root, options, cache))
  const {pages, files: others, unmade} = await wholePages(made)
  unmade.push(...(await writePages(pages, made.site.around, folder)))
  unmade.push(...(await writeFiles([...others, ...assets.files], folder)))
  expect(unmade).toEqual([])
  files = filesOf(folder)
  server = await serveSite(folder, 8600, '/')
  browser = await openBrowser()
})
afterAll(async () => {
  await browser?.close()
  server?.close()
  journal.remove()
  rmSync(folder, {recursive: true})
})

/** Open a page that tells of whatever runs in it, and of whatever it asks of another address. */
async function watchedPage(): Promise<{page: Page; ran: string[]}> {
  const context = await browser.newContext({bypassCSP: true})
  const ran: string[] = []
  await context.exposeFunction('tellTest', (what: string) => ran.push(what))
  await context.addInitScript(watched)
  await context.route(
    (url) => url.origin !== new URL(server.home).origin,
    (route) => {
      ran.push(`asks ${route.request().url()}`)
      return route.abort()
    },
  )
  const page = await context.newPage()
  page.on('dialog', (dialog) => {
    ran.push('dialog')
    void dialog.dismiss()
  })
  page.on('popup', () => ran.push('popup'))
  page.on('download', () => ran.push('download'))
  return {page, ran}
}

describe('a page that is full of hostile words', () => {
  test('runs nothing of them, and asks nothing of another address', async () => {
    const {page, ran} = await watchedPage()
    const html = Object.keys(files).filter((name) => name.endsWith('index.html'))
    expect(html.length).toBeGreaterThan(18)
    for (const name of html) {
      await page.goto(server.home + name)
      const found = await page.evaluate(lookRound)
      expect([name, ran, found]).toEqual([name, [], []])
    }
    await page.context().close()
  })

  test('is harmless where they come by an address, or are typed or pasted', async () => {
    const {page, ran} = await watchedPage()
    const all = strings.filter((text) => text !== '')
    const paths = ['title', 'summary', 'box.length', 'box.wood', 'neck.wood', 'strings.1', 'status', 'handed']
    const links = [
      ...[0, 1].map((part) => {
        const of = all.filter((_, at) => at % 2 === part)
        const own = paths.map((path, at) => [path, of[(at + 1) * 20 + part]!])
        return `try/#${new URLSearchParams([['from', 'build-0'], ...own, ...of.map((text) => [text, text])])}`
      }),
      // What a server takes for an address is no longer than 16 kB.
      `try/?from=${encodeURIComponent(all.join(' ')).slice(0, 9000)}#from=${encodeURIComponent(all[300]!)}`,
      `try/#${encodeURI(all.slice(200, 330).join('&'))}`,
      ...[0, 300].map((from) => {
        const tags = new URLSearchParams(all.slice(from).map((text) => ['tags', text]))
        return `?${String(tags).slice(0, 9000)}#${encodeURIComponent(all.join(' '))}`
      }),
    ]
    for (const link of links) {
      await page.goto('about:blank')
      await page.goto(server.home + link)
      if (link.startsWith('try/')) await page.waitForSelector('#Try[data-checked]')
      expect([link.slice(0, 20), ran, await page.evaluate(lookRound)]).toEqual([link.slice(0, 20), [], []])
    }
    await page.goto(`${server.home}try/`)
    for (const text of [build(1), `---\n${all.join('\n')}\n---\n`]) {
      await page.waitForSelector('#Try[data-checked]')
      await page.evaluate(() => {
        for (const fold of document.querySelectorAll('details')) fold.open = true
        document.querySelector('#Try')!.removeAttribute('data-checked')
      })
      await page.fill('#TryText', text)
      await page.waitForSelector('#Try[data-checked]')
      expect([ran, await page.evaluate(lookRound)]).toEqual([[], []])
    }
    await page.context().close()
  })

  test('shows them as they are', () => {
    const text = files['builds/build-0/index.html']!
    expect(text).toContain('&#x3C;script>alert(')
    const title = /<title>([\s\S]*?)<\/title>/.exec(text)?.[1] ?? ''
    expect(title.length).toBeGreaterThan(3000)
    expect(title).not.toContain('<')
  })
})

describe('what lies beside the pages', () => {
  test('is well formed where it is XML or JSON', () => {
    const xml = Object.keys(files).filter((name) => /\.(xml|svg)$/.test(name))
    expect(xml).toContain('feed.xml')
    expect(xml).toContain('sitemap.xml')
    expect(xml.filter((name) => name.endsWith('template.svg')).length).toBe(3)
    for (const name of xml) expect([name, xmlFault(utf8(name))]).toEqual([name, undefined])
    for (const name of Object.keys(files).filter((each) => each.endsWith('.json')))
      expect(JSON.parse(utf8(name))).toBeDefined()
  })

  test('holds no action in a template, and every line of a drawing is one', async () => {
    for (const part of [0, 1, 2]) {
      const data = new Uint8Array(Buffer.from(files[`builds/build-${part}/template-a4.pdf`]!, 'latin1'))
      const pdf = await getDocument({data, useSystemFonts: true, verbosity: 0}).promise
      expect([await pdf.getJSActions(), await pdf.getOpenAction(), await pdf.getAttachments()]).toEqual([
        null,
        null,
        null,
      ])
      for (let at = 1; at <= pdf.numPages; at++)
        expect(await (await pdf.getPage(at)).getAnnotations()).toEqual([])
      await pdf.destroy()
      const codes = utf8(`builds/build-${part}/template.dxf`).trimEnd().split(/\r?\n/)
      expect(codes.filter((code, at) => at % 2 === 0 && !/^ *\d{1,4}$/.test(code))).toEqual([])
    }
  })

  test('begins another build with the same words', () => {
    for (const part of [0, 1, 2]) {
      const was = readBuild(build(part), {slug: 'a', journal: {}})
      const is = readBuild(utf8(`builds/build-${part}/start.md`), {slug: 'a', journal: {}})
      expect(is.problems.filter(({rule}) => /yaml|front-matter/.test(rule))).toEqual([])
      expect(is.build.values.cautions?.map(({value}) => value)).toEqual(
        was.build.values.cautions?.map(({value}) => value),
      )
      expect(is.build.values.parts?.map(({name}) => name?.value)).toEqual(
        was.build.values.parts?.map(({name}) => name?.value),
      )
    }
  })
})

const utf8 = (name: string) => Buffer.from(files[name]!, 'latin1').toString('utf8')

/** In the page, before anything of it: tell of whatever a hostile text would call. */
function watched(): void {
  const tell = (what: string) => (window as unknown as {tellTest: (what: string) => void}).tellTest(what)
  for (const name of ['alert', 'confirm', 'prompt', 'open'] as const)
    Object.defineProperty(window, name, {value: () => tell(name)})
  for (const name of ['write', 'writeln'] as const)
    Object.defineProperty(Document.prototype, name, {value: () => tell(name)})
}

/** In the page: list what would run or lead elsewhere once it is touched. */
function lookRound(): string[] {
  return [...document.querySelectorAll('*')].flatMap((element) => {
    const name = element.tagName.toLowerCase()
    const bad = [...element.attributes].filter(({name: key, value}) => {
      // The page itself puts its handles where they belong.
      if (key === 'style' && element.matches('#Try .grip')) return false
      if (/^on/i.test(key) || key === 'style' || key === 'srcdoc') return true
      if (!/^(href|src|action|formaction|xlink:href|poster|data|ping)$/i.test(key)) return false
      const {protocol, origin} = new URL(value, location.href)
      if (!/^(https?|mailto):$/.test(protocol)) return true
      return name !== 'a' && origin !== location.origin && element.getAttribute('rel') !== 'canonical'
    })
    const isBad = /^(iframe|frame|frameset|object|embed|applet|base|style|marquee|bgsound|portal)$/.test(name)
    const isOther = name === 'script' && !(element as HTMLScriptElement).src.startsWith(location.origin)
    return isBad || isOther || bad.length > 0 ? [element.outerHTML.slice(0, 200)] : []
  })
}
