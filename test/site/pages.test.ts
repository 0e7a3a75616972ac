import {readFileSync} from 'node:fs'
import {join} from 'node:path'
import {gzipSync} from 'node:zlib'
import {HtmlValidate} from 'html-validate'
import type {Browser, BrowserContext, Page} from 'playwright-core'
import {afterAll, beforeAll, describe, expect, test} from 'vitest'
import {axeScript, violations} from '../support/axe.ts'
import {openBrowser} from '../support/browser.ts'
import {demoJournal, type Served, serveSite} from '../support/demo-site.ts'
import {filesOf} from '../support/site-files.ts'
import '../support/slow.ts'

// The project's own journal, built for a path prefix and looked at in a real browser under the site's own policy.

const {site} = demoJournal()
const files = filesOf(site)
let browser: Browser
let server: Served
let home = ''

beforeAll(async () => {
  server = await serveSite(site, 8300)
  home = server.home
  browser = await openBrowser()
})
afterAll(async () => {
  await browser?.close()
  server?.close()
})

const htmlFiles = () => Object.keys(files).filter((name) => name.endsWith('.html'))
/** One page of each kind; of builds the one with the most on its page. */
const kinds = () => {
  const builds = htmlFiles().filter((name) => /^builds\/[^/]+\/index\.html$/.test(name))
  const fullest = builds.sort((a, b) => files[b]!.length - files[a]!.length)[0]!
  const own = htmlFiles().filter((name) => name.startsWith(fullest.replace('index.html', '')))
  return [...htmlFiles().filter((name) => !name.startsWith('builds/')), ...own]
}
const addressOf = (name: string) => home + name.replace(/index\.html$/, '')

describe('every page', () => {
  // Outside check: html-validate's recommended and accessibility rules, after the HTML standard and WCAG.
  test('is valid', async () => {
    const validator = new HtmlValidate({
      extends: ['html-validate:recommended', 'html-validate:a11y'],
      // An id may begin with any character (HTML standard, 3.2.6); days' headings begin with their date.
      rules: {'valid-id': ['error', {relaxed: true}], 'long-title': 'off', 'doctype-style': 'off'},
    })
    for (const name of htmlFiles()) {
      const html = readFileSync(join(site, name), 'utf8')
      const {results} = await validator.validateString(html)
      const found = results.flatMap(({messages}) =>
        messages.map(({ruleId, message, line}) => ({name, ruleId, message, line})),
      )
      expect(found).toEqual([])
    }
  })

  test('carries the policy first, and no style, handler or script of its own', () => {
    for (const name of htmlFiles()) {
      expect(files[name]).toMatch(
        /<head><meta charset="utf-8"><meta http-equiv="Content-Security-Policy" content="default-src 'none'; script-src 'self'/,
      )
      expect(files[name]).not.toMatch(/<style|\sstyle=|\son[a-z]+="|<script>/i)
    }
  })

  test('leads only to pages, files and places that are there', () => {
    const broken: string[] = []
    for (const name of htmlFiles()) {
      const here = new URL(addressOf(name))
      for (const [, written] of files[name]!.matchAll(/\s(?:href|src)="([^"]*)"/g)) {
        const to = new URL(written!.replaceAll('&#x26;', '&'), here)
        if (to.origin !== here.origin) continue
        const file =
          decodeURIComponent(to.pathname).slice('/journal/'.length) +
          (to.pathname.endsWith('/') ? 'index.html' : '')
        const target = files[file]
        const id = decodeURIComponent(to.hash.slice(1))
        if (target === undefined) broken.push(`${name}: ${written}`)
        else if (id && !target.includes(` id="${id}"`)) broken.push(`${name}: ${written}`)
      }
    }
    expect(broken).toEqual([])
  })

  test('of a build names the picture that stands for it where its address is passed on', () => {
    for (const name of htmlFiles().filter((each) => /^builds\/[^/]+\/index\.html$/.test(each))) {
      const [, picture = ''] =
        /og:image" content="https:\/\/[^/]+\/journal\/([^"]+)"/.exec(files[name]!) ?? []
      // PNG (ISO/IEC 15948, 11.2.2): width and height stand after the signature and the first chunk's name.
      const bytes = readFileSync(join(site, picture))
      expect([name, bytes.readUInt32BE(16), bytes.readUInt32BE(20)]).toEqual([name, 1200, 630])
      expect([name, bytes.length]).toSatisfy(([, size]) => size < 60_000)
    }
  })

  test('of a build is at most 60 kB compressed with all it loads, its scripts 15 kB', () => {
    const packed = (name: string) => gzipSync(readFileSync(join(site, name))).length
    for (const name of htmlFiles().filter((each) => /^builds\/[^/]+\/index\.html$/.test(each))) {
      const loads = [...files[name]!.matchAll(/(?:src|href)="\/journal\/(assets\/[^"]+)"/g)].map(
        (found) => found[1]!,
      )
      const scripts = loads.filter((each) => each.endsWith('.js'))
      expect([name, packed(name) + loads.map(packed).reduce((a, b) => a + b, 0)]).toSatisfy(
        ([, bytes]) => bytes <= 60_000,
      )
      expect(scripts.map(packed).reduce((a, b) => a + b, 0)).toBeLessThanOrEqual(15_000)
    }
  })
})

/** Where a page is what it was but for its colours, the rules of axe that look at these. */
const ofColours = ['color-contrast', 'link-in-text-block']

/*
 * Each place in colours of its own: the whole of axe in the first, and what it says of colours in the others. The light
 * of a phone, with all its folds open, shows what a desk does; what shows on a desk alone is looked at there too.
 */
describe.each([
  ['on a desk', {viewport: {width: 1280, height: 900}}, [{colorScheme: 'dark'}, {colorScheme: 'light'}]],
  [
    'on a phone',
    {viewport: {width: 360, height: 740}, isMobile: true, hasTouch: true},
    [{colorScheme: 'light'}, {colorScheme: 'light', forcedColors: 'active'}],
  ],
] as const)('%s', (where, options, [first, second]) => {
  let context: BrowserContext
  let page: Page
  const heard: string[] = []
  beforeAll(async () => {
    context = await browser.newContext({...options, reducedMotion: 'reduce', bypassCSP: false})
    await context.addInitScript(axeScript)
    page = await context.newPage()
    page.on('console', (message) => void heard.push(`${page.url()} ${message.text()}`))
    page.on('pageerror', (error) => void heard.push(`${page.url()} ${error.message}`))
    page.on('request', (request) => {
      if (!request.url().startsWith(new URL(home).origin))
        heard.push(`${page.url()} asks for ${request.url()}`)
    })
  })
  afterAll(() => context?.close())

  /** Mark what is seen in this window and not in one as narrow as a phone's. */
  const markWhatAPhoneLacks = async () => {
    const mark = () =>
      page.evaluate(() => {
        for (const one of document.querySelectorAll('body *'))
          if (one.checkVisibility()) one.toggleAttribute('data-wide')
      })
    await mark()
    await page.setViewportSize({width: 360, height: 740})
    await mark()
    await page.setViewportSize(options.viewport)
  }

  // Outside check: axe-core, all its rules of WCAG 2.2 A and AA and of good practice.
  test('pages are quiet, fit the screen, and pass axe, in other colours too', async () => {
    const width = () => page.evaluate(() => document.documentElement.scrollWidth)
    for (const name of kinds()) {
      await page.emulateMedia({forcedColors: 'none', ...first})
      await page.goto(addressOf(name))
      if (where === 'on a phone')
        await page.evaluate(() => {
          for (const fold of document.querySelectorAll('details')) fold.open = true
        })
      expect([name, await width(), ...(await violations(page))]).toEqual([name, options.viewport.width])
      await page.emulateMedia({forcedColors: 'none', ...second})
      if (where === 'on a desk') await markWhatAPhoneLacks()
      const within = where === 'on a desk' ? '[data-wide]' : 'html'
      const found = await violations(page, {runOnly: ofColours}, within)
      expect([name, second, await width(), ...found]).toEqual([name, second, options.viewport.width])
    }
    expect(heard).toEqual([])
  })

  // A shift is one by the browser's own count (Layout Instability, W3C draft).
  test('nothing shifts while a build’s page and the portfolio load, on a slow line either', async () => {
    await page.emulateMedia({colorScheme: 'light', forcedColors: 'none'})
    const late = /\.woff2$|\/drawings\/|\/photos\//
    for (const isSlow of [false, true]) {
      if (isSlow)
        await page.route(late, async (route) => {
          await new Promise((resolve) => setTimeout(resolve, 400))
          await route.continue().catch(() => {})
        })
      for (const name of ['index.html', 'builds/mooring-line/index.html', kinds().at(-1)!]) {
        await page.goto(addressOf(name), {waitUntil: 'load'})
        const shift = await page.evaluate(
          () =>
            new Promise<number>((resolve) => {
              let sum = 0
              new PerformanceObserver((list) => {
                for (const entry of list.getEntries())
                  sum += (entry as PerformanceEntry & {value: number}).value
              }).observe({type: 'layout-shift', buffered: true})
              setTimeout(() => resolve(sum), 300)
            }),
        )
        expect([name, isSlow, shift]).toSatisfy(([, , sum]) => sum < 0.01)
      }
    }
    await page.unroute(late)
  })
})

describe('the portfolio', () => {
  test('without scripts is the complete list, and has no controls', async () => {
    const context = await browser.newContext({javaScriptEnabled: false})
    const page = await context.newPage()
    await page.goto(home)
    const builds = htmlFiles().filter((name) => /^builds\/[^/]+\/index\.html$/.test(name)).length
    expect(await page.locator('.card').count()).toBe(builds)
    expect(await page.locator('.controls').count()).toBe(0)
    await context.close()
  })

  test('narrows, sorts and searches, and keeps the choice in its address', async () => {
    const page = await browser.newPage()
    await page.goto(home)
    const all = await page.locator('.card').count()
    await page.click('.narrow summary')
    await page.selectOption('[name=frets]', 'frets')
    await page.waitForFunction((count) => document.querySelectorAll('.card').length < count, all)
    const fretted = await page.locator('.card:visible').count()
    expect(fretted).toBeGreaterThan(0)
    expect(fretted).toBeLessThan(all)
    expect(page.url()).toContain('?frets=frets')
    await page.reload()
    await page.waitForFunction((count) => document.querySelectorAll('.card').length === count, fretted)
    await page.click('.controls button')
    await page.selectOption('[name=sort]', 'scale')
    await page.waitForFunction(() => location.search === '?sort=scale')
    const scaleOf = new Map(
      JSON.parse(files['list.json']!).map((one: {slug: string; scale?: number}) => [one.slug, one.scale]),
    )
    const sorted = async () => {
      const ids = await page.locator('.card').evaluateAll((cards) => cards.map(({id}) => id))
      return ids.map((id) => scaleOf.get(id.replace('card-', '')))
    }
    await expect.poll(sorted).toEqual([...scaleOf.values()].sort((a, b) => Number(a) - Number(b)))
    await page.fill('[name=words]', 'lantern')
    await page.waitForFunction((count) => document.querySelectorAll('.card').length < count, all)
    expect(await page.locator('.card:visible h2').first().textContent()).toContain('Lantern')
    await page.close()
  })

  let finding: Page
  beforeAll(async () => {
    finding = await browser.newPage()
  })
  afterAll(() => finding?.close())
  // A maker's words, and the builds of the journal that they are true of.
  test.each([
    ['fretless', ['ice-house', 'lantern-pier', 'mooring-line', 'needle-box-one']],
    ['cedar', ['fog-signal']],
    ['.044w', ['left-bank']],
    ['0.044w', ['left-bank']],
    ['Open G', ['left-bank', 'harbour-bell']],
    ['left-handed', ['left-bank']],
    ['one string', ['mooring-line']],
    ['4 strings', ['tide-table']],
  ])('finds %s', async (words, slugs) => {
    await finding.goto(`${home}?words=${encodeURIComponent(words)}`)
    const found = () => finding.locator('.card').evaluateAll((cards) => cards.map(({id}) => id))
    await expect.poll(found).toEqual(slugs.map((slug) => `card-${slug}`))
  })
})
