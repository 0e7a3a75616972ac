import pMap from 'p-map'
import {together} from '../journal/folder.ts'
import type {OwnPages, Whole} from '../make/own-pages.ts'
import type {Known, Unmade} from '../page.ts'
import type {Surround} from '../site-data.ts'
import {note, type Standing, takeOver, unknown} from './standing.ts'
import {writeFiles, writePages} from './write-site.ts'

/** So many builds are written at a time: enough that Eleventy's start counts for little, and few enough for memory. */
const atATime = 32

/** Writes a site into a folder as its builds are made, but for what stands there or can be taken over. */
export class SiteWriter {
  /** The addresses that were written. */
  readonly written: string[] = []
  /** What could not be made. */
  readonly unmade: Unmade[] = []
  readonly #around: Surround
  readonly #to: Standing
  readonly #from: Standing | undefined
  #waiting: OwnPages[] = []
  /** Files are written while the next builds are made: pictures are drawn beside everything else. */
  #behind: Promise<void> = Promise.resolve()

  /** `to` is where the site goes, and what of it stands there; `from` is its last version, which is taken over. */
  constructor(around: Surround, to: Standing, from?: Standing) {
    this.#around = around
    this.#to = to
    this.#from = from
  }

  /** Write the pages and files of some builds, now or together with those that come. */
  async write(some: readonly OwnPages[]): Promise<void> {
    this.#waiting.push(...some.filter((one) => this.#missing([...one.pages, ...one.files]).length > 0))
    if (this.#waiting.length >= atATime) await this.#writeWaiting([])
  }

  /** Write what waits, and what is of the whole journal. */
  async end(shared: Whole): Promise<void> {
    this.#missing([...shared.pages, ...shared.files])
    await this.#writeWaiting([shared])
    await this.#behind
  }

  /** Take over what can be, and list the rest that does not stand. */
  #missing(known: readonly Known[]): readonly Known[] {
    const missing = known.filter((one) => this.#isMissing(one))
    return this.#from ? takeOver(this.#from, this.#to, missing) : missing
  }

  #isMissing({address, key}: Known): boolean {
    return this.#to.files[address]?.[0] !== key
  }

  async #writeWaiting(shared: readonly Whole[]): Promise<void> {
    const own = await pMap(this.#waiting, (one) => one.whole(), together)
    this.#waiting = []
    const isMissing = (one: Known) => this.#isMissing(one)
    const pages = [...own, ...shared].flatMap((one) => one.pages.filter(isMissing))
    const files = [...own, ...shared].flatMap((one) => one.files.filter(isMissing))
    await this.#behind
    // Whatever stops this leaves files that are neither the old ones nor the new.
    for (const {address} of [...pages, ...files]) this.#to.files[address] = unknown
    this.#note(pages, await writePages(pages, this.#around, this.#to.folder))
    this.#behind = writeFiles(files, this.#to.folder).then((failed) => this.#note(files, failed))
    // It is thrown where it is waited for.
    this.#behind.catch(() => {})
  }

  #note(all: readonly Known[], failed: readonly Unmade[]): void {
    const isFailed = new Set(failed.map(({address}) => address))
    const written = all.filter(({address}) => !isFailed.has(address))
    for (const one of written) note(this.#to, one)
    this.unmade.push(...failed)
    this.written.push(...written.map(({address}) => address))
  }
}
