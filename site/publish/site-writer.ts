import pMap from 'p-map'
import {together} from '../journal/folder.ts'
import {clearSooner} from '../kit/clear-sooner.ts'
import type {Artefact, Known, Page, Unmade} from '../kit/page.ts'
import type {Surround} from '../kit/site-data.ts'
import {clearOthers, makeRoom} from './spare.ts'
import {isNoted, note, type Standing, takeOver, unknown} from './standing.ts'
import {writeFiles, writePages} from './write-site.ts'

/**
 * So many builds are made, and written before the next are: enough that Eleventy's start counts for little, and none of
 * a thousand is held in memory as a whole.
 */
export const atATime = 16

/** Pages and files that belong together, ready to be written. */
export interface Whole {
  pages: readonly Page[]
  files: readonly Artefact[]
}

/** Pages and files that belong together, known; and what makes them. */
export interface KnownWhole {
  pages: readonly Known[]
  files: readonly Known[]
  whole: () => Promise<Whole>
}

/** What needs no making. */
export const atHand = (whole: Whole): KnownWhole => ({...whole, whole: async () => whole})

/** Writes a site into a folder as its builds are made, but for what stands there or can be taken over. */
export class SiteWriter {
  /** The addresses that were written. */
  readonly written: string[] = []
  /** What could not be made. */
  readonly unmade: Unmade[] = []
  readonly #around: Surround
  readonly #to: Standing
  readonly #from: Standing | undefined
  readonly #wanted = new Set<string>()
  #waiting: KnownWhole[] = []
  /** Files are written while the next builds are made: pictures are drawn beside everything else. */
  #behind: Promise<void> = Promise.resolve()

  /**
   * `to` is where the site goes, and what of it stands there; `from` is its last version, which is taken over: then what
   * stands may have a second name there, and no other files are in the site than those written.
   */
  constructor(around: Surround, to: Standing, from?: Standing) {
    this.#around = around
    this.#to = to
    this.#from = from
  }

  /** Write pages and files, now or together with those that come. */
  async write(some: readonly KnownWhole[]): Promise<void> {
    this.#waiting.push(...some.filter((one) => this.#missing([...one.pages, ...one.files]).length > 0))
    if (this.#waiting.length < atATime) return
    clearSooner()
    await this.#writeWaiting()
  }

  /** Write what waits, and see that all is written. */
  async end(): Promise<void> {
    await this.#writeWaiting()
    await this.#behind
    if (this.#from) clearOthers(this.#to, this.#wanted)
  }

  /** Take over what can be, and list the rest that does not stand. */
  #missing(known: readonly Known[]): readonly Known[] {
    const missing = known.filter((one) => this.#isMissing(one))
    if (!this.#from) return missing
    for (const {address} of known) this.#wanted.add(address)
    for (const {address} of missing) makeRoom(this.#to, address)
    return takeOver(this.#from, this.#to, missing)
  }

  #isMissing(one: Known): boolean {
    return !isNoted(this.#to, one)
  }

  async #writeWaiting(): Promise<void> {
    const all = await pMap(this.#waiting, (one) => one.whole(), together)
    this.#waiting = []
    const isMissing = (one: Known) => this.#isMissing(one)
    const pages = all.flatMap((one) => one.pages.filter(isMissing))
    const files = all.flatMap((one) => one.files.filter(isMissing))
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
