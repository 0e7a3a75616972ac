import {rm} from 'node:fs/promises'
import {join} from 'node:path'
import type {Cache} from '../cache.ts'
import {cacheOf} from '../journal-cache.ts'
import {makeSite} from '../make/make-site.ts'
import {type Artefact, fileOf, type Page, type Unmade} from '../page.ts'
import {pagesOfBuilds, pagesOfTheJournal} from '../pages/all.ts'
import {type Assets, siteAssets} from '../publish/assets.ts'
import {writeSite} from '../publish/write-site.ts'
import type {FileProblems, Surround} from '../site-data.ts'

/** The site as it is while somebody writes: written whole once, then kept up with the journal. */
export class WritingSession {
  readonly #root: string
  readonly #folder: string
  #assets: Promise<Assets> | undefined
  #cache: Promise<Cache> | undefined
  /** The key of each page and file that is written. */
  readonly #standing = new Map<string, string>()

  /** `root` is the journal's, `folder` where the site goes; both absolute. */
  constructor(root: string, folder: string) {
    this.#root = root
    this.#folder = folder
  }

  /**
   * Bring the written site up to the journal; answers what is wrong with it. `shown` is told the addresses that
   * changed, those of single builds as soon as they are written, before the pages of the whole journal are.
   */
  async refresh(
    shown: (changed: readonly string[]) => void = () => {},
  ): Promise<{problems: FileProblems[]; unmade: readonly Unmade[]}> {
    this.#assets ??= siteAssets()
    this.#cache ??= cacheOf(this.#root)
    const assets = await this.#assets
    const cache = await this.#cache
    const options = {prefix: '/', isWriting: true, assets: assets.addresses}
    const {site, problems} = await makeSite(this.#root, options, cache)
    const unmade: Unmade[] = []
    const own = pagesOfBuilds(site, unmade)
    const files = [...assets.files, ...site.builds.flatMap((one) => one.files)]
    shown(await this.#write({pages: own, files}, site.around, unmade))
    const pages = pagesOfTheJournal(site, own, unmade)
    const changed = await this.#write({pages, files: []}, site.around, unmade)
    shown([...changed, ...(await this.#clear([...own, ...files, ...pages]))])
    await cache.tidy()
    return {problems, unmade}
  }

  /** Write what is not written yet; a page that cannot be written is tried again with the next save. */
  async #write({pages, files}: Written, around: Surround, unmade: Unmade[]): Promise<string[]> {
    const isNew = ({address, key}: Keyed) => this.#standing.get(address) !== key
    const fresh = {pages: pages.filter(isNew), files: files.filter(isNew)}
    const failed = await writeSite(fresh, around, this.#folder)
    unmade.push(...failed)
    const isWritten = ({address}: Keyed) => !failed.some((one) => one.address === address)
    const written: Keyed[] = [...fresh.pages, ...fresh.files].filter(isWritten)
    for (const {address, key} of written) this.#standing.set(address, key)
    return written.map(({address}) => address)
  }

  /** Take away what the journal no longer has. */
  async #clear(now: readonly Keyed[]): Promise<string[]> {
    const there = new Set(now.map(({address}) => address))
    const gone = [...this.#standing.keys()].filter((address) => !there.has(address))
    await Promise.all(gone.map((address) => rm(join(this.#folder, fileOf(address)), {force: true})))
    for (const address of gone) this.#standing.delete(address)
    return gone
  }
}

interface Written {
  pages: readonly Page[]
  files: readonly Artefact[]
}

type Keyed = Pick<Page, 'address' | 'key'>
