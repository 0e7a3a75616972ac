import {existsSync} from 'node:fs'
import {mkdir, rm} from 'node:fs/promises'
import {join} from 'node:path'
import {settingsFiles} from '../journal/settings.ts'
import type {Cache} from '../kit/cache.ts'
import {cacheOf} from '../kit/journal-cache.ts'
import {fileOf, type Known, type Unmade} from '../kit/page.ts'
import type {FileProblems} from '../kit/site-data.ts'
import {journalPages} from '../make/journal-pages.ts'
import {makeSite} from '../make/make-site.ts'
import {ownPages} from '../make/own-pages.ts'
import {type PlannedSite, planSite} from '../make/plan-site.ts'
import {siteAssets} from '../publish/assets.ts'
import type {Assets} from '../publish/build-assets.ts'
import {atHand, SiteWriter} from '../publish/site-writer.ts'
import type {Standing} from '../publish/standing.ts'

/** What is wrong with a journal, and what could not be made of it. */
interface Refreshed {
  problems: FileProblems[]
  unmade: readonly Unmade[]
}

type Shown = (changed: readonly string[]) => void

/** So many builds changed at once are shown one by one before all else; of more the whole journal is. */
const mostAhead = 4

/** So often the whole journal waits for somebody who goes on writing. */
const mostPutOff = 4

/** Thrown where a look at the whole journal gives way to a later one. */
const putOff = new Error('more was written meanwhile')

/** The site as it is while somebody writes: written whole once, then kept up with the journal. */
export class WritingSession {
  readonly #root: string
  #assets: Promise<Assets> | undefined
  #cache: Promise<Cache> | undefined
  readonly #standing: Standing
  #last: Promise<unknown> = Promise.resolve()
  /** The journal as it was planned last. */
  #planned: PlannedSite | undefined
  #waiting = 0
  #timesPutOff = 0

  /** `root` (absolute) is the journal's; `standing` is where the site goes, and what of it stands there. */
  constructor(root: string, standing: Standing) {
    this.#root = root
    this.#standing = standing
  }

  /**
   * Bring the written site up to the journal, of which the files `changed` (paths in `builds/`) are known to be other than
   * they were; answers what is wrong with it, and nothing where a later call does. `shown` is told the addresses that
   * changed: first those of the builds that changed, then of others, then of the whole journal, as they are written.
   */
  refresh(shown: Shown = () => {}, changed: readonly string[] = []): Promise<Refreshed | undefined> {
    this.#waiting += 1
    // One after the other: two at once would write the same pages, and both all of them.
    const next = this.#last.then(() => this.#refresh(shown, changed))
    this.#last = next.catch(() => {})
    return next
  }

  async #refresh(shown: Shown, changed: readonly string[]): Promise<Refreshed | undefined> {
    this.#waiting -= 1
    await this.#standAgain()
    await this.#showAhead(shown, changed)
    try {
      const refreshed = await this.#refreshAll(shown)
      this.#timesPutOff = 0
      return refreshed
    } catch (error) {
      if (error !== putOff) throw error
      this.#timesPutOff += 1
      return undefined
    }
  }

  /** Show the pages of builds that changed, as they will be if nothing else did: whoever writes waits for no others. */
  async #showAhead(shown: Shown, changed: readonly string[]): Promise<void> {
    const planned = this.#planned
    if (!planned || changed.some((path) => settingsFiles.includes(path))) return
    const files = changed.filter((path) => /^[^/]+(\/index)?\.md$/.test(path))
    if (files.length > mostAhead) return
    for (const path of files) {
      const found = await planned.again(`builds/${path}`)
      if (!found) continue
      const writer = new SiteWriter(found.all.around, this.#standing)
      await writer.write([await ownPages(found.one, found.all)])
      await writer.end()
      if (writer.written.length > 0) shown(writer.written)
    }
  }

  async #refreshAll(shown: Shown): Promise<Refreshed> {
    this.#assets ??= siteAssets()
    this.#cache ??= cacheOf(this.#root)
    const assets = await this.#assets
    const cache = await this.#cache
    const options = {prefix: '/', isWriting: true, assets: assets.addresses}
    const giveWay = () => {
      if (this.#waiting > 0 && this.#planned && this.#timesPutOff < mostPutOff) throw putOff
    }
    const planned = await planSite(this.#root, options, cache, giveWay)
    // Until all of it stands once, nothing is shown ahead of the rest, and it gives way to nothing.
    this.#planned &&= planned
    const {around} = planned.all
    const builds = new SiteWriter(around, this.#standing)
    const {site, own, problems} = await makeSite(planned, builds, giveWay).finally(async () => {
      // What is under way is written in any case.
      await builds.end()
      shown(builds.written)
    })
    const pages = own.flatMap((one) => one.pages)
    const shared = await journalPages(site, pages, cache)
    const others = [...shared.pages, atHand({pages: [], files: assets.files})]
    const journal = new SiteWriter(around, this.#standing)
    await journal.write(others)
    await journal.end()
    const unmade = [...own, builds, shared, journal].flatMap((one) => one.unmade)
    const there = [...own, ...others].flatMap(({pages, files}) => [...pages, ...files])
    shown([...journal.written, ...(await this.#clear(there))])
    await cache.tidy()
    this.#planned = planned
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
