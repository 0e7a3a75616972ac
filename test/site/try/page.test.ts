import {mkdirSync, mkdtempSync, readFileSync, rmSync, truncateSync, writeFileSync} from 'node:fs'
import {tmpdir} from 'node:os'
import {join} from 'node:path'
import {brotliCompressSync} from 'node:zlib'
import type {Browser, BrowserContext, Page} from 'playwright-core'
import {afterAll, beforeAll, describe, expect, test} from 'vitest'
import {fetchChecks, fetchHealing} from '../../../site/try/later.ts'
import {look, openSession} from '../../../site/try/session.ts'
import {viewOf} from '../../../site/try/view.ts'
import {violations} from '../../support/axe.ts'
import {openBrowser} from '../../support/browser.ts'
import {demoJournal, type Served, serveSite} from '../../support/demo-site.ts'
import {filesOf} from '../../support/site-files.ts'
import '../../support/slow.ts'

// A build opened for change, in a real browser under the site's own policy and below a path prefix.

const {site} = demoJournal()
const files = filesOf(site)
let browser: Browser
let context: BrowserContext
let page: Page
let server: Served
let home = ''
const heard: string[] = []

beforeAll(async () => {
  await fetchChecks()
  await fetchHealing()
  server = await serveSite(site, 8500)
  home = server.home
  browser = await openBrowser()
  const phone = {viewport: {width: 390, height: 844}, isMobile: true, hasTouch: true, acceptDownloads: true}
  context = await browser.newContext({...phone, reducedMotion: 'reduce'})
  page = await context.newPage()
  page.on('console', (message) => void heard.push(message.text()))
  page.on('pageerror', (error) => void heard.push(error.message))
})
afterAll(async () => {
  await browser?.close()
  server?.close()
})

const textOf = (name: string) => readFileSync(join(site, name), 'utf8')
const slugs = () =>
  Object.keys(files).flatMap((name) => /^builds\/([^/]+)\/plan\.json$/.exec(name)?.[1] ?? [])
const shown = async (on = page) => Number(await on.getAttribute('#Try', 'data-shown'))
const wait = (count: number, on = page) =>
  on.waitForFunction(
    (least) => Number(document.querySelector<HTMLElement>('#Try')?.dataset.shown) > least,
    count,
  )
/** Open a build: in the page that is there already, where it is. */
const openBuild = async (address: string, on = page) => {
  const isThere = on.url().startsWith(`${home}try/`)
  const before = isThere ? await shown(on) : 0
  if (isThere)
    await on.evaluate(
      (hash) => {
        // Where it stands already nothing would change.
        history.replaceState(null, '', location.pathname)
        location.replace(hash)
      },
      address.replace('?', '#'),
    )
  else await on.goto(`${home}try/${address}`)
  await wait(before, on)
  // What came a moment later for the one before it may have been shown first.
  const slug = /from=([\w-]+)/.exec(address)?.[1] ?? ''
  const [title = ''] = /^title: .*/m.exec(files[`builds/${slug}/build.md`] ?? '') ?? []
  await on.waitForFunction(
    (own) => document.querySelector<HTMLTextAreaElement>('#TryText')?.value.includes(own),
    title,
  )
  await on.waitForSelector('#Try[data-checked]')
}
const set = async (path: string, text: string) => {
  const before = await shown()
  await page.fill(`#field-${path.replaceAll('.', '-')}`, text)
  await wait(before)
}
const whole = () => page.inputValue('#TryText')
const says = () => page.textContent('[data-part=says]')

/**
 * List where two plans differ. Powers differ in their last bit between one engine's version and the next, and the place
 * of a least worst is known to half the digits of its height.
 */
function differing(a: unknown, b: unknown, path = ''): string[] {
  if (typeof a === 'number' && typeof b === 'number')
    return Math.abs(a - b) <= 3e-5 * Math.max(1, Math.abs(b)) ? [] : [`${path}: ${a}, ${b}`]
  if (typeof a !== 'object' || typeof b !== 'object' || !a || !b)
    return a === b ? [] : [`${path}: ${a}, ${b}`]
  const [one, other] = [a as Record<string, unknown>, b as Record<string, unknown>]
  const keys = new Set([...Object.keys(one), ...Object.keys(other)])
  return [...keys].flatMap((key) => differing(one[key], other[key], `${path}.${key}`))
}

// Outside check: the plan that the command line wrote beside each build's page.
test('the plan of every build is that of the command line, number by number', async () => {
  for (const slug of slugs()) {
    await openBuild(`?from=${slug}`)
    const [download] = await Promise.all([page.waitForEvent('download'), page.click('[data-part=save-plan]')])
    const {problems: told, ...plan} = JSON.parse(readFileSync(await download.path(), 'utf8'))
    const {problems, ...own} = JSON.parse(textOf(`builds/${slug}/plan.json`))
    // What was paid is not published with the build's text, and so stands among what is needed.
    const needed = ({bill = []}: {bill?: {item: string; count: number}[]}) =>
      bill.map(({item, count}) => `${count} ${item}`).sort()
    // Nor is what a price leaves, which without that is the price.
    const tried = {...plan, bill: needed(plan), cost: plan.cost && {...plan.cost, left: undefined}}
    expect([slug, differing(tried, {...own, bill: needed(own)})]).toEqual([slug, []])
    // What is about the prose stands past the front matter, which is all that the page has.
    const lines = textOf(`builds/${slug}/build.md`).split('\n').length
    const ofFront = (all: {rule: string; line: number}[]) =>
      all.filter(({line}) => line < lines).map(({rule, line}) => `${rule} ${line}`)
    expect([slug, ...ofFront(told)]).toEqual([slug, ...ofFront(problems)])
    // Outside check: the picture as the libraries write it.
    const around = JSON.parse(textOf(`builds/${slug}/around.json`))
    const {drawing} = viewOf(openSession(textOf(`builds/${slug}/build.md`), slug, around))
    const isSame = await page.evaluate((html) => {
      const other = document.createElement('div')
      other.innerHTML = html
      return other.firstChild!.isEqualNode(document.querySelector('.picture')!.firstChild)
    }, drawing)
    expect([slug, isSame]).toEqual([slug, true])
  }
})

describe('a change', () => {
  test('is shown in drawing, figures and words, and set back leaves the file as it was', async () => {
    await openBuild('?from=left-bank')
    const start = await whole()
    expect(start).toBe(textOf('builds/left-bank/build.md'))
    const drawing = await page.innerHTML('.picture')
    await set('scale.length', '25 1/2')
    expect(await page.innerHTML('.picture')).not.toBe(drawing)
    expect(await says()).toMatch(/^Pull up 18 %/)
    expect(await page.textContent('[data-part=tables]')).toContain('12 3/4')
    await set('scale.length', '23 1/2')
    expect(await whole()).toBe(start)
  })

  test('that breaks something is told at its field, and mended with a tap', async () => {
    await openBuild('?from=harbour-bell')
    await set('scale.length', '24 1/4 inn')
    const told = page.locator('#field-scale-length-found')
    expect(await told.textContent()).toMatch(/^Cannot be read/)
    await told.locator('button').first().tap()
    await expect.poll(() => told.textContent()).toBe('')
  })

  test('stands in the address: it is there after the page is loaded again, and in another tab', async () => {
    await openBuild('?from=tide-table')
    await set('box.width', '200')
    await page.waitForFunction(() => location.hash.includes('box.width=200'))
    const other = await context.newPage()
    await openBuild(new URL(page.url()).hash, other)
    expect(await other.inputValue('#field-box-width')).toBe('200')
    await other.close()
    await page.reload()
    await page.waitForSelector('#Try[data-checked]')
    expect(await page.inputValue('#field-box-width')).toBe('200')
  })
})

describe('the drawing', () => {
  test('is the control: a handle follows keys, mark by mark, and says its value in words', async () => {
    await openBuild('?from=left-bank')
    const bridge = page.getByRole('slider', {name: 'Bridge line'})
    await bridge.focus()
    const place = () => bridge.getAttribute('aria-valuetext')
    for (const key of ['ArrowDown', 'ArrowDown', 'PageDown']) {
      const before = await place()
      await page.keyboard.press(key)
      await expect.poll(place).not.toBe(before)
    }
    expect(await page.inputValue('#field-scale-length')).toBe('23 13/16')
    await expect
      .poll(() => bridge.getAttribute('aria-valuetext'))
      .toMatch(/^23 13\/16 in from the nut; pull up 3 %/)
  })

  test('is dragged by a finger, with the figure beside it', async () => {
    await openBuild('?from=left-bank')
    const bridge = page.getByRole('slider', {name: 'Bridge line'})
    await bridge.scrollIntoViewIfNeeded()
    const box = (await bridge.boundingBox())!
    const [x, y] = [box.x + box.width / 2, box.y + box.height / 2]
    await page.mouse.move(x, y)
    await page.mouse.down()
    await page.mouse.move(x, y + 24)
    await expect.poll(() => page.textContent('.drawn .figure')).toMatch(/^2[45].* from the nut.*pull up/i)
    await page.mouse.up()
    expect(await page.locator('.drawn .figure').isVisible()).toBe(false)
    expect(await page.inputValue('#field-scale-length')).toMatch(/^2[45]/)
  })
})

/** Drag with a finger, down the page. */
async function dragged(name: string, downPx: number): Promise<void> {
  const grip = page.getByRole('slider', {name})
  await grip.scrollIntoViewIfNeeded()
  const box = (await grip.boundingBox())!
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2]
  const finger = await context.newCDPSession(page)
  const touch = (type: 'touchStart' | 'touchMove' | 'touchEnd', touchPoints: {x: number; y: number}[]) =>
    finger.send('Input.dispatchTouchEvent', {type, touchPoints})
  await touch('touchStart', [{x, y}])
  for (const part of [0.5, 1]) await touch('touchMove', [{x, y: y + downPx * part}])
  await page.waitForSelector('.drawn .figure:not([hidden])')
  await touch('touchEnd', [])
}

// Somebody with a phone and two thumbs: a past build, a longer scale, another box, what it breaks, a file that builds.
test('a walk with thumbs ends with a file that builds', async () => {
  await openBuild('?from=left-bank')
  await dragged('Bridge line', 24)
  expect(await page.inputValue('#field-scale-length')).toMatch(/^2[45]/)
  await set('scale.length', '25 1/2')
  await set('box.length', '11')
  await set('box.depth', '2 1/4')
  await page.waitForFunction(() =>
    document.querySelector('[data-part=short]')?.textContent?.includes('would not work'),
  )
  await page.locator('[data-part=short]').tap()
  const mends = page.locator('[data-part=problems] [data-mend]')
  for (let taps = 0; (await mends.count()) > 0; taps += 1) {
    expect(taps).toBeLessThan(8)
    const before = await shown()
    await mends.first().tap()
    await wait(before)
  }
  expect(await says()).toMatch(/Pull up 18 %/)
  await page.locator('[data-part=line]').selectOption('line 5')
  await page.getByRole('button', {name: 'As marked'}).tap()
  expect(await page.textContent('[data-part=heard]')).toMatch(/cents|in tune/)
  await page.waitForFunction(() =>
    /was|Was/.test(document.querySelector('[data-part=cuts]')?.textContent ?? ''),
  )
  const [download] = await Promise.all([page.waitForEvent('download'), page.click('[data-part=save]')])
  expect(download.suggestedFilename()).toBe('left-bank-changed.md')
  const saved = readFileSync(await download.path(), 'utf8')
  const around = JSON.parse(textOf('builds/left-bank/around.json'))
  const {problems, build} = look(saved, {slug: 'left-bank-changed', around}, true)
  expect(problems.filter(({severity}) => severity === 'error' || severity === 'fault')).toEqual([])
  expect(build.values.scale?.length?.text).toBe('25 1/2')
})

test('a string is heard once somebody asks, and told how far it is off', async () => {
  await openBuild('?from=left-bank')
  await page.locator('[data-part=line]').selectOption('line 5')
  await page.getByRole('button', {name: 'As meant'}).tap()
  expect(await page.textContent('[data-part=heard]')).toBe('G2, line 5: in tune')
  await page.getByRole('button', {name: 'As marked'}).tap()
  expect(await page.textContent('[data-part=heard]')).toMatch(/^G2, line 5: \d+ cents sharp$/)
})

test('a link that is hostile, cut or of no build here opens what can be opened', async () => {
  for (const hash of [
    '#from=no-such-build&scale.length=25',
    '#%E0%A4%A',
    '#from=left-bank&scale.length=%00&x=<img>',
  ]) {
    await openBuild(hash)
    expect(await page.locator('[data-part=sheet]').isVisible()).toBe(true)
  }
})

test('a build file that is dropped is opened, and what is none is told and changes nothing', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'dropped-'))
  const devtools = await page.context().newCDPSession(page)
  const file = (name: string, content: string | Buffer) => {
    writeFileSync(join(folder, name), content)
    return join(folder, name)
  }
  // As the system hands files over: a page that does not take them is left for them.
  const drop = async (...paths: string[]) => {
    const data = {items: [], files: paths, dragOperationsMask: 1}
    for (const type of ['dragEnter', 'dragOver', 'drop'] as const)
      await devtools.send('Input.dispatchDragEvent', {type, x: 100, y: 300, data})
  }
  const told = page.locator('[data-part=link]')
  await openBuild('?from=left-bank')
  await set('scale.length', '25')
  await page.waitForURL(/scale\.length=25$/)
  const [before, address] = [await whole(), page.url()]
  truncateSync(file('huge.md', ''), 50_000_000)
  mkdirSync(join(folder, 'builds'))
  const odd = {
    'empty.md': '',
    'photo.jpg': Buffer.from([0xff, 0xd8, 0xff, 0xe0, 0, 16]),
    'binary.md': Buffer.from('---\ntitle: Oar box\0\n---\n'),
    '箱 صندوق “ящик” <b>.txt': 'A letter.\n',
  }
  const dropped = [
    ...Object.entries(odd).map(([name, content]) => [file(name, content)]),
    [join(folder, 'huge.md')],
    [join(folder, 'builds')],
    [file('a.md', '---\n'), file('b.md', '---\n')],
  ]
  for (const paths of dropped) {
    await drop(...paths)
    const called = paths.length > 1 ? 'This' : `“${paths[0]!.slice(folder.length + 1)}”`
    await expect
      .poll(() => told.textContent())
      .toBe(`${called} is not one build file, whose first line is ---. What was open stays.`)
    expect([await whole(), page.url()]).toEqual([before, address])
  }
  const count = await shown()
  await drop(file('oar-box.md', '\uFEFF---\r\ntitle: Oar box\r\nscale: 24 inn\r\n---\r\n'))
  await wait(count)
  expect(await whole()).toContain('title: Oar box\nscale: 24 inn')
  expect(await told.textContent()).toMatch(/brings back what was open/)
  await expect.poll(() => page.textContent('[data-part=problems]')).toMatch(/24 in would do/)
  await page.keyboard.press('Control+z')
  await expect.poll(whole).toBe(before)
  // Keys that are none are told as in any file.
  await drop(file('list.md', '---\n- Oar box\n---\n'))
  await expect.poll(() => page.textContent('[data-part=problems]')).toMatch(/must be keys with values/)
  rmSync(folder, {recursive: true})
})

test('storage that is refused changes nothing', async () => {
  const strict = await context.newPage()
  await strict.addInitScript(() => {
    for (const name of ['localStorage', 'sessionStorage'])
      Object.defineProperty(globalThis, name, {
        get: () => {
          throw new DOMException('refused')
        },
      })
  })
  await openBuild('?from=left-bank', strict)
  expect(await strict.inputValue('#field-scale-length')).toBe('23 1/2')
  await strict.close()
})

test('opened once, it needs no network: neither for itself nor for a build that was opened', async () => {
  const own = await serveSite(site, 8550)
  const away = await (await browser.newContext()).newPage()
  const address = `${own.home}try/`
  await away.goto(`${address}?from=left-bank`)
  await wait(0, away)
  const isKept = () =>
    away.evaluate(async () => {
      const cache = await caches.open('try')
      return (await cache.keys()).some(({url}) => url.includes('try-worker'))
    })
  await expect.poll(isKept, {timeout: 60_000}).toBe(true)
  own.close()
  await away.goto(`${address}#from=left-bank&scale.length=25`)
  await away.reload()
  await wait(0, away)
  expect(await away.inputValue('#field-scale-length')).toBe('25')
  await away.getByLabel('Start from').selectOption('ice-house')
  await expect.poll(() => away.textContent('[data-part=link]')).toContain('cannot be fetched')
  expect(await away.getByLabel('Start from').inputValue()).toBe('left-bank')
  await away.close()
})

test('without scripts one sentence says what is needed', async () => {
  const plain = await (await browser.newContext({javaScriptEnabled: false})).newPage()
  await plain.goto(`${home}try/`)
  expect(await plain.locator('main').textContent()).toContain('needs scripts switched on')
  expect(await plain.locator('main button, main select').count()).toBe(0)
})

test('the page’s own scripts are small, and it is as wide as the screen', async () => {
  const sizes = new Map<string, number>()
  const size = (name: string) => {
    const known = sizes.get(name) ?? brotliCompressSync(readFileSync(join(site, name))).length
    sizes.set(name, known)
    return known
  }
  const sum = (names: Iterable<string>) => [...names].reduce((all, name) => all + size(name), 0)
  const own = Object.keys(files).filter((name) => /assets\/(try|page|unfold)-[A-Z0-9]+\.js$/.test(name))
  const parts = Object.keys(files).filter((name) => /^try\/try-[\w-]+\.js$/.test(name))
  const linked = (name: string): string[] =>
    [...textOf(name).matchAll(/(?:from|import)"\.\/(try-part-[^"]+)"/g)].map(([, file]) => `try/${file}`)
  const withAll = (name: string): string[] => [name, ...linked(name).flatMap(withAll)]
  // To see, type and drag; then by themselves what would not work and the making.
  const first = new Set([...own, ...withAll(parts.find((name) => /try-worker-/.test(name))!)])
  const making = new Set(withAll(parts.find((name) => /try-making-/.test(name))!))
  expect(own.length).toBe(3)
  expect(sum(first)).toBeLessThan(120_000)
  expect(sum([...making].filter((name) => !first.has(name)))).toBeLessThan(42_000)
  expect(sum(new Set([...own, ...parts]))).toBeLessThan(213_000)
  await openBuild('?from=lantern-pier')
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(390)
})

// The last of all, since it changes the size of the page.
// Outside check: axe-core, all its rules of WCAG 2.2 A and AA and of good practice.
test.each([
  {width: 390, height: 844},
  {width: 1280, height: 900},
])('it passes axe in the light and in the dark, at %j', async (viewport) => {
  const one = page
  await one.setViewportSize(viewport)
  await openBuild('#from=left-bank&scale.length=25+1/2+inn&strings.1.gauge=.080')
  await one.evaluate(() => scrollTo(0, 0))
  for (const colorScheme of ['light', 'dark'] as const) {
    await one.emulateMedia({colorScheme})
    const tags = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice']
    expect([colorScheme, ...(await violations(one, {runOnly: tags}))]).toEqual([colorScheme])
  }
})

test('it is quiet', () => {
  expect(heard).toEqual([])
})
