import {existsSync} from 'node:fs'
import {mkdir, rm} from 'node:fs/promises'
import {join} from 'node:path'
import type {Cache} from '../kit/cache.ts'
import {cacheOf} from '../kit/journal-cache.ts'
import {fileOf, type Known, type Unmade} from '../kit/page.ts'
import type {FileProblems} from '../kit/site-data.ts'
import {journalPages} from '../make/journal-pages.ts'
import {makeSite} from '../make/make-site.ts'
import {planSite} from '../make/plan-site.ts'
import {type Assets, siteAssets} from '../publish/assets.ts'
import {atHand, SiteWriter} from '../publish/site-writer.ts'
import type {Standing} from '../publish/standing.ts'

/** What is wrong with a journal, and what could not be made of it. */
interface Refreshed {
  problems: FileProblems[]
  unmade: readonly Unmade[]
}

/** The site as it is while somebody writes: written whole once, then kept up with the journal. */
export class WritingSession {
  readonly #root: string
  #assets: Promise<Assets> | undefined
  #cache: Promise<Cache> | undefined
  readonly #standing: Standing
  #last: Promise<unknown> = Promise.resolve()

  /** `root` (absolute) is the journal's; `standing` is where the site goes, and what of it stands there. */
  constructor(root: string, standing: Standing) {
    this.#root = root
    this.#standing = standing
  }

  /**
   * Bring the written site up to the journal; answers what is wrong with it. `shown` is told the addresses that
   * changed, those of single builds as soon as they are written, before the pages of the whole journal are.
   */
  refresh(shown: (changed: readonly string[]) => void = () => {}): Promise<Refreshed> {
    // One after the other: two at once would write the same pages, and both all of them.
    const next = this.#last.then(() => this.#refresh(shown))
    this.#last = next.catch(() => {})
    return next
  }

  async #refresh(shown: (changed: readonly string[]) => void): Promise<Refreshed> {
    this.#assets ??= siteAssets()
    this.#cache ??= cacheOf(this.#root)
    const assets = await this.#assets
    const cache = await this.#cache
    const options = {prefix: '/', isWriting: true, assets: assets.addresses}
    const planned = await planSite(this.#root, options, cache)
    const {around} = planned.all
    await this.#standAgain()
    const builds = new SiteWriter(around, this.#standing)
    const {site, own, problems} = await makeSite(planned, builds)
    await builds.end()
    shown(builds.written)
    const ownPages = own.flatMap((one) => one.pages)
    const shared = await journalPages(site, ownPages, cache)
    const others = [...shared.pages, atHand({pages: [], files: assets.files})]
    const journal = new SiteWriter(around, this.#standing)
    await journal.write(others)
    await journal.end()
    const unmade = [...own, builds, shared, journal].flatMap((one) => one.unmade)
    const there = [...own, ...others].flatMap(({pages, files}) => [...pages, ...files])
    shown([...journal.written, ...(await this.#clear(there))])
    await cache.tidy()
    return {problems, unmade}
  }

  /** What somebody cleared away is written anew. */
  async #standAgain(): Promise<void> {
    if (existsSync(this.#standing.folder)) return
    await mkdir(this.#standing.folder, {recursive: true})
    this.#standing.files = {}
  }

  /** Take away what the journal no longer has. */
  async #clear(now: readonly Known[]): Promise<string[]> {
    const there = new Set(now.map(({address}) => address))
    const {folder, files} = this.#standing
    const gone = Object.keys(files).filter((address) => !there.has(address))
    await Promise.all(gone.map((address) => rm(join(folder, fileOf(address)), {force: true})))
    for (const address of gone) delete files[address]
    return gone
  }
}
