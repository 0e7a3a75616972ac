import {realpathSync} from 'node:fs'
import type {RequestListener} from 'node:http'
import type {Browser, BrowserContext, Page} from 'playwright-core'
import {afterAll, afterEach, beforeAll, expect, test} from 'vitest'
import {answer} from '../../../site/serve/answer.ts'
import {listen} from '../../../site/serve/listen.ts'
import {openBrowser} from '../../support/browser.ts'
import {demoJournal, demoPrefix} from '../../support/demo-site.ts'
import {filesOf} from '../../support/site-files.ts'
import '../../support/slow.ts'

// What of the page that tries a change comes by itself may not come: no network, or a site that was published anew.

const {site} = demoJournal()
const folder = realpathSync(site)
const files = filesOf(site)
/** What comes a moment later, with a slip, or with the plan to save; and what the making is planned by. */
const later = Object.values(files).flatMap((text) =>
  [...text.matchAll(/import\("\.\/(try-part-[\w-]+\.js)"\)/g)].map(([, name]) => name!),
)
const making = Object.keys(files).flatMap((name) => /try-making-[\w-]+\.js$/.exec(name)?.[0] ?? [])

/** How the site answers for some of its files. */
let otherwise: {for: (url: string) => boolean; by: RequestListener} | undefined
const away: RequestListener = (request) => void request.socket.destroy()
const gone: RequestListener = (_, response) => void response.writeHead(404).end()
const only =
  (names: readonly string[]) =>
  (url: string): boolean =>
    names.some((name) => url.endsWith(name))

let server: {port: number; close: () => void}
let browser: Browser
let context: BrowserContext
let page: Page

beforeAll(async () => {
  expect([later.length, making.length]).toEqual([3, 1])
  server = await listen((request, response) => {
    if (otherwise?.for(request.url ?? '')) otherwise.by(request, response)
    else void answer({folder, prefix: demoPrefix}, request, response)
  }, 8650)
  browser = await openBrowser()
})
afterAll(async () => {
  await browser?.close()
  server?.close()
})
afterEach(async () => {
  otherwise = undefined
  await context.close()
})

/** Open a build in a browser that has seen nothing yet. */
async function opened(hash = '#from=left-bank'): Promise<void> {
  context = await browser.newContext()
  page = await context.newPage()
  await page.goto(`http://localhost:${server.port}${demoPrefix}try/${hash}`)
  await page.waitForSelector('#Try[data-shown]')
}
const said = () => page.textContent('[data-part=parts]')
const set = async (path: string, text: string, on = page) => {
  await on.fill(`#field-${path.replaceAll('.', '-')}`, text)
  await on.waitForFunction(
    (own) => document.querySelector<HTMLTextAreaElement>('#TryText')?.value.includes(own),
    text,
  )
}

test('without a network for checks and making the page says so, draws all the same, and says when they are back', async () => {
  otherwise = {for: only([...later, ...making]), by: away}
  await opened()
  await expect.poll(said).toMatch(/^No network\. Missing: what would not work; the cut list/)
  await set('scale.length', '24 3/4 inn')
  expect(await page.textContent('#field-scale-length-found')).toMatch(/^Cannot be read/)
  await set('scale.length', '25 1/2')
  expect(await page.textContent('[data-part=says]')).toMatch(/^Pull up 18 %/)
  expect(await page.getAttribute('#Try', 'data-checked')).toBe(null)
  otherwise = undefined
  await page.evaluate(() => dispatchEvent(new Event('online')))
  await page.waitForSelector('#Try[data-checked]')
  await expect.poll(said).toBe('All of this page is here again.')
  expect(await page.inputValue('#field-scale-length')).toBe('25 1/2')
  expect(await page.textContent('[data-part=says]')).toMatch(/^Pull up 18 %/)
  await page.waitForSelector('#Try[data-made]')
})

test('so it does where what draws is lacking', async () => {
  otherwise = {for: (url) => /try-worker-/.test(url), by: away}
  context = await browser.newContext()
  page = await context.newPage()
  await page.goto(`http://localhost:${server.port}${demoPrefix}try/#from=left-bank&scale.length=25`)
  await expect.poll(said).toMatch(/^No network\. Missing: what computes the plan/)
  otherwise = undefined
  await page.evaluate(() => dispatchEvent(new Event('online')))
  await page.waitForSelector('#Try[data-checked]')
  expect(await page.inputValue('#field-scale-length')).toBe('25')
})

test('where the site has the parts of an older page no more it is to be loaded again, with what was changed', async () => {
  otherwise = {for: only(later), by: gone}
  await opened()
  await set('scale.length', '25')
  await page.waitForFunction(() => location.hash.includes('scale.length=25'))
  await expect.poll(said).toMatch(/^This page is older than the site/)
  otherwise = undefined
  await page.getByRole('button', {name: 'Load the page again'}).click()
  await page.waitForSelector('#Try[data-checked]')
  expect(await page.inputValue('#field-scale-length')).toBe('25')
})

/** The same site with other names of all its scripts for this page, as after a change of the program. */
const newer: RequestListener = (request, response) => {
  const name = (request.url ?? '').slice(demoPrefix.length).replace(/[?#].*/, '')
  const file = name.endsWith('/') ? `${name}index.html` : name.replace(/0(\.js)$/, '$1')
  const isOld = /\/try-\w+-\w+\.js$/.test(name) && !name.endsWith('0.js')
  const text = isOld ? undefined : files[file]
  if (text === undefined) response.writeHead(404).end()
  else {
    const type = file.endsWith('.js') ? 'text/javascript' : 'text/html'
    response.writeHead(200, {'Content-Type': type})
    response.end(text.replace(/(\/try-(?:worker|making|part)-\w+)\.js/g, '$10.js'))
  }
}

test('a tab of the older page goes on beside one of the newer, which has the same build open', async () => {
  await opened()
  const isKept = () =>
    page.evaluate(async () => {
      const kept = await (await caches.open('try')).keys()
      return kept.some(({url}) => url.includes('try-worker')) && navigator.serviceWorker.controller !== null
    })
  await expect.poll(isKept, {timeout: 60_000}).toBe(true)
  otherwise = {for: (url) => /\/try\//.test(url) && !url.endsWith('offline.js'), by: newer}
  await page.waitForFunction(() => location.hash !== '')
  const other = await context.newPage()
  await other.goto(page.url())
  await other.waitForSelector('#Try[data-checked]')
  const isNewKept = () =>
    other.evaluate(async () => {
      const kept = await (await caches.open('try')).keys()
      return kept.some(({url}) => /try-worker-\w+0\.js/.test(url))
    })
  await expect.poll(isNewKept, {timeout: 60_000}).toBe(true)
  // What mends a slip is fetched only now, under the name that the site no longer has.
  await set('scale.length', '24 1/4 inn')
  await page.waitForSelector('#field-scale-length-found button')
  await set('scale.length', '25', other)
  expect(await said()).toBe('')
})
