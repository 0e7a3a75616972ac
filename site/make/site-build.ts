import type {Build} from '../../plugins/build-file/build.ts'
import type {Problem} from '../../plugins/build-file/problem.ts'
import {isMade, type JournalSettings} from '../../plugins/build-file/schema.ts'
import type {RuleName} from '../../plugins/checks/all.ts'
import {changesFrom} from '../../plugins/plan/changes.ts'
import type {Effects} from '../../plugins/plan/effects.ts'
import {familyOf, type Kinship} from '../../plugins/plan/family.ts'
import {noRack, type RackContext} from '../../plugins/plan/rack.ts'
import {mendedPaths} from '../../plugins/plan/setting-up.ts'
import type {Settled} from '../../plugins/plan/settled.ts'
import type {Relatives} from '../../plugins/sections/section.ts'
import {type Cache, keyOf} from '../cache.ts'
import type {PlannedBuild} from '../journal/read-journal.ts'
import {linkedBuilds} from '../journal/surroundings.ts'
import type {Artefact} from '../page.ts'
import {sharePicture} from '../pictures/share.ts'
import type {SiteBuild, Surround} from '../site-data.ts'
import type {Downloads} from '../steps/downloads.ts'
import {programFails, proseAsWritten} from '../steps/program-fails.ts'
import type {Steps} from '../steps/steps.ts'
import {withoutKeys} from './as-published.ts'
import {publishedFiles} from './published-files.ts'

/** What a build's pages depend on besides the build. */
interface Among {
  /** The builds that the site shows. */
  shown: Kin
  /** Slugs of drafts: named on no page. */
  hidden: readonly string[]
  /** The files of the builds that the site shows, by their slugs. */
  textOf: ReadonlyMap<string, string>
  around: Surround
  journal: JournalSettings
  cache: Cache
  steps: Steps
}

/** Make what the pages of one build are written from; where this program fails at it, its prose and why. */
export async function siteBuild(one: PlannedBuild, among: Among): Promise<SiteBuild> {
  try {
    return await wholeBuild(one, among)
  } catch (error) {
    return proseAlone(one, among, error)
  }
}

async function wholeBuild(one: PlannedBuild, among: Among): Promise<SiteBuild> {
  const {shown, around, cache, steps} = among
  const {slug, file, text, plan} = one
  const build = withoutHiddenOriginal(one.build, among)
  const relatives = relativesOf(build, shown)
  const family = familyOf(slug, shown.kinship)
  const {pictures, files} = await publishedFiles(one, cache)
  const told = one.problems.filter(({message}) => !among.hidden.some((draft) => names(message, draft)))
  const {key: madeKey, ...made} = await steps.make({
    planned: {
      key: keyOf(one.key, JSON.stringify(told), String(build === one.build)),
      build,
      plan,
      problems: told,
    },
    readKey: one.readKey,
    text,
    path: file.replace(/^builds\//, ''),
    relatives,
    pictures,
    published: ledTo(build, relatives, shown),
    pathPrefix: around.prefix,
    isForVisitors: !around.isWriting && isMade(plan.status),
  })
  const given = await steps.give({planKey: one.key, build, plan, text, journal: among.journal})
  const compared = await effectsOf(one, relatives, among)
  const cover = build.values.cover && pictures.get(build.values.cover.value)
  const ungiven = given.failed.map(({name, why}) => programFails(`write ${name} from`, new Error(why)))
  const faults = [...made.faults, ...ungiven, ...compared.faults]
  return {
    slug,
    file,
    title: build.values.title?.value ?? slug,
    text: build === one.build ? text : withoutKeys(['based-on'], one),
    build,
    plan,
    problems: [...told, ...faults],
    relatives,
    family,
    effects: compared.effects,
    rack: withoutDraftsOnRack(one.rack, among.hidden),
    isDraft: build.values.publish?.value === false,
    made: {...made, faults, words: withoutDrafts(made.words, one.build, among.hidden)},
    cover,
    pictures,
    key: keyOf(
      madeKey,
      JSON.stringify([around, given.failed, compared.effects, family]),
      [...Object.keys(given.files), ...files.map((each) => each.address)].join(),
    ),
    files: [
      ...givenFiles(slug, given),
      ...drawingFiles(slug, made.drawings),
      ...(cover || !made.hanging ? [] : [sharePicture(slug, made.hanging, cache)]),
      ...files,
    ],
    ungiven: given.failed.map(({name}) => name),
  }
}

/** Find what the changes on the build that it was copied from come to. */
async function effectsOf(
  build: PlannedBuild,
  {original}: Relatives,
  {shown, textOf, journal, steps}: Among,
): Promise<{effects?: Effects; faults: Problem<RuleName>[]}> {
  const text = original && textOf.get(original.slug)
  if (!original?.changes.length || text === undefined) return {faults: []}
  try {
    const mended = shown.mended.get(original.slug) ?? []
    const effects = await steps.compare({build, original: {...original, text, mended}, journal})
    return {effects, faults: []}
  } catch (error) {
    return {faults: [programFails('compare', error)]}
  }
}

/** Keep of a build that this program fails on what needs no work: its prose, and where it is a copy of a draft no key. */
function proseAlone(one: PlannedBuild, {around, hidden}: Among, error: unknown): SiteBuild {
  const {slug, file, plan} = one
  const isCopyOfDraft = hidden.includes(one.build.values['based-on']?.value ?? '')
  const {'based-on': original, ...values} = one.build.values
  const faults = [programFails('show', error)]
  return {
    slug,
    file,
    title: values.title?.value ?? slug,
    text: isCopyOfDraft ? '' : one.text,
    build: isCopyOfDraft ? {...one.build, values} : one.build,
    plan,
    problems: faults,
    relatives: {copies: []},
    pictures: new Map(),
    family: {rows: [], isCircle: false, more: 0},
    rack: noRack,
    isDraft: values.publish?.value === false,
    made: {
      state: '',
      drawing: '',
      drawings: {},
      html: proseAsWritten(one.text),
      headings: [],
      hanging: undefined,
      words: '',
      faults,
    },
    key: keyOf('prose alone', one.key, one.text, JSON.stringify([around, faults])),
    files: [],
    ungiven: [],
  }
}

function drawingFiles(slug: string, drawings: SiteBuild['made']['drawings']): Artefact[] {
  return Object.entries(drawings).map(([name, svg]) => ({
    address: `/builds/${slug}/drawings/${name}`,
    key: keyOf(svg),
    bytes: () => svg,
  }))
}

function withoutHiddenOriginal(build: Settled, {hidden}: Among): Settled {
  const {'based-on': original, ...values} = build.values
  return original && hidden.includes(original.value) ? {...build, values} : build
}

/** Leave drafts out of the words that are searched: their files, and the one that this build was copied from. */
function withoutDrafts(words: string, build: Settled, hidden: readonly string[]): string {
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

/** The builds with a page that this one's page leads to. */
function ledTo(build: Build, {original, copies}: Relatives, {bySlug}: Kin): string[] {
  const kin = [...(original ? [original] : []), ...copies].map(({slug}) => slug)
  return [...new Set([...linkedBuilds(build), ...kin])].filter((slug) => bySlug.has(slug)).sort()
}

/** Tell whether a message names a slug, as a word of its own. */
const names = (message: string, slug: string): boolean => message.split(/[^a-z0-9-]+/).includes(slug)

function givenFiles(slug: string, given: Downloads): Artefact[] {
  return Object.entries(given.files).map(([name, file]) => {
    const content = 'text' in file ? file.text : file.base64
    const bytes = () => ('text' in file ? file.text : Buffer.from(file.base64, 'base64'))
    return {address: `/builds/${slug}/${name}`, key: keyOf(content), bytes}
  })
}

/** Builds by their slugs, and the copies of each: gathered once for all who ask. */
interface Kin {
  bySlug: ReadonlyMap<string, Build>
  copies: ReadonlyMap<string, readonly Build[]>
  /** Of each, what was measured only to be set right. */
  mended: ReadonlyMap<string, readonly string[]>
  /** What all were copied from; of what is hidden nothing is told. */
  kinship: ReadonlyMap<string, Kinship>
}

/** Gather which builds were copied from which. */
export function kinOf(
  planned: readonly Pick<PlannedBuild, 'build' | 'plan'>[],
  hidden: readonly string[],
): Kin {
  const builds = planned.map(({build}) => build)
  const copies = new Map<string, Build[]>()
  for (const build of builds) {
    const from = build.values['based-on']?.value
    if (from === undefined || from === build.slug) continue
    copies.set(from, [...(copies.get(from) ?? []), build])
  }
  return {
    bySlug: new Map(builds.map((build) => [build.slug, build])),
    copies,
    kinship: new Map(
      builds.map((build) => {
        const from = build.values['based-on']?.value
        const basedOn = from === undefined || hidden.includes(from) ? undefined : from
        return [build.slug, {title: named(build).title, basedOn}]
      }),
    ),
    mended: new Map(planned.map(({build, plan}) => [build.slug, mendedPaths(plan.settingUp)])),
  }
}

/** Find what a build was copied from and what was changed, and what was copied from it. */
function relativesOf(build: Build, {bySlug, copies, mended}: Kin): Relatives {
  const from = build.values['based-on']?.value
  const original = from === undefined || from === build.slug ? undefined : bySlug.get(from)
  return {
    ...(original && {
      original: {...named(original), changes: changesFrom(original, build, mended.get(original.slug))},
    }),
    copies: (copies.get(build.slug) ?? []).map(named),
  }
}

const named = ({slug, values}: Build) => ({slug, title: values.title?.value ?? slug})
