import {cpSync, readFileSync} from 'node:fs'
import {join} from 'node:path'
import {brotliCompressSync} from 'node:zlib'
import type {Browser, Locator, Page} from 'playwright-core'
import {afterAll, beforeAll, describe, expect, test} from 'vitest'
import {openBrowser} from '../support/browser.ts'
import {demoJournal, demoPrefix, type Served, serveSite} from '../support/demo-site.ts'
import {showInOwnFace} from '../support/own-face.ts'
import {filesOf} from '../support/site-files.ts'
import {fourLines, tempJournal} from '../support/temp-journal.ts'
import told from './told-on-pages.json' with {type: 'json'}
import '../support/slow.ts'

// One screen to know, one tap to do: what a build's page may take of a phone 390 px wide, of a line and of paper, for
// the journal's own builds and one that nobody has looked at.

const journal = tempJournal()
const site = join(journal.root, '_site')
let files: Record<string, string> = {}
let browser: Browser
let page: Page
let server: Served

beforeAll(async () => {
  // With what is kept of the journal's own site.
  for (const folder of ['builds', '.cache'])
    cpSync(join(demoJournal().root, folder), join(journal.root, folder), {recursive: true})
  journal.write('builds/unseen.md', fourLines('Unseen'))
  expect(journal.run('build', `--path-prefix=${demoPrefix}`)).toMatchObject({status: 0})
  files = filesOf(site)
  server = await serveSite(site, 8400)
  browser = await openBrowser()
  const phone = {viewport: {width: 390, height: 844}, isMobile: true, hasTouch: true}
  page = await (await browser.newContext({...phone, reducedMotion: 'reduce'})).newPage()
})
afterAll(async () => {
  await browser?.close()
  server?.close()
  journal.remove()
})

const pagesOfBuilds = () => Object.keys(files).filter((name) => /^builds\/[^/]+\/index\.html$/.test(name))
const show = (name: string) => showInOwnFace(page, server.home + name.replace(/index\.html$/, ''))

/** What is seen of a page closed, what is far to get at, and what is wide with all folds open. */
async function look(name: string) {
  await show(name)
  const closed = await page.evaluate(() => {
    const high = (what: string) => document.querySelector(what)?.getBoundingClientRect().height ?? 0
    const answers = [...document.querySelectorAll('.computed')].map((section) => ({
      id: section.querySelector('h2')?.id ?? '',
      words: [...section.children]
        .filter((child) => !['H2', 'DETAILS'].includes(child.tagName))
        .flatMap((child) => (child as HTMLElement).innerText.split(/\s+/).filter(Boolean)).length,
    }))
    const tall = [
      'layout',
      'strings',
      'intonation',
      'neck',
      'scarf',
      'box',
      'drilling',
      'fasteners',
      'cut-list',
      'bill',
      'work-order',
    ]
    const asides = ['setting-up', 'cautions', 'as-built', 'played', 'lineage', 'assumptions']
    // From the journal's name on: what the keyboard stops at.
    const stops = [
      ...document.querySelectorAll<HTMLElement>('a[href], summary, button, [tabindex="0"]'),
    ].filter((one) => one.tabIndex >= 0 && !one.matches('.skip'))
    return {
      high: document.documentElement.scrollHeight,
      words: document.querySelector('main')!.innerText.split(/\s+/).length,
      top: high('header.site') + high('.nut-line'),
      doors: high('.doors'),
      state: high('.state'),
      hero: high('.hero'),
      jump: high('.jump'),
      takeAway: high('.take-away'),
      head: high('.page-head') - high('.page-head .cover'),
      days: high('.days'),
      aside: asides.reduce((sum, id) => sum + high(`.computed-${id}`), 0),
      tall: tall.filter((id) => high(`.computed-${id}`) > 185),
      stops: stops.findIndex((one) => one.localName === 'summary' && !one.closest('.state')) + 1,
      long: answers.filter(({id, words}) => words > 25 && !/^(setting-up|still-open|drawing)$/.test(id)),
    }
  })
  const far: string[] = []
  for (const [what, ...places] of errands) if (!(await isNear(places))) far.push(what)
  const wide = await page.evaluate(() => {
    const workedFrom = ['layout', 'box', 'drilling', 'fasteners', 'cut-list', 'bill']
    for (const fold of document.querySelectorAll('details')) fold.open = true
    return [...document.querySelectorAll<HTMLElement>('.computed .scrolling')]
      .filter(
        (box) =>
          !box.closest('.figures') &&
          workedFrom.includes(box.closest('.computed')!.className.split('computed-')[1]!),
      )
      .filter((box) => box.scrollWidth > 358)
      .map((box) => `${box.querySelector('caption')?.textContent}: ${box.scrollWidth}`)
  })
  return {closed, far, wide}
}

/** What a maker comes for, each at the end of at most two taps. */
const errands: [what: string, ...places: string[]][] = [
  ['the bench sheet', '.doors a[href$="bench/"]'],
  ['the next step', '.state'],
  [
    'the place of line 7',
    '.jump a[href="#layout"]',
    '.computed-layout summary:text("stations")',
    '.computed-layout tr:has(th:text-matches("^(line|fret|dot) 7$"))',
  ],
  ['the bit of a tuner', '.drawing-whole a[href^="#at-post"]', 'tr[id^="at-post"]'],
]

/** Go from place to place from the top of a page, tapping on each but the last, with two swipes for all. */
async function isNear(places: readonly string[]): Promise<boolean> {
  await page.evaluate(() => {
    for (const fold of document.querySelectorAll<HTMLDetailsElement>('.computed details')) fold.open = false
    for (const one of document.querySelectorAll('html, .jump')) one.scrollTo(0, 0)
  })
  let swipes = 2
  for (const [i, place] of places.entries()) {
    const one = page.locator(place).first()
    // A finished build has no step to come, and one without a head no tuners.
    if ((await one.count()) === 0) return true
    let to = await seen(one)
    while (to !== 'here') {
      if (swipes-- === 0) return false
      await one.evaluate((element, way) => {
        const bar = element.closest('.jump')
        if (way === 'aside') bar?.scrollBy(300, 0)
        // Less than a screen, so that nothing is passed unseen.
        else scrollBy(0, way === 'below' ? 700 : -700)
      }, to)
      to = await seen(one)
    }
    if (i < places.length - 1) await one.tap()
  }
  return true
}

const seen = (one: Locator) =>
  one.evaluate((element) => {
    const {left, right, top, bottom} = element.getBoundingClientRect()
    if (bottom > innerHeight) return 'below'
    if (top < 0) return 'above'
    return left >= 0 && right <= innerWidth ? 'here' : 'aside'
  })

describe('a build’s page on a phone', () => {
  const looked: [name: string, look: Awaited<ReturnType<typeof look>>][] = []
  beforeAll(async () => {
    for (const name of pagesOfBuilds()) looked.push([name, await look(name)])
  })

  test('is at most 8,000 px and 1,000 words closed, each part within its own', () => {
    for (const [name, {closed}] of looked) {
      const {long, tall, ...sizes} = closed
      expect([name, long, tall]).toEqual([name, [], []])
      const most = {
        high: 8000,
        words: 1000,
        top: 150,
        doors: 48,
        state: 100,
        hero: 760,
        jump: 48,
        takeAway: 400,
        head: 370,
        days: 700,
        aside: 1200,
        stops: 12,
      }
      const over = Object.entries(most).filter(([part, limit]) => sizes[part as keyof typeof most] > limit)
      expect([name, over.map(([part]) => [part, sizes[part as keyof typeof most]])]).toEqual([name, []])
    }
  })

  test('opens the fold that a link leads into, and lets a station and its row lead to each other', async () => {
    await show('builds/lantern-pier/index.html')
    expect(await page.locator('#at-bridge').isVisible()).toBe(false)
    await page.locator('#on-bridge').click()
    await page.waitForFunction(() => document.querySelector('#at-bridge')?.closest('details')?.open)
    await page.locator('#at-bridge a').click()
    expect(new URL(page.url()).hash).toBe('#on-bridge')
  })

  test('lets arrow keys lead over the drawing, which is one stop, and washes what is meant', async () => {
    await show('builds/lantern-pier/index.html')
    const names = page.locator('.drawing-whole a')
    const state = () =>
      names.evaluateAll((all) => ({
        stops: all.flatMap((one, at) => ((one as SVGAElement).tabIndex >= 0 ? [at] : [])),
        focused: all.findIndex((one) => one === document.activeElement),
      }))
    await names.first().focus()
    expect(await state()).toEqual({stops: [0], focused: 0})
    await page.keyboard.press('ArrowDown')
    await page.keyboard.press('ArrowRight')
    expect(await state()).toEqual({stops: [2], focused: 2})
    for (let back = 0; back < 3; back += 1) await page.keyboard.press('ArrowUp')
    expect(await state()).toEqual({stops: [0], focused: 0})
    const meant = () =>
      page.evaluate(() => [...document.querySelectorAll('main .meant')].map(({id}) => id).sort())
    const first = (await names.first().getAttribute('href'))!.slice(1)
    expect(await meant()).toContain(first)
    await page.locator('#on-bridge').hover()
    expect(await meant()).toEqual(expect.arrayContaining(['at-bridge', 'on-bridge']))
    await names.first().blur()
    await page.mouse.move(0, 0)
    expect(await meant()).toEqual([])
    // What is copied is plain text, however its fractions are set.
    const copied = await page.evaluate(() => {
      getSelection()!.selectAllChildren(document.querySelector('.at-a-glance')!)
      return getSelection()!.toString()
    })
    expect(copied).toMatch(/24 1\/4[\s\u00a0]in \(616[\s\u00a0]mm\)/)
  })

  test('has what a maker comes for at most two taps and two swipes away', () => {
    for (const [name, {far}] of looked) expect([name, far]).toEqual([name, []])
  })

  test('holds nothing wider than 358 px that a maker marks or drills from', () => {
    for (const [name, {wide}] of looked) expect([name, wide]).toEqual([name, []])
  })
})

test('a build’s page is at most 20 kB compressed and 110 kB raw, its drawing 12 kB', () => {
  for (const name of pagesOfBuilds()) {
    const html = readFileSync(join(site, name))
    // As hosts and browsers agree on (RFC 7932).
    expect([name, brotliCompressSync(html).length]).toSatisfy(([, bytes]) => bytes <= 20_000)
    expect([name, html.length]).toSatisfy(([, bytes]) => bytes <= 110_000)
    const [drawing = ''] = /<svg class="drawing drawing-whole"[\s\S]*?<\/svg>/.exec(files[name]!) ?? []
    expect([name, drawing.length]).toSatisfy(([, bytes]) => bytes > 0 && bytes <= 12_000)
  }
})

test('the portfolio of a thousand builds weighs at most 150 kB before the first scroll', () => {
  const weight = (name: string) => brotliCompressSync(readFileSync(join(site, name))).length
  const html = files['index.html']!
  // A page hangs and lists 36 builds, these are fewer: as heavy as if each of the others were unlike all of these.
  const shown = html.match(/<li class="card/g)!.length
  const covers = Object.keys(files).filter((name) => /\/drawings\/cover\.svg$/.test(name))
  const assets = [...new Set(html.match(/assets\/[^"]+/g))].map((name) => weight(name))
  expect([shown > 0, covers.length > 0, assets.length > 3]).toEqual([true, true, true])
  // Covers load as they come near: four of them on a phone.
  const near = 4 * Math.max(...covers.map(weight))
  const all = (weight('index.html') * 36) / shown + assets.reduce((sum, one) => sum + one, 0) + near
  expect(all).toBeLessThan(150_000)
  // Without scripts every build is on some page of the list.
  const listed = html.match(/<a [^>]*href="[^"]*builds\/[a-z-]+\/"/g)!
  expect(new Set(listed.map((one) => /builds\/([a-z-]+)/.exec(one)![1])).size).toBe(pagesOfBuilds().length)
})

test('a build’s page prints on at most 16 sheets of A4 with everything', async () => {
  const desk = await browser.newPage()
  for (const name of pagesOfBuilds()) {
    await desk.goto(server.home + name)
    const pdf = (await desk.pdf({format: 'A4'})).toString('latin1')
    const sheets = pdf.match(/\/Type \/Page\b(?!s)/g)?.length ?? 0
    expect([name, sheets]).toSatisfy(([, count]) => count > 0 && count <= 16)
  }
  await desk.close()
})

// Every caption, column and name that the builds' pages had when each page was all that there is.
test('all that was told before is told still, on the page, its bench sheet or its page of changes', () => {
  const own = Object.keys(files).filter((name) => /^builds\/.*index\.html$/.test(name))
  const text = own.map((name) => readFileSync(join(site, name), 'utf8')).join('')
  const plain = (html: string) =>
    html
      .replaceAll(/<[^>]+>/g, '')
      .replaceAll(/\d+/g, '#')
      .trim()
  const names = (tag: string, pattern: RegExp) =>
    [...text.matchAll(pattern)].map(([, inside]) => `${tag}: ${plain(inside!).replaceAll('&#x26;', '&')}`)
  const found = new Set([
    ...names('caption', /<caption[^>]*>(.*?)<\/caption>/gs),
    ...names('dt', /<dt[^>]*>(.*?)<\/dt>/gs),
    // What belongs below another stands in its column.
    ...names('head', /<th scope="col"[^>]*>(.*?)<(?:\/th|small)>/gs),
    ...names('head', /<th scope="col"[^>]*>[^<]*<small>(.*?)<\/small>/gs),
  ])
  expect(told.filter((name) => !found.has(name))).toEqual([])
  const ids = ['layout', 'lines', 'strings', 'intonation', 'neck', 'scarf', 'box', 'drilling', 'fasteners']
  const more = ['cut-list', 'bill', 'work-order', 'setting-up', 'cautions', 'as-built', 'played', 'lineage']
  const rest = ['assumptions', 'before-you-cut', 'drawing', 'TakeAway']
  for (const id of [...ids, ...more, ...rest]) expect(text).toContain(` id="${id}"`)
})
