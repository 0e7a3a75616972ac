import {existsSync} from 'node:fs'
import {mkdir} from 'node:fs/promises'
import type {Cache} from '../kit/cache.ts'
import {cacheOf} from '../kit/journal-cache.ts'
import type {Unmade} from '../kit/page.ts'
import type {FileProblems, Surround} from '../kit/site-data.ts'
import {journalPages} from '../make/journal-pages.ts'
import {withFaults} from '../make/make-site.ts'
import {type PlannedSite, planSite, surround} from '../make/plan-site.ts'
import type {Progress} from '../make/progress.ts'
import {siteAssets} from '../publish/assets.ts'
import type {Assets} from '../publish/build-assets.ts'
import {atHand, SiteWriter} from '../publish/site-writer.ts'
import type {Standing} from '../publish/standing.ts'
import {BuildsInTurn} from './builds-in-turn.ts'
import {Stage} from './stage.ts'
import {slugOf, takeAway} from './take-away.ts'

/** What is wrong with a journal, and what could not be made of it. */
export interface Refreshed {
  problems: FileProblems[]
  unmade: readonly Unmade[]
}

/** Who follows how far the site is. */
interface Follower {
  /** Hears how far the work is. */
  told?: Progress
  /** Hears what is wrong with the journal once its pages show it, before the last of the builds are made. */
  found?: (what: Refreshed) => void
}

type Shown = (changed: readonly string[]) => void

/** So many builds changed at once are shown one by one before all else; of more the whole journal is. */
const mostAhead = 4

/** For so many builds that are to be made the pages of the whole journal wait. */
const mostBefore = 32

/** So often the pages of the whole journal wait for somebody who goes on writing. */
const mostPutOff = 4

const whileWriting = {prefix: '/', isWriting: true}

/** Thrown where a look at the whole journal gives way to a later one. */
const putOff = new Error('more was written meanwhile')

/** The site as it is while somebody writes: kept up with the journal, and made as it is asked for. */
export class WritingSession {
  readonly #root: string
  readonly #follower: Follower
  readonly #soon: number
  readonly #assets: Promise<Assets> = siteAssets()
  /** The addresses of style sheet, scripts and fonts, once they stand. */
  #assetsStand: Promise<ReadonlySet<string>> | undefined
  #cache: Promise<Cache> | undefined
  readonly #standing: Standing
  #last: Promise<unknown> = Promise.resolve()
  #stage = new Stage()
  #shown: Shown = () => {}
  /** The journal as it was planned last, and its builds. */
  #planned: PlannedSite | undefined
  #turns: BuildsInTurn | undefined
  #waiting = 0
  #timesPutOff = 0

  /**
   * `root` (absolute) is the journal's; `standing` is where the site goes, and what of it stands there; `soon`, for how many
   * builds the pages of the whole journal wait.
   */
  constructor(root: string, standing: Standing, follower: Follower = {}, soon: number = mostBefore) {
    this.#root = root
    this.#standing = standing
    this.#follower = follower
    this.#soon = soon
  }

  /** What a page is framed with: as the journal's settings were read last. */
  async around(): Promise<Surround> {
    const {addresses: assets} = await this.#assets
    return this.#planned?.around.around ?? surround({}, {...whileWriting, assets})
  }

  /** The names and titles of all builds, once they are known. */
  get titles(): readonly {slug: string; title: string}[] {
    return (this.#planned?.shown ?? []).map(({slug, build}) => ({
      slug,
      title: build.values.title?.value ?? slug,
    }))
  }

  /**
   * Bring the written site up to the journal, of which the files `changed` (paths in `builds/`) are known to be other than
   * they were; answers what is wrong with it, and nothing where a later call does. `shown` is told the addresses that
   * changed, as they are written: first those of the builds that changed; then of few others and of the whole journal; or
   * of many others last.
   */
  refresh(shown: Shown = () => {}, changed: readonly string[] = []): Promise<Refreshed | undefined> {
    this.#waiting += 1
    const stage = new Stage(changed)
    this.#stage = stage
    // One after the other: two at once would write the same pages, and both all of them.
    const next = this.#last
      .then(() => this.#refresh(shown, changed, stage))
      .finally(() => stage.showJournal())
    this.#last = next.catch(() => {})
    return next
  }

  /** Wait until what is shown at an address is as the journal is now; a build that is asked for is made before others. */
  async ready(address: string): Promise<void> {
    const slug = slugOf(address)
    if ((await this.#assetsStand)?.has(address)) return
    let stage: Stage
    do {
      stage = this.#stage
      if (slug === undefined) await stage.journal
      else if (!stage.areBuildsReady) await Promise.race([stage.builds, this.#asAlone(slug, stage)])
    } while (stage !== this.#stage)
    // Where it cannot be written, what stands is shown; that it cannot is told with all the others.
    if (slug !== undefined) await this.#turns?.asked(slug).catch(() => {})
  }

  /** While the whole journal is looked at, show a build as it is if nothing else changed; one that cannot be so waits. */
  async #asAlone(slug: string, stage: Stage): Promise<void> {
    const file = this.#planned?.shown.find((one) => one.slug === slug)?.file
    if (file === undefined || !stage.isOfBuilds || !(await this.#showAgain(file).catch(() => false)))
      await stage.builds
  }

  /** Plan one build (its file) again, with all else as it was, and show it; answers whether that could be done. */
  async #showAgain(file: string): Promise<boolean> {
    const turns = this.#turns
    const found = await this.#planned?.again(file)
    // Once all is planned anew, it is asked for there.
    if (found && turns === this.#turns) await turns?.askedAnew(found.one, found.all)
    return found !== undefined
  }

  async #refresh(shown: Shown, changed: readonly string[], stage: Stage): Promise<Refreshed | undefined> {
    this.#waiting -= 1
    this.#shown = shown
    await this.#standAgain()
    this.#assetsStand = this.#showAssets()
    await this.#assetsStand
    if (stage.isOfBuilds && (await this.#showAhead(changed))) stage.showBuilds()
    try {
      return await this.#refreshAll(stage)
    } catch (error) {
      if (error !== putOff) throw error
      this.#timesPutOff += 1
      return undefined
    }
  }

  /**
   * Show the pages of builds that changed, as they will be if nothing else did: whoever writes waits for no others.
   * Answers whether that is all that changed.
   */
  async #showAhead(changed: readonly string[]): Promise<boolean> {
    if (!this.#planned) return false
    const files = changed.filter((path) => /^[^/]+(\/index)?\.md$/.test(path))
    if (files.length > mostAhead) return false
    let isAll = files.length === changed.length
    for (const path of files) if (!(await this.#showAgain(`builds/${path}`))) isAll = false
    return isAll
  }

  async #refreshAll(stage: Stage): Promise<Refreshed> {
    const {told = () => {}, found = () => {}} = this.#follower
    const giveWay = () => {
      if (this.#waiting > 0 && this.#planned && this.#timesPutOff < mostPutOff) throw putOff
    }
    const planned = await this.#plan(giveWay)
    const shown: Shown = (changed) => this.#shown(changed)
    const turns = new BuildsInTurn(planned, {standing: this.#standing, shown, earlier: this.#turns})
    this.#planned = planned
    this.#turns = turns
    stage.showBuilds()
    const {unseen, due} = await turns.look(giveWay)
    await turns.clear()
    const isSoon = due.length <= this.#soon
    const next = (done: number, of: number) => {
      // What is made is kept: whoever goes on writing puts off no more than the rest.
      if (this.#waiting > 0 && !isSoon) throw putOff
      giveWay()
      told('Making', done, of)
    }
    await turns.make(isSoon ? due : unseen, next)
    await turns.quiet()
    const first = await this.#showJournal(planned, turns)
    stage.showJournal()
    this.#timesPutOff = 0
    found(first)
    const late = isSoon ? [] : due.filter((slug) => !unseen.includes(slug))
    await turns.make(late, next)
    const all = late.length > 0 ? await this.#showJournal(planned, turns) : first
    if (all !== first) found(all)
    await (await this.#cache)?.tidy()
    return all
  }

  async #plan(giveWay: () => void): Promise<PlannedSite> {
    this.#cache ??= cacheOf(this.#root)
    const {addresses: assets} = await this.#assets
    return planSite(this.#root, {...whileWriting, assets}, await this.#cache, (...how) => {
      giveWay()
      this.#follower.told?.(...how)
    })
  }

  /** Write what every page is shown with: whoever sees the first page waits for no other. Answers its addresses. */
  async #showAssets(): Promise<ReadonlySet<string>> {
    const {files} = await this.#assets
    const writer = new SiteWriter(await this.around(), this.#standing)
    await writer.write([atHand({pages: [], files})])
    await writer.end()
    if (writer.written.length > 0) this.#shown(writer.written)
    return new Set(files.map(({address}) => address))
  }

  /** Write the pages of the whole journal, and take away those that it no longer has. */
  async #showJournal({around, problems}: PlannedSite, turns: BuildsInTurn): Promise<Refreshed> {
    const {seen, own} = turns
    const site = {...around, builds: seen.map(({one}) => one)}
    const pages = seen.flatMap((one) => one.pages)
    const shared = await journalPages(site, pages, await this.#cache!)
    const others = [...shared.pages, atHand({pages: [], files: (await this.#assets).files})]
    const writer = new SiteWriter(around.around, this.#standing)
    await writer.write(others)
    await writer.end()
    const there = new Set(others.flatMap((one) => [...one.pages, ...one.files]).map(({address}) => address))
    const gone = Object.keys(this.#standing.files).filter(
      (address) => slugOf(address) === undefined && !there.has(address),
    )
    this.#shown([...writer.written, ...(await takeAway(this.#standing, gone))])
    const unmade = [...own, turns, shared, writer].flatMap((one) => one.unmade)
    return {problems: withFaults(problems, own), unmade}
  }

  /** What somebody cleared away is written anew. */
  async #standAgain(): Promise<void> {
    if (existsSync(this.#standing.folder)) return
    await mkdir(this.#standing.folder, {recursive: true})
    this.#standing.files = {}
  }
}
