import {keyOf} from '../cache.ts'
import type {KnownPage, Page, Unmade} from '../page.ts'
import {pagesOfTheJournal} from '../pages/all.ts'
import {searchPage} from '../pages/portfolio.ts'
import type {SiteBuild, SiteData} from '../site-data.ts'

/** Makes the pages of the whole journal; again where what they show is other than it was, and not for every word. */
export class JournalPages {
  #seen = ''
  #pages: readonly Page[] = []
  #unmade: readonly Unmade[] = []
  /** Of outlines that are held from one save to the next. */
  readonly #keys = new WeakMap<object, string>()

  /** `own` are the pages of the builds; what cannot be made is told. */
  of(site: SiteData, own: readonly KnownPage[], unmade: Unmade[]): readonly Page[] {
    const seen = this.#keyOf(site, own)
    if (seen === this.#seen) {
      // The words of all builds are searched, and nothing else is made of them.
      const [search] = searchPage(site)
      this.#pages = this.#pages.map((page) => (page.address === search!.address ? search! : page))
    } else {
      const failed: Unmade[] = []
      this.#pages = pagesOfTheJournal(site, own, failed)
      this.#unmade = failed
      this.#seen = seen
    }
    unmade.push(...this.#unmade)
    return this.#pages
  }

  #keyOf({around, journal, rack, unread, builds}: SiteData, own: readonly KnownPage[]): string {
    return keyOf(
      JSON.stringify([around, journal, rack, unread]),
      ...own.map(({address, data}) => `${address} ${data.unlisted}`),
      ...builds.map((one) => this.#keyOfBuild(one)),
    )
  }

  #keyOfBuild({slug, title, plan, build, problems, isDraft, made, cover, pictures}: SiteBuild): string {
    const held = this.#keys.get(plan) ?? keyOf(JSON.stringify([plan, build.values]))
    this.#keys.set(plan, held)
    const told = problems.map(({rule, severity, message}) => [rule, severity, message])
    const {hanging, headings, drawings} = made
    return JSON.stringify([
      slug,
      title,
      held,
      told,
      isDraft,
      hanging,
      headings,
      drawings,
      cover,
      [...pictures],
      inOrder(build),
    ])
  }
}

/** What the days of a build tell, in their order, and not at which lines they stand. */
function inOrder({days, links}: SiteBuild['build']): unknown[] {
  return [...days, ...links].sort((a, b) => a.place.line - b.place.line).map(({place: _, ...one}) => one)
}
