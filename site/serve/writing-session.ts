import {existsSync} from 'node:fs'
import {mkdir} from 'node:fs/promises'
import {hasOwnFolder} from '../journal/folder.ts'
import type {PlannedBuild} from '../journal/read-journal.ts'
import {breathe} from '../kit/breathe.ts'
import type {Cache} from '../kit/cache.ts'
import {cacheOf} from '../kit/journal-cache.ts'
import type {Unmade} from '../kit/page.ts'
import type {FileProblems, Surround} from '../kit/site-data.ts'
import {journalPages} from '../make/journal-pages.ts'
import {named} from '../make/kin.ts'
import {withFaults} from '../make/make-site.ts'
import {type Again, type PlannedSite, planSite, type SiteOptions, surround} from '../make/plan-site.ts'
import type {Progress} from '../make/progress.ts'
import {type SiteAsKnown, siteAsKnown} from '../make/site-as-known.ts'
import {siteAssets} from '../publish/assets.ts'
import type {Assets} from '../publish/build-assets.ts'
import {atHand, SiteWriter} from '../publish/site-writer.ts'
import type {Standing} from '../publish/standing.ts'
import {BuildsInTurn, type Told} from './builds-in-turn.ts'
import {type ShownAlone, Stage} from './stage.ts'
import {slugOf} from './take-away.ts'

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

/** So many builds changed at once are shown one by one before all else; of more the whole journal is. */
const mostAhead = 4

/** For so many builds that are to be made the pages of the whole journal wait. */
const mostBefore = 32

/** So often the pages of the whole journal wait for somebody who goes on writing. */
const mostPutOff = 4

/** After so many changes that were followed one by one the whole journal is read again. */
const mostFollowed = 50

const whileWriting = {prefix: '/', isWriting: true}

/** Thrown where a look at the whole journal gives way to a later one. */
const putOff = new Error('more was written meanwhile')

/** Tell whether a path in `builds/` is a build's own file, or of the folder that no other build has. */
const isOf = ({file}: {file: string}, path: string): boolean =>
  file === `builds/${path}` ||
  (hasOwnFolder({file}) && `builds/${path}/`.startsWith(file.replace(/index\.md$/, '')))

/** The site as it is while somebody writes: kept up with the journal, and made as it is asked for. */
export class WritingSession {
  readonly #root: string
  readonly #follower: Follower
  readonly #most: number
  readonly #assets: Promise<Assets> = siteAssets()
  /** The addresses of style sheet, scripts and fonts, once they stand. */
  #assetsStand: Promise<ReadonlySet<string>> | undefined
  #cache: Promise<Cache> | undefined
  readonly #standing: Standing
  #last: Promise<unknown> = Promise.resolve()
  #stage = new Stage()
  #isWhole = false
  #shown: Told = () => {}
  /** The journal as it is known before it is planned. */
  #asKnown: Promise<SiteAsKnown | undefined> | undefined
  /** The journal as it was planned last, and its builds. */
  #planned: PlannedSite | undefined
  #turns: BuildsInTurn | undefined
  /** More changed than was followed. */
  #isBehind = false
  /** Changes that were followed since all was read. */
  #followed = 0
  #waiting = 0
  #timesPutOff = 0
  /** Builds that somebody waits for, and that are planned for that. */
  readonly #soon = new Set<Promise<unknown>>()
  #begun = 0
  /** Of each build that was shown by itself, when that was begun. */
  readonly #shownSince = new Map<string, number>()

  /**
   * `root` (absolute) is the journal's; `standing` is where the site goes, and what of it stands there; `most`, for how many
   * builds the pages of the whole journal wait.
   */
  constructor(root: string, standing: Standing, follower: Follower = {}, most: number = mostBefore) {
    this.#root = root
    this.#standing = standing
    this.#follower = follower
    this.#most = most
  }

  /** What stands is the whole site of the journal as its changes were told. */
  get isWhole(): boolean {
    return this.#isWhole
  }

  /** What a page is framed with: as the journal's settings were read last. */
  async around(): Promise<Surround> {
    return this.#planned?.around.around ?? surround({}, await this.#options())
  }

  /** The names and titles of all builds, as far as they are known. */
  async titles(): Promise<readonly {slug: string; title: string}[]> {
    return this.#planned?.shown.map(named) ?? (await this.#asKnown)?.shown ?? []
  }

  /**
   * Bring the written site up to the journal, of which the files `changed` (paths in `builds/`) are known to be other than
   * they were; answers what is wrong with it, and nothing where a later call does. `shown` is told the addresses that
   * changed, as they are written: first those of the builds that changed; then of few others and of the whole journal; or
   * of many others last. Where all `isAsLeft` by whoever wrote last, nobody waits for what stands.
   */
  refresh(
    shown: Told = () => {},
    changed: readonly string[] = [],
    isAsLeft = false,
  ): Promise<Refreshed | undefined> {
    this.#waiting += 1
    const stage = new Stage(changed)
    if (isAsLeft) stage.showJournal()
    this.#isWhole = isAsLeft
    this.#stage = stage
    this.#shown = shown
    this.#asKnown ??= this.#recall().catch(() => undefined)
    // Whoever writes waits for nothing that is under way.
    void this.#ahead(changed).then(({slugs}) => slugs.map((slug) => this.#showOnce(slug, stage)))
    // One after the other: two at once would write the same pages, and both all of them.
    const next = this.#last.then(() => this.#refresh(changed, stage)).finally(() => stage.showJournal())
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
    if (!stage.isOfBuilds || !(await this.#showOnce(slug, stage))) await stage.builds
  }

  /** Show a build as it was saved last; whoever asks for it at the same stage shares that. */
  #showOnce(slug: string, stage: Stage): Promise<ShownAlone | undefined> {
    const begun = stage.shown.get(slug) ?? this.#showAgain(slug).catch(() => undefined)
    stage.shown.set(slug, begun)
    this.#soon.add(begun)
    return begun.finally(() => this.#soon.delete(begun))
  }

  /** Plan one build again with all else as it was, and show it, unless somebody did so who began later. */
  async #showAgain(slug: string): Promise<ShownAlone | undefined> {
    const [from, begun] = [this.#planned, ++this.#begun]
    const again = await (from ?? (await this.#asKnown))?.again(slug)
    if (!again) return undefined
    const found = {from, ...again}
    if (begun < (this.#shownSince.get(slug) ?? 0)) return found
    this.#shownSince.set(slug, begun)
    // Once all is planned anew, it is asked for there.
    if (from !== this.#planned) return found
    if (!from) this.#turns = this.#turnsOf({shown: [found.one], all: found.all})
    await this.#turns?.askedAnew(found.one, found.all)
    return found
  }

  async #refresh(changed: readonly string[], stage: Stage): Promise<Refreshed | undefined> {
    this.#waiting -= 1
    await this.#standAgain()
    this.#assetsStand = this.#showAssets()
    await this.#assetsStand
    const {isShown, isWhole} = await this.#follow(changed, stage)
    if (isShown) stage.showBuilds()
    this.#isBehind ||= !isWhole
    this.#followed += 1
    try {
      const all = await this.#refreshAll(stage)
      if (this.#followed <= mostFollowed) return all
      // What is followed is shown: nobody waits for this.
      this.#isBehind = true
      return await this.#refreshAll(stage)
    } catch (error) {
      this.#isWhole = false
      if (error !== putOff) throw error
      this.#timesPutOff += 1
      return undefined
    }
  }

  /** The builds (slugs) to show before all else where these files changed, and whether no more did. */
  async #ahead(changed: readonly string[]): Promise<{slugs: readonly string[]; isAll: boolean}> {
    const shown = (this.#planned ?? (await this.#asKnown))?.shown ?? []
    const each = new Set(changed.map((path) => shown.find((one) => isOf(one, path))?.slug))
    if (each.size > mostAhead) return {slugs: [], isAll: false}
    const slugs = [...each].filter((slug) => slug !== undefined)
    return {slugs, isAll: slugs.length > 0 && slugs.length === each.size}
  }

  /**
   * Go on from the builds that changed as they were shown; answers whether all of them were, and whether nothing else is
   * other than it was.
   */
  async #follow(changed: readonly string[], stage: Stage): Promise<{isShown: boolean; isWhole: boolean}> {
    const {slugs, isAll} = await this.#ahead(changed)
    let [isShown, isWhole] = [isAll, isAll]
    for (const slug of slugs) {
      const once = await this.#showOnce(slug, stage)
      const found = once && once.from !== this.#planned ? await this.#showAgain(slug) : once
      isShown &&= found !== undefined
      if (found?.follows) this.#take(found.one, found.follows)
      else isWhole = false
    }
    return {isShown, isWhole}
  }

  /** Go on from a journal in which one build was planned again. */
  #take({slug}: PlannedBuild, {site, isCalledAlike}: NonNullable<Again['follows']>): void {
    const touched = new Set(site.all.kin.copiesOf(slug).map((copy) => copy.slug))
    this.#planned = site
    this.#turns = this.#turnsOf(site, isCalledAlike ? touched : undefined)
  }

  #turnsOf(planned: Pick<PlannedSite, 'shown' | 'all'>, touched?: ReadonlySet<string>): BuildsInTurn {
    const shown: Told = (changed) => this.#shown(changed)
    return new BuildsInTurn(planned, {standing: this.#standing, shown, earlier: this.#turns, touched})
  }

  async #refreshAll(stage: Stage): Promise<Refreshed> {
    const {told = () => {}, found = () => {}} = this.#follower
    const giveWay = async () => {
      await breathe()
      await this.#quiet()
      if (this.#waiting > 0 && this.#planned && this.#timesPutOff < mostPutOff) throw putOff
    }
    await giveWay()
    const isAnew = this.#isBehind || !this.#planned
    if (isAnew) await this.#readAll(giveWay)
    const [planned, turns] = [this.#planned!, this.#turns!]
    stage.showBuilds()
    const {unseen, due} = await turns.look(giveWay)
    if (isAnew) await turns.clear()
    const isSoon = due.length <= this.#most
    const next = async (done: number, of: number) => {
      // What is made is kept: whoever goes on writing puts off no more than the rest.
      if (this.#waiting > 0 && !isSoon) throw putOff
      await giveWay()
      told('Making', done, of)
    }
    await turns.make(isSoon ? due : unseen, next)
    await giveWay()
    const first = await this.#showJournal(planned, turns, giveWay)
    stage.showJournal()
    this.#timesPutOff = 0
    found(first)
    const late = isSoon ? [] : due.filter((slug) => !unseen.includes(slug))
    await turns.make(late, next)
    const all = late.length > 0 ? await this.#showJournal(planned, turns, giveWay) : first
    if (all !== first) found(all)
    // What was not asked for since all was looked at is no less wanted.
    if (isAnew) await (await this.#open()).tidy()
    this.#isWhole = all.unmade.length === 0 && stage === this.#stage
    return all
  }

  /** Wait until nobody waits for a build. */
  async #quiet(): Promise<void> {
    while (this.#soon.size > 0) await Promise.allSettled(this.#soon)
    await this.#turns?.quiet()
  }

  /** Read and plan the journal anew. */
  async #readAll(giveWay: () => Promise<void>): Promise<void> {
    const planned = await this.#plan(giveWay)
    this.#isBehind = false
    this.#followed = 0
    this.#planned = planned
    this.#turns = this.#turnsOf(planned)
  }

  async #plan(giveWay: () => Promise<void>): Promise<PlannedSite> {
    return planSite(this.#root, await this.#options(), await this.#open(), async (...how) => {
      await giveWay()
      this.#follower.told?.(...how)
    })
  }

  async #recall(): Promise<SiteAsKnown | undefined> {
    return siteAsKnown(this.#root, await this.#options(), await this.#open())
  }

  async #options(): Promise<SiteOptions> {
    const {addresses: assets} = await this.#assets
    return {...whileWriting, assets}
  }

  #open(): Promise<Cache> {
    this.#cache ??= cacheOf(this.#root)
    return this.#cache
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
  async #showJournal(
    {around, problems}: PlannedSite,
    turns: BuildsInTurn,
    next: () => Promise<void>,
  ): Promise<Refreshed> {
    const {seen, own} = turns
    const site = {...around, builds: seen.map(({one}) => one)}
    const pages = seen.flatMap((one) => one.pages)
    const shared = await journalPages(site, pages, {cache: await this.#open(), next})
    const others = [...shared.pages, atHand({pages: [], files: (await this.#assets).files})]
    const writer = new SiteWriter(around.around, this.#standing)
    await writer.write(others)
    await writer.end()
    const gone = await turns.clearOthers(others.flatMap((one) => [...one.pages, ...one.files]))
    this.#shown([...writer.written, ...gone])
    const unmade = [...own, turns, shared, writer].flatMap((one) => one.unmade)
    return {problems: withFaults(problems, own), unmade}
  }

  /** What somebody cleared away is written anew. */
  async #standAgain(): Promise<void> {
    if (existsSync(this.#standing.folder)) return
    await mkdir(this.#standing.folder, {recursive: true})
    this.#standing.files = {}
    this.#planned = undefined
    this.#turns = undefined
  }
}
