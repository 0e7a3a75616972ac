import {type ChildProcess, spawn, spawnSync} from 'node:child_process'
import {once} from 'node:events'
import {
  appendFileSync,
  existsSync,
  mkdtempSync,
  readFileSync,
  realpathSync,
  rmSync,
  writeFileSync,
} from 'node:fs'
import {tmpdir} from 'node:os'
import {join, resolve} from 'node:path'
import {setTimeout as pause} from 'node:timers/promises'
import {pathToFileURL} from 'node:url'
import type {Asked, Measure} from '../bench.ts'
import {openBrowser} from '../support/browser.ts'
import {compiled} from '../support/commands.ts'
import {serveSite} from '../support/demo-site.ts'
import {writeManyBuilds} from '../support/many-builds.ts'
import {withoutPdfs} from '../support/without-pdfs.ts'

const bareEleventy = [resolve('node_modules/@11ty/eleventy/cmd.cjs'), '--input=builds', '--output=bare']
const asMarkdown = ['--formats=md', '--quiet']
/** The build that is written at. */
const saved = 'fog-signal'

/** What a command took, as the operating system counts it. */
interface Took {
  /** Of processor time, which other work on the machine changes little. */
  seconds: number
  /** Of the clock. */
  waited: number
  /** The most memory held at once. */
  megabytes: number
}

/** What was measured at one number of builds; `bare` is an Eleventy alone on the same Markdown. */
export interface SiteFigures {
  builds: number
  /** When. */
  day: string
  bare: Took
  anew: Took
  /** By a program that writes no PDFs. */
  anewWithoutPdfs: Took
  kept: Took
  changed: Took
  /** From a save to the page that shows it, soon after the first start, ms of the clock. */
  save: {bareMs: number; ms: number; megabytes: number}
  /** From a first start after a build to the page of the build that is written at, ms of the clock. */
  first?: {bareMs: number; ms: number}
  /** From an address to a portfolio whose controls answer, ms of the clock. */
  portfolioMs: number
}

/** Figures of large journals take an hour to measure: those that the README shows are kept here, by number of builds. */
const keptFile = new URL('../site-figures.json', import.meta.url)

/**
 * Measure the whole site of a journal many times the project's own, each against a bare Eleventy that renders the same
 * Markdown in the same run. For the README, what was measured before at other numbers of builds stands beside it.
 */
export async function bench({counts, told, isKept}: Asked): Promise<Measure[]> {
  const all: Record<number, SiteFigures> = isKept ? JSON.parse(readFileSync(keptFile, 'utf8')) : {}
  for (const count of counts) all[count] = await measure(count, (what) => told(`${count} builds: ${what}`))
  if (isKept) writeFileSync(keptFile, `${JSON.stringify(all, undefined, 2)}\n`)
  // Whole numbers as names stand in their order.
  const figures = Object.values(all)
  return [...figures.flatMap(measuresOf), ...growth(figures)]
}

async function measure(builds: number, told: (what: string) => void): Promise<SiteFigures> {
  const root = realpathSync(mkdtempSync(join(tmpdir(), 'bench-')))
  try {
    writeManyBuilds(root, builds)
    told('a bare Eleventy')
    const bare = run(root, [...bareEleventy, ...asMarkdown])
    told('made anew without PDFs')
    const anewWithoutPdfs = run(root, await withoutPdfs('build'))
    for (const made of ['.cache', '.site', '_site']) rmSync(join(root, made), {recursive: true})
    told('made anew')
    const anew = run(root, compiled('build'))
    told('nothing changed')
    const kept = run(root, compiled('build'))
    told('one changed')
    const changeOne = () => {
      appendFileSync(join(root, `builds/${saved}.md`), 'One more line.\n')
      return run(root, compiled('build'))
    }
    // The first after one made anew links every file; those of an evening begin with the version before the last.
    changeOne()
    const changed = changeOne()
    told('saved while writing')
    const {save, first} = await whileWriting(root)
    told('in a browser')
    const day = new Date().toISOString().slice(0, 10)
    const portfolio = await portfolioMs(join(root, '_site'))
    return {builds, day, bare, anew, anewWithoutPdfs, kept, changed, save, first, portfolioMs: portfolio}
  } finally {
    rmSync(root, {recursive: true, force: true})
  }
}

/** Ran before a command: on its way out it says what it took. */
const says = `process.on('exit', () => {
  const {userCPUTime, systemCPUTime, maxRSS} = process.resourceUsage()
  require('node:fs').writeFileSync(process.env.TOOK, JSON.stringify([userCPUTime + systemCPUTime, maxRSS]))
})`
const withCost = [
  '--import',
  `data:text/javascript,${encodeURIComponent(`import {createRequire} from 'node:module'; const require = createRequire(${JSON.stringify(pathToFileURL(resolve('package.json')).href)}); ${says}`)}`,
]

function run(cwd: string, words: readonly string[]): Took {
  const file = join(cwd, 'took.json')
  const started = performance.now()
  const {status, stderr} = spawnSync(process.execPath, [...withCost, ...words], {
    cwd,
    encoding: 'utf8',
    env: {...process.env, TOOK: file},
    maxBuffer: 1e9,
  })
  if (status !== 0) throw new Error(`${words[0]} failed: ${stderr.slice(0, 2000)}`)
  const waited = (performance.now() - started) / 1000
  const [micros, kilobytes] = JSON.parse(readFileSync(file, 'utf8')) as [number, number]
  return {seconds: micros / 1e6, waited, megabytes: kilobytes / 1024}
}

/** Save a build several times while each of the two follows, and take the middle of the times; the first apart. */
async function whileWriting(root: string): Promise<Required<Pick<SiteFigures, 'save' | 'first'>>> {
  const bare = await follow(root, [...bareEleventy, '--watch', '--incremental', ...asMarkdown], () => {
    const page = join(root, 'bare', saved, 'index.html')
    return existsSync(page) ? readFileSync(page, 'utf8') : ''
  })
  // A page is asked for as a browser does it, once the server has said where.
  const own = await follow(root, compiled('start'), async (said) => {
    const [home] = /http:\/\/localhost:\d+\//.exec(said) ?? []
    return home ? (await fetch(`${home}builds/${saved}/`)).text() : ''
  })
  return {
    save: {bareMs: bare.ms, ms: own.ms, megabytes: own.megabytes},
    first: {bareMs: bare.firstMs, ms: own.firstMs},
  }
}

async function follow(
  root: string,
  words: readonly string[],
  page: (said: string) => string | Promise<string>,
): Promise<{firstMs: number; ms: number; megabytes: number}> {
  const file = join(root, 'took.json')
  const env = {...process.env, TOOK: file}
  const times: number[] = []
  let from = performance.now()
  const child = spawn(process.execPath, [...withCost, ...words], {
    cwd: root,
    env,
    stdio: ['ignore', 'pipe', 'ignore'],
  })
  let said = ''
  child.stdout.on('data', (data: Buffer) => {
    said += data
  })
  for (let at = 0; at < 6; at++) {
    const marker = `Saved ${at} at ${Date.now()}.`
    if (at > 0) from = performance.now()
    const save = () => appendFileSync(join(root, `builds/${saved}.md`), `\n${marker}\n`)
    save()
    await until(async () => (await page(said)).includes(marker), child, save)
    times.push(performance.now() - from)
    await pause(1500)
  }
  const ended = once(child, 'exit')
  child.kill('SIGINT')
  await ended
  const [, kilobytes = 0] = existsSync(file) ? (JSON.parse(readFileSync(file, 'utf8')) as number[]) : []
  const [firstMs = 0, ...others] = times
  return {firstMs, ms: middle(others), megabytes: kilobytes / 1024}
}

/** A save that came before somebody watched is made again after this, ms. */
const missedMs = 20_000

async function until(isSo: () => Promise<boolean>, child: ChildProcess, again: () => void): Promise<void> {
  let from = performance.now()
  while (!(await isSo())) {
    if (performance.now() - from > missedMs) {
      again()
      from = performance.now()
    }
    if (child.exitCode !== null) throw new Error(`${child.spawnargs.at(-1)} ended with ${child.exitCode}`)
    await pause(5)
  }
}

const middle = (times: readonly number[]) => [...times].sort((a, b) => a - b)[times.length >> 1]!

/** Open the portfolio several times, with nothing kept, and take the middle of the times. */
async function portfolioMs(site: string): Promise<number> {
  const {home, close} = await serveSite(site, 8300, '/')
  const browser = await openBrowser()
  try {
    const times: number[] = []
    for (let at = 0; at < 5; at++) {
      const context = await browser.newContext()
      const page = await context.newPage()
      const from = performance.now()
      await page.goto(home)
      await page.locator('.controls [name=words]').fill('oak')
      await page.waitForFunction(() => document.querySelector('.controls [role=status]')?.textContent)
      times.push(performance.now() - from)
      await context.close()
    }
    return middle(times)
  } finally {
    await browser.close()
    close()
  }
}

function measuresOf({
  builds,
  day,
  bare,
  anew,
  anewWithoutPdfs,
  kept,
  changed,
  save,
  first,
  portfolioMs: portfolio,
}: SiteFigures): Measure[] {
  const against = (name: string, took: Took): Measure => ({
    name: `${builds} builds, ${name}`,
    ratio: took.seconds / bare.seconds,
    detail: `${took.seconds.toFixed(1)} s of processor time against ${bare.seconds.toFixed(1)} s of a bare Eleventy; ${took.waited.toFixed(1)} s by the clock, at most ${took.megabytes.toFixed(0)} MB`,
  })
  return [
    against(`made anew (measured on ${day})`, anew),
    against('made anew without PDFs', anewWithoutPdfs),
    against('nothing changed', kept),
    against('one changed', changed),
    {
      name: `${builds} builds, from save to page, while others are still being made`,
      ratio: save.ms / save.bareMs,
      detail: `${save.ms.toFixed(0)} ms against ${save.bareMs.toFixed(0)} ms of a bare Eleventy that only makes what changed; at most ${save.megabytes.toFixed(0)} MB`,
    },
    ...(first
      ? [
          {
            name: `${builds} builds, first start after a build until the page asked for is shown`,
            ratio: first.ms / first.bareMs,
            detail: `${first.ms.toFixed(0)} ms against ${first.bareMs.toFixed(0)} ms of a bare Eleventy that makes all first`,
          },
        ]
      : []),
    {
      name: `${builds} builds, the portfolio until its controls answer, against a second`,
      ratio: portfolio / 1000,
      detail: `${portfolio.toFixed(0)} ms in a browser`,
    },
  ]
}

/** How much more a build costs in the largest journal than in the smallest, where little changed. */
function growth(all: readonly SiteFigures[]): Measure[] {
  const [least, most] = [all[0], all.at(-1)]
  if (!least || !most || least === most) return []
  const among = (what: string, name: 'kept' | 'changed'): Measure => {
    const [first, last] = [least, most].map((one) => (one[name].seconds / one.builds) * 1000) as [
      number,
      number,
    ]
    return {
      name: `a build more, ${what}, among ${most.builds} against among ${least.builds}`,
      ratio: last / first,
      detail: `${last.toFixed(1)} ms against ${first.toFixed(1)} ms of processor time`,
    }
  }
  return [among('nothing changed', 'kept'), among('one changed', 'changed')]
}
