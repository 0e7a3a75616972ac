import {getDocument} from 'pdfjs-dist/legacy/build/pdf.mjs'
import type {Browser, BrowserContext, Page} from 'playwright-core'
import {afterAll, beforeAll, describe, expect, test} from 'vitest'
import {violations} from '../../support/axe.ts'
import {openBrowser} from '../../support/browser.ts'
import {demoJournal, type Served, serveSite} from '../../support/demo-site.ts'
import {showInOwnFace} from '../../support/own-face.ts'
import {filesOf} from '../../support/site-files.ts'
import '../../support/slow.ts'

// The sheets of the project's own builds, printed by a real browser and read back.

let browser: Browser
let context: BrowserContext
let page: Page
let server: Served
const {site} = demoJournal()
const files = filesOf(site)
const slugs = Object.keys(files).flatMap(
  (name) => /^builds\/([^/]+)\/bench\/index\.html$/.exec(name)?.[1] ?? [],
)
const addressOf = (slug: string) => `${server.home}builds/${slug}/bench/`

beforeAll(async () => {
  server = await serveSite(site, 8700)
  browser = await openBrowser()
  context = await browser.newContext()
  page = await context.newPage()
})
afterAll(async () => {
  await browser?.close()
  server?.close()
})

/** Print a page and read it back: its pages, and each size of type (points) that is on them. */
async function printed(format: 'Letter' | 'A4'): Promise<{pages: number; sizesPt: number[]; text: string}> {
  const data = new Uint8Array(await page.pdf({format}))
  const paper = await getDocument({data, useSystemFonts: true, verbosity: 0}).promise
  const sizes = new Set<number>()
  let text = ''
  for (let number = 1; number <= paper.numPages; number++) {
    const {items} = await (await paper.getPage(number)).getTextContent()
    for (const item of items) {
      if (!('str' in item) || item.str.trim() === '') continue
      const [, , c, d] = item.transform as number[]
      sizes.add(Math.round(Math.hypot(c!, d!) * 100) / 100)
      text += `${item.str} `
    }
  }
  return {pages: paper.numPages, sizesPt: [...sizes], text}
}

test('every build that there is work on has a sheet, and its page leads there', () => {
  expect(slugs.length).toBeGreaterThan(5)
  for (const slug of slugs) expect(files[`builds/${slug}/index.html`]).toContain(`/builds/${slug}/bench/`)
})

test('a sheet is parts and holes, and two pages of steps, on either paper, in 14 points at least', async () => {
  for (const slug of slugs) {
    await showInOwnFace(page, addressOf(slug))
    for (const format of ['Letter', 'A4'] as const) {
      const {pages, sizesPt, text} = await printed(format)
      expect([slug, format, pages]).toEqual([slug, format, Math.min(pages, 3)])
      expect(Math.min(...sizesPt)).toBeGreaterThanOrEqual(13.99)
      expect(text).toContain('Local codes, the machine’s manual and')
    }
  }
})

test('is black on white', async () => {
  await page.emulateMedia({colorScheme: 'dark'})
  await page.goto(addressOf('lantern-pier'))
  const colours = await page.evaluate(() => {
    const {color, backgroundColor} = getComputedStyle(document.querySelector('.bench')!)
    return [color, backgroundColor, getComputedStyle(document.documentElement).backgroundColor]
  })
  expect(colours).toEqual(['rgb(0, 0, 0)', 'rgb(255, 255, 255)', 'rgb(255, 255, 255)'])
  await page.emulateMedia({colorScheme: null})
})

/** A step starts with its picture, where there is one, and its own box. */
const stepStart =
  /<li id="[a-z-]+\d*" data-step="[^"]+">(?=(?:<div class="step-picture">[\s\S]*?<\/div>)?<label><input type="checkbox" value="[a-z-]+\d*"[^>]*>)/

describe('every step of the plan', () => {
  test('has a box, its setting, its places and its check have theirs, and each caution stands with it', () => {
    for (const slug of slugs) {
      const html = files[`builds/${slug}/bench/index.html`]!
      const keys = [...html.matchAll(/<input type="checkbox" value="([^"]*)"/g)].map((found) => found[1]!)
      expect(new Set(keys).size).toBe(keys.length)
      const {work} = JSON.parse(
        Buffer.from(files[`builds/${slug}/plan.json`]!, 'latin1').toString('utf8'),
      ) as {
        work: {id: string; stations: object[]; setting?: string; check?: string; cautions: string[]}[]
      }
      const steps = html.split(stepStart).slice(1)
      expect(steps.length).toBe(work.length)
      work.forEach(({id, stations, check, setting, cautions}, at) => {
        const boxes = [...steps[at]!.matchAll(/<input type="checkbox" value="([^"]*)"/g)]
        const isDrilled = stations.some((station) => 'bit' in station)
        const least = 1 + stations.length + (check ? 1 : 0) + (setting && !isDrilled ? 1 : 0)
        expect([slug, id, boxes.length]).toEqual([slug, id, least])
        expect(steps[at]!.includes('class="mind"') || steps[at]!.includes(' Mind ')).toBe(cautions.length > 0)
      })
    }
  })
})

test('ticks stay in the browser between visits, where scripts run', async () => {
  await page.goto(addressOf('needle-box-one'))
  const box = page.locator('input[value="saw-scarf"]')
  expect(await box.isChecked()).toBe(false)
  await box.check()
  await page.reload()
  expect(await box.isChecked()).toBe(true)
  expect(await page.locator('input:checked').count()).toBe(1)
})

test('keeps its ticks where the reader forces colours', async () => {
  await page.emulateMedia({forcedColors: 'active'})
  await page.goto(addressOf('lantern-pier'))
  const [ticked, open] = await page.evaluate(() =>
    [true, false].map((isDone) => {
      const boxes = [...document.querySelectorAll<HTMLInputElement>('.bench input[type=checkbox]')]
      return getComputedStyle(boxes.find(({checked}) => checked === isDone)!).backgroundImage
    }),
  )
  expect(ticked).toContain('gradient')
  expect(open).toBe('none')
  await page.emulateMedia({forcedColors: 'none'})
})

test('shows one step a screen on a phone, next and back under the thumb, and tells what is ticked', async () => {
  const phone = await browser.newContext({
    viewport: {width: 390, height: 844},
    isMobile: true,
    hasTouch: true,
  })
  const small = await phone.newPage()
  await small.goto(addressOf('needle-box-one'))
  expect(await small.locator('.ticked-here').isVisible()).toBe(false)
  await small.getByRole('button', {name: 'One step a screen'}).tap()
  const seen = () =>
    small.evaluate(() => ({
      steps: [...document.querySelectorAll<HTMLElement>('.bench-steps > li')].filter(
        (one) => one.offsetHeight > 0,
      ).length,
      wide: document.documentElement.scrollWidth,
      at: document.querySelector('.step-bar output')!.textContent,
      thumbs: [...document.querySelectorAll('.step-bar button')].map((one) => {
        const {height, bottom} = one.getBoundingClientRect()
        return height >= 44 && bottom > innerHeight - 120 && bottom <= innerHeight
      }),
    }))
  const first = await seen()
  expect(first).toMatchObject({steps: 1, wide: 390, thumbs: [true, true, true]})
  // Outside check: axe-core, all its rules of WCAG 2.2 A and AA and of good practice.
  expect(await violations(small)).toEqual([])
  const [, count] = /^1 of (\d+)$/.exec(first.at!)!
  for (let at = 1; at < Number(count); at++) {
    expect(await small.locator('.bench-steps > li.here input').first().isVisible()).toBe(true)
    if (at === 2) await small.locator('.bench-steps > li.here input').first().check()
    await small.getByRole('button', {name: 'Next'}).tap()
    expect(await seen()).toMatchObject({steps: 1, wide: 390, at: `${at + 1} of ${count}`})
  }
  expect(await small.getByRole('button', {name: 'Next'}).isDisabled()).toBe(true)
  await small.getByRole('button', {name: 'Back'}).tap()
  await small.reload()
  expect((await seen()).at).toBe(`${Number(count) - 1} of ${count}`)
  await small.getByRole('button', {name: 'All steps'}).tap()
  expect((await seen()).steps).toBe(Number(count))
  await small.locator('.ticked-here summary').tap()
  const text = await small.locator('.ticked-here textarea').inputValue()
  expect(text).toMatch(/^## \d{4}-\d\d-\d\d\n\n:step\[[^\]]+\]\n$/)
  await phone.close()
})

test('boxes can be ticked with scripts off', async () => {
  const plain = await browser.newContext({javaScriptEnabled: false})
  const still = await plain.newPage()
  await still.goto(addressOf('needle-box-one'))
  const box = still.locator('input[value="mill"]')
  await box.check()
  expect(await box.isChecked()).toBe(true)
  await plain.close()
})
