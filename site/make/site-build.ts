import type {Problem} from '../../plugins/build-file/schema/problem.ts'
import {isMade, type JournalSettings} from '../../plugins/build-file/schema/schema.ts'
import type {RuleName} from '../../plugins/checks/all.ts'
import {mendedPaths} from '../../plugins/plan/as-built/setting-up.ts'
import {changesFrom} from '../../plugins/plan/changes.ts'
import type {Effects} from '../../plugins/plan/effects.ts'
import type {Settled} from '../../plugins/plan/kit/settled.ts'
import {noRack} from '../../plugins/plan/stock/rack.ts'
import type {Relatives} from '../../plugins/sections/section.ts'
import type {PlannedBuild} from '../journal/read-journal.ts'
import {type Cache, keyOf} from '../kit/cache.ts'
import {drawnCover} from '../kit/own-names.ts'
import type {Artefact} from '../kit/page.ts'
import type {SiteBuild, Surround} from '../kit/site-data.ts'
import {sharePicture} from '../pictures/share.ts'
import type {Downloads} from '../steps/downloads.ts'
import {wholePlan} from '../steps/outline.ts'
import {programFails, proseAsWritten} from '../steps/program-fails.ts'
import type {Steps} from '../steps/steps.ts'
import {asPublished, tellsMoney, withoutKeys, withoutRate} from './as-published.ts'
import {type AmongKin, named} from './kin.ts'
import type {PublishedFiles} from './published-files.ts'

/** What a build's pages depend on besides the build. */
export interface Among extends AmongKin, PublishedFiles {
  around: Surround
  journal: JournalSettings
  cache: Cache
  steps: Steps
  /** What went wrong while this was gathered. */
  failed?: unknown
}

/** Make what the pages of one build, known in outline, are written from; where this program fails, its prose and why. */
export async function siteBuild(one: PlannedBuild, among: Among): Promise<SiteBuild> {
  try {
    const shown = await shownBuild(one, among)
    if (among.failed) return proseAlone(shown, among, among.failed)
    return await wholeBuild(shown, among).catch((error) => proseAlone(shown, among, error))
  } catch (error) {
    // What must not be told cannot be told apart from the rest.
    const isTold = tellsMoney(among.around, among.journal)
    return proseAlone(isTold ? one : {...one, text: ''}, among, error)
  }
}

/** Read and plan a build as a whole, less what the published site never tells. */
async function shownBuild(one: PlannedBuild, {around, journal, steps}: Among): Promise<PlannedBuild> {
  const {build, plan} = await wholePlan(one.input, steps)
  const whole = {...one, build, plan}
  return tellsMoney(around, journal) ? whole : {...asPublished(whole), key: one.key}
}

async function wholeBuild(one: PlannedBuild, among: Among): Promise<SiteBuild> {
  const {told, isCopyOfDraft, family, pictures, files, around, cache, steps} = among
  const {slug, file, text, plan} = one
  const build = isCopyOfDraft ? withoutOriginal(one.build) : one.build
  const original = among.original && (await shownBuild(among.original, among))
  const relatives = relativesOf(build, original, among)
  const {key: madeKey, ...body} = await steps.make({
    planned: {
      key: keyOf(one.key, JSON.stringify(told), String(!isCopyOfDraft)),
      build,
      plan,
      problems: told,
    },
    readKey: one.readKey,
    text,
    path: file.replace(/^builds\//, ''),
    relatives,
    pictures,
    published: among.ledTo,
    pathPrefix: around.prefix,
    isForVisitors: !around.isWriting && isMade(plan.status),
  })
  const cover = build.values.cover && pictures.get(build.values.cover.value)
  const {drawn, given, compared} = await forAllReaders({...one, build}, original, relatives, {
    ...among,
    isPictured: cover !== undefined,
  })
  const drawings = {...body.drawings, ...(drawn.cover && {[drawnCover]: drawn.cover})}
  const ungiven = given.failed.map(({name, why}) => programFails(`write ${name} from`, new Error(why)))
  const faults = [...body.faults, ...drawn.faults, ...ungiven, ...compared.faults]
  return {
    slug,
    file,
    title: named(one).title,
    text: isCopyOfDraft ? withoutKeys(['based-on'], one) : text,
    build,
    plan,
    problems: [...told, ...faults],
    relatives,
    family,
    effects: compared.effects,
    rack: among.rack,
    isDraft: build.values.publish?.value === false,
    made: {...body, drawings, hanging: drawn.hanging, faults},
    cover,
    pictures,
    key: keyOf(
      madeKey,
      JSON.stringify([around, given.failed, compared.effects, family]),
      [...Object.keys(given.files), ...files.map((each) => each.address)].join(),
    ),
    files: [
      ...givenFiles(slug, given),
      ...drawingFiles(slug, drawings),
      ...(cover || !drawn.hanging ? [] : [sharePicture(slug, drawn.hanging, cache)]),
      ...files,
    ],
    ungiven: given.failed.map(({name}) => name),
  }
}

/** Make what tells no money, to whoever writes neither: it is made once for all readers. */
async function forAllReaders(
  one: PlannedBuild,
  original: PlannedBuild | undefined,
  relatives: Relatives,
  {steps, journal: settings, isPictured}: Among & {isPictured: boolean},
) {
  const {slug, build, plan, text} = asPublished(one)
  const journal = withoutRate(settings)
  return {
    drawn: await steps.draw({build, plan, isPictured}),
    given: await steps.give({build, plan, text, journal}),
    compared: await effectsOf({slug, text}, original && asPublished(original), relatives, {journal, steps}),
  }
}

/** Find what a build was copied from and what was changed, and what was copied from it. */
function relativesOf(build: Settled, original: PlannedBuild | undefined, {copies}: Among): Relatives {
  if (!original) return {copies}
  const changes = changesFrom(original.build, build, mendedPaths(original.plan.settingUp))
  return {original: {...named(original), changes}, copies}
}

/** Find what the changes on the build that it was copied from come to. */
async function effectsOf(
  build: {slug: string; text: string},
  original: PlannedBuild | undefined,
  relatives: Relatives,
  {journal, steps}: Pick<Among, 'journal' | 'steps'>,
): Promise<{effects?: Effects; faults: Problem<RuleName>[]}> {
  if (!original || !relatives.original?.changes.length) return {faults: []}
  try {
    const {slug, text, plan} = original
    const mended = mendedPaths(plan.settingUp)
    return {effects: await steps.compare({build, original: {slug, text, mended}, journal}), faults: []}
  } catch (error) {
    return {faults: [programFails('compare', error)]}
  }
}

/** Keep of a build that this program fails on what needs no work: its prose, and where it is a copy of a draft no key. */
function proseAlone(one: PlannedBuild, {around, isCopyOfDraft}: Among, error: unknown): SiteBuild {
  const {slug, file, plan, build} = one
  const faults = [programFails('show', error)]
  return {
    slug,
    file,
    title: named(one).title,
    text: isCopyOfDraft ? '' : one.text,
    build: isCopyOfDraft ? withoutOriginal(build) : build,
    plan,
    problems: faults,
    relatives: {copies: []},
    pictures: new Map(),
    family: {rows: [], isCircle: false, more: 0},
    rack: noRack,
    isDraft: build.values.publish?.value === false,
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

function withoutOriginal(build: Settled): Settled {
  const {'based-on': _, ...values} = build.values
  return {...build, values}
}

function givenFiles(slug: string, given: Downloads): Artefact[] {
  return Object.entries(given.files).map(([name, file]) => {
    const content = 'text' in file ? file.text : file.base64
    const bytes = () => ('text' in file ? file.text : Buffer.from(file.base64, 'base64'))
    return {address: `/builds/${slug}/${name}`, key: keyOf(content), bytes}
  })
}
