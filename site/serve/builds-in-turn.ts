import type {PlannedBuild} from '../journal/read-journal.ts'
import type {Known, Unmade} from '../kit/page.ts'
import {keptPages, type OfAll, type OwnPages, ownPages, type Seen} from '../make/own-pages.ts'
import {SiteWriter} from '../publish/site-writer.ts'
import {isNoted, type Standing} from '../publish/standing.ts'
import {slugOf, takeAway} from './take-away.ts'

/** A build that is planned, and how far its pages are. */
interface Turn {
  one: PlannedBuild
  all: OfAll
  /** What other pages show of it, where that is known before its own pages are. */
  seen?: Seen | undefined
  own?: OwnPages | undefined
  making?: Promise<OwnPages> | undefined
  /** Its pages stand as it was planned. */
  stands?: Promise<void> | undefined
  /** Those that could not be written. */
  unmade?: readonly Unmade[]
}

/** Builds as they were planned; in the order of the site, where they are all. */
interface Planned {
  shown: readonly PlannedBuild[]
  all: OfAll
}

interface Follows {
  earlier: BuildsInTurn | undefined
  touched: ReadonlySet<string> | undefined
}

/** Hears the addresses of what was written or taken away. */
export type Told = (changed: readonly string[]) => void

/** So many builds are written at once while nobody waits: whoever comes then waits for no more. */
const together = 2

/**
 * The builds of a journal as it was planned once, whose pages are made and written each in its turn: first those that
 * somebody asks for, then the others.
 */
export class BuildsInTurn {
  readonly #standing: Standing
  readonly #shown: Told
  readonly #turns: ReadonlyMap<string, Turn>
  /** What stands of each build. */
  readonly #addresses: Map<string | undefined, readonly string[]>
  readonly #askedFor = new Set<Promise<void>>()
  /** Nothing is written before those that were planned earlier have done so. */
  readonly #earlier: Promise<void> | undefined

  /**
   * `shown` is told the addresses that changed, as they are written. Of those that were planned `earlier` all is looked at
   * anew, or where `touched` names slugs, those alone.
   */
  constructor(
    planned: Planned,
    {standing, shown, earlier, touched}: {standing: Standing; shown: Told} & Partial<Follows>,
  ) {
    this.#standing = standing
    this.#shown = shown
    this.#earlier = earlier?.quiet()
    const known = earlier && touched && {turns: earlier.#turns, addresses: earlier.#addresses, touched}
    const before = (slug: string) => (known?.touched.has(slug) ? undefined : known?.turns.get(slug))
    this.#turns = new Map(planned.shown.map((one) => [one.slug, before(one.slug) ?? {one, all: planned.all}]))
    this.#addresses = known?.addresses ?? bySlug(Object.keys(standing.files))
  }

  /** The builds as the pages of the whole journal see them, as far as they are known, in the order of the site. */
  get seen(): Seen[] {
    return [...this.#turns.values()].flatMap(({own, seen}) => own ?? seen ?? [])
  }

  /** The pages of the builds that are made, in the order of the site. */
  get own(): OwnPages[] {
    return [...this.#turns.values()].flatMap(({own}) => own ?? [])
  }

  /** Pages that could not be written. */
  get unmade(): Unmade[] {
    return [...this.#turns.values()].flatMap(({unmade}) => unmade ?? [])
  }

  /** Have the pages of a build made before all others, unless they are; there may be no such build. */
  async asked(slug: string): Promise<void> {
    const turn = this.#turns.get(slug)
    if (turn) await this.#ahead(turn.stands ?? this.#write([turn]))
  }

  /** The same of a build that was planned again, with all else as it was. */
  async askedAnew(one: PlannedBuild, all: OfAll): Promise<void> {
    const turn = this.#turns.get(one.slug)
    if (!turn) return
    const before = turn.stands?.catch(() => {})
    Object.assign(turn, {one, all, own: undefined, making: undefined, stands: undefined})
    await this.#ahead(this.#write([turn], before))
  }

  /**
   * Look at what is kept: answers the builds (slugs) of which nothing is, and those whose own pages are not or do not
   * stand. `next` is waited for before each, and may throw.
   */
  async look(next: () => Promise<void>): Promise<{unseen: string[]; due: string[]}> {
    const unseen: string[] = []
    const due: string[] = []
    for (const turn of this.#turns.values()) {
      if (turn.stands) continue
      await next()
      await lookAt(turn)
      if (turn.own && this.#isStanding(turn.own)) turn.stands ??= Promise.resolve()
      else due.push(turn.one.slug)
      if (!turn.own && !turn.seen) unseen.push(turn.one.slug)
    }
    return {unseen, due}
  }

  /** Make and write builds (slugs) one after the other; `next` is waited for before each, and may throw. */
  async make(slugs: readonly string[], next: (done: number, of: number) => Promise<void>): Promise<void> {
    let waiting: Turn[] = []
    const write = async () => {
      const due = waiting.filter(({stands}) => !stands)
      waiting = []
      if (due.length > 0) await this.#write(due)
    }
    for (const [at, slug] of slugs.entries()) {
      // Where that throws, what is made waits to be written: it is kept, and a save does not wait for it.
      await next(at, slugs.length)
      const turn = this.#turns.get(slug)!
      await this.#own(turn)
      waiting.push(turn)
      if (waiting.length >= together) await write()
    }
    await write()
  }

  /** Wait until nobody waits for a build. */
  async quiet(): Promise<void> {
    await this.#earlier
    while (this.#askedFor.size > 0) await Promise.allSettled(this.#askedFor)
  }

  /** Take away what stands of builds that are no more, or is no more of those that are known. */
  async clear(): Promise<void> {
    const gone: string[] = []
    for (const slug of this.#addresses.keys())
      if (slug !== undefined) gone.push(...(await this.#clearOf(slug)))
    this.#tell(gone)
  }

  /** Take away what stands of the pages of the whole journal, but those that are there now; answers what was. */
  clearOthers(there: readonly Known[]): Promise<string[]> {
    return this.#clear(undefined, there)
  }

  async #clearOf(slug: string): Promise<string[]> {
    const turn = this.#turns.get(slug)
    if (turn && !turn.own) return []
    const {pages = [], files = []} = turn?.own ?? {}
    return this.#clear(slug, [...pages, ...files])
  }

  async #clear(slug: string | undefined, there: readonly Known[]): Promise<string[]> {
    const addresses = new Set(there.map(({address}) => address))
    const gone = this.#addresses.get(slug)?.filter((address) => !addresses.has(address)) ?? []
    this.#addresses.set(slug, [...addresses])
    return takeAway(this.#standing, gone)
  }

  #tell(changed: readonly string[]): void {
    if (changed.length > 0) this.#shown(changed)
  }

  async #ahead(stands: Promise<void>): Promise<void> {
    this.#askedFor.add(stands)
    await stands.finally(() => this.#askedFor.delete(stands))
  }

  /** Nobody else writes these builds meanwhile; what fails is tried again when it is asked for again. */
  #write(turns: readonly Turn[], before?: Promise<void>): Promise<void> {
    const writing = this.#writeNow(turns, before).catch((error) => {
      for (const turn of turns) if (turn.stands === writing) turn.stands = undefined
      throw error
    })
    for (const turn of turns) turn.stands = writing
    return writing
  }

  async #writeNow(turns: readonly Turn[], before?: Promise<void>): Promise<void> {
    await Promise.all([this.#earlier, before])
    const writer = new SiteWriter(turns[0]!.all.around, this.#standing)
    const cleared: string[] = []
    try {
      await writer.write(await Promise.all(turns.map((turn) => this.#own(turn))))
      await writer.end()
      for (const {one} of turns) cleared.push(...(await this.#clearOf(one.slug)))
    } finally {
      for (const turn of turns)
        turn.unmade = writer.unmade.filter(({address}) => slugOf(address) === turn.one.slug)
      this.#tell([...writer.written, ...cleared])
    }
  }

  async #own(turn: Turn): Promise<OwnPages> {
    if (turn.own) return turn.own
    const {one, all} = turn
    turn.making ??= ownPages(one, all)
    const {making} = turn
    const own = await making.finally(() => {
      if (turn.making === making) turn.making = undefined
    })
    // It may have been planned again meanwhile.
    if (turn.one === one) turn.own = own
    return own
  }

  #isStanding({pages, files}: OwnPages): boolean {
    return [...pages, ...files].every((one) => isNoted(this.#standing, one))
  }
}

/** Find what is kept of a build, unless that is known. */
async function lookAt(turn: Turn): Promise<void> {
  if (turn.own || turn.seen) return
  const {one, all} = turn
  const kept = await keptPages(one, all)
  // It may have been planned again meanwhile.
  if (turn.one !== one || !kept) return
  if ('own' in kept) turn.own ??= kept.own
  else turn.seen = kept.seen
}

function bySlug(addresses: readonly string[]): Map<string | undefined, string[]> {
  const all = new Map<string | undefined, string[]>()
  for (const address of addresses) {
    const slug = slugOf(address)
    const known = all.get(slug)
    if (known) known.push(address)
    else all.set(slug, [address])
  }
  return all
}
