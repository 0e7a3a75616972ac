import {rm} from 'node:fs/promises'
import {join} from 'node:path'
import {type Assets, buildAssets} from '../assets/build-assets.ts'
import type {FileProblems} from '../commands/report.ts'
import {makeSite} from '../make/make-site.ts'
import {allPages} from '../pages/all.ts'
import {fileOf} from '../publish/file-of.ts'
import {writeSite} from '../publish/write-site.ts'
import {openWorkshop, type Workshop} from '../work/workshop.ts'

/** The site as it is while somebody writes: written whole once, then kept up with the journal. */
export class WritingSession {
  readonly #root: string
  readonly #folder: string
  #assets: Promise<Assets> | undefined
  #workshop: Promise<Workshop> | undefined
  /** The key of each page and file that is written. */
  #standing = new Map<string, string>()

  /** `root` is the journal's, `folder` where the site goes; both absolute. */
  constructor(root: string, folder: string) {
    this.#root = root
    this.#folder = folder
  }

  /** Bring the written site up to the journal; answers the addresses that changed, and what is wrong with it. */
  async refresh(): Promise<{changed: string[]; problems: FileProblems[]}> {
    this.#assets ??= buildAssets()
    const assets = await this.#assets
    this.#workshop ??= openWorkshop(this.#root)
    const {works, tidy} = await this.#workshop
    const options = {prefix: '/', isWriting: true, assets: assets.addresses}
    const {site, problems} = await makeSite(this.#root, options, works)
    await tidy()
    const pages = allPages(site)
    const files = [...assets.files, ...site.builds.flatMap((one) => one.files)]
    const isNew = ({address, key}: {address: string; key: string}) => this.#standing.get(address) !== key
    const now = new Map([...pages, ...files].map(({address, key}) => [address, key]))
    const gone = [...this.#standing.keys()].filter((address) => !now.has(address))
    await writeSite({pages: pages.filter(isNew), files: files.filter(isNew)}, site.around, this.#folder)
    await Promise.all(gone.map((address) => rm(join(this.#folder, fileOf(address)), {force: true})))
    const changed = [...[...pages, ...files].filter(isNew).map(({address}) => address), ...gone]
    this.#standing = now
    return {changed, problems}
  }
}
