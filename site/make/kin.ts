import type {Problem} from '../../plugins/build-file/schema/problem.ts'
import {type Family, families} from '../../plugins/plan/family.ts'
import type {Settled} from '../../plugins/plan/kit/settled.ts'
import {noRack, type RackContext} from '../../plugins/plan/stock/rack.ts'
import type {PlannedBuild} from '../journal/read-journal.ts'
import {linkedBuilds} from '../journal/surroundings.ts'
import type {Listed} from '../steps/results.ts'

/** A build as its relatives know it. */
export type Relation = Omit<Listed, 'file' | 'rack'>

/** The builds that a site shows, as each of them asks for the others. */
export interface Kin {
  /** A build in outline. */
  outlineOf: (slug: string) => PlannedBuild | undefined
  isShown: (slug: string) => boolean
  copiesOf: (slug: string) => readonly Relation[]
  familyOf: (slug: string) => Family
  /** Slugs of drafts: named on no page. */
  hidden: readonly string[]
}

export function relationOf(one: PlannedBuild): Relation {
  const basedOn = one.build.values['based-on']?.value
  return {...named(one), ...(basedOn !== undefined && {basedOn})}
}

/** Gather which builds were copied from which, once for all who ask; of what is hidden nothing is told. */
export function kinOf(
  shown: readonly Relation[],
  outlineOf: Kin['outlineOf'],
  hidden: readonly string[] = [],
): Kin {
  const copies = new Map<string, Relation[]>()
  for (const one of shown) {
    const from = one.basedOn
    if (from === undefined || from === one.slug) continue
    const known = copies.get(from)
    if (known) known.push(one)
    else copies.set(from, [one])
  }
  const kinship = shown.map(({slug, title, basedOn: from}) => {
    const basedOn = from === undefined || hidden.includes(from) ? undefined : from
    return [slug, {title, basedOn}] as const
  })
  const slugs = new Set(shown.map(({slug}) => slug))
  return {
    outlineOf,
    isShown: (slug) => slugs.has(slug),
    copiesOf: (slug) => copies.get(slug) ?? [],
    familyOf: families(new Map(kinship)),
    hidden,
  }
}

/** What a build's pages tell of other builds, and what they leave out for the sake of drafts. */
export interface AmongKin {
  /** Its problems, but those that name a draft. */
  told: Problem[]
  isCopyOfDraft: boolean
  original: PlannedBuild | undefined
  copies: {slug: string; title: string}[]
  family: Family
  /** Slugs of the builds with a page that its page leads to. */
  ledTo: string[]
  rack: RackContext
}

export function amongKin(one: PlannedBuild, kin: Kin): AmongKin {
  const {hidden} = kin
  const {slug, build} = one
  const from = build.values['based-on']?.value
  const isCopyOfDraft = from !== undefined && hidden.includes(from)
  const original = from === undefined || isCopyOfDraft || from === slug ? undefined : kin.outlineOf(from)
  const own = kin.copiesOf(slug).map(({slug: copy, title}) => ({slug: copy, title}))
  const leads = [
    ...linkedBuilds(build),
    ...[...(original ? [named(original)] : []), ...own].map((other) => other.slug),
  ]
  return {
    told: one.problems.filter(({message}) => !hidden.some((draft) => names(message, draft))),
    isCopyOfDraft,
    original,
    copies: own,
    family: kin.familyOf(slug),
    ledTo: [...new Set(leads)].filter(kin.isShown).sort(),
    rack: withoutDraftsOnRack(one.rack, hidden),
  }
}

/** A build without any other around it. */
export function aloneOf({build}: PlannedBuild, {hidden}: Kin): AmongKin {
  const isCopyOfDraft = hidden.includes(build.values['based-on']?.value ?? '')
  const family = {rows: [], isCircle: false, more: 0}
  return {told: [], isCopyOfDraft, original: undefined, copies: [], family, ledTo: [], rack: noRack}
}

export const named = ({slug, build: {values}}: {slug: string; build: Settled}) => ({
  slug,
  title: values.title?.value ?? slug,
})

/** Tell whether a message names a slug, as a word of its own. */
const names = (message: string, slug: string): boolean => message.split(/[^a-z0-9-]+/).includes(slug)

/** Leave drafts out of the words that are searched: their files, and the one that this build was copied from. */
export function withoutDrafts(words: string, build: Settled, hidden: readonly string[]): string {
  if (hidden.length === 0) return words
  const original = build.values['based-on']?.value
  const drafts = new Set(
    hidden.flatMap((slug) => [`${slug}.md`, `${slug}/index.md`, ...(slug === original ? [slug] : [])]),
  )
  return words
    .split(' ')
    .filter((word) => !drafts.has(word))
    .join(' ')
}

/** Leave out what is left over from drafts, and which draft used or reserves what. */
function withoutDraftsOnRack(rack: RackContext, hidden: readonly string[]): RackContext {
  const isShown = ({id}: {id: string}) => !hidden.some((slug) => id.startsWith(`${slug}.`))
  return {
    pieces: rack.pieces.filter(isShown),
    lots: rack.lots,
    gone: rack.gone
      .filter(isShown)
      .map(({by, ...one}) => (by !== undefined && hidden.includes(by) ? one : {...one, by})),
    reserved: rack.reserved.filter(({by}) => !hidden.includes(by)),
  }
}
