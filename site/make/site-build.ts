import type {Build} from '../../plugins/build-file/build.ts'
import {inOrder} from '../../plugins/build-file/read.ts'
import type {JournalSettings} from '../../plugins/build-file/schema.ts'
import type {Relatives} from '../../plugins/sections/section.ts'
import {keyOf} from '../html/page-of.ts'
import type {PlannedBuild} from '../journal/read-journal.ts'
import type {Surround} from '../layouts/surround.ts'
import type {Artefact} from '../publish/page.ts'
import type {SiteBuild} from '../site-data.ts'
import {linkedBuilds} from '../work/relevant.ts'
import type {Works} from '../work/works.ts'
import {publishedFiles} from './published-files.ts'
import {type Kin, relativesOf} from './relatives-of.ts'
import type {TakeAways} from './take-aways.ts'

/** What a build's pages depend on besides the build. */
export interface Among {
  /** The builds that the site shows. */
  shown: Kin
  /** Slugs of drafts: named on no page. */
  hidden: readonly string[]
  around: Surround
  journal: JournalSettings
  pictureCache: string
  works: Works
}

/** Make what the pages of one build are written from. */
export async function siteBuild(one: PlannedBuild, among: Among): Promise<SiteBuild> {
  const {shown, around, pictureCache, works} = among
  const {slug, file, text, plan} = one
  const build = withoutHiddenOriginal(one.build, among)
  const relatives = relativesOf(build, shown)
  const {pictures, files, problems: unread} = await publishedFiles(one, pictureCache)
  const problems = inOrder([...one.problems, ...unread])
  const told = problems.filter(({message}) => !among.hidden.some((draft) => names(message, draft)))
  const {key: madeKey, ...made} = await works.make({
    build,
    planned: {
      key: keyOf(one.key, JSON.stringify(told), String(build === one.build)),
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
  })
  const given = await works.give({planKey: one.key, build, plan, text, journal: among.journal})
  const cover = build.values.cover && pictures[build.values.cover.value]
  return {
    slug,
    file,
    title: build.values.title?.value ?? slug,
    text,
    build,
    plan,
    problems,
    relatives,
    isDraft: build.values.publish?.value === false,
    made,
    ...(cover ? {cover} : {}),
    key: keyOf(
      madeKey,
      JSON.stringify(around),
      [...Object.keys(given), ...files.map((each) => each.address)].join(),
    ),
    files: [...givenFiles(slug, given), ...files.filter(({address}) => !given[address.split('/').at(-1)!])],
  }
}

function withoutHiddenOriginal(build: Build, {hidden}: Among): Build {
  const {'based-on': original, ...values} = build.values
  return original && hidden.includes(original.value) ? {...build, values} : build
}

/** The builds with a page that this one's page leads to. */
function ledTo(build: Build, {original, copies}: Relatives, {bySlug}: Kin): string[] {
  const kin = [...(original ? [original] : []), ...copies].map(({slug}) => slug)
  return [...new Set([...linkedBuilds(build), ...kin])].filter((slug) => bySlug.has(slug)).sort()
}

/** Tell whether a message names a slug, as a word of its own. */
const names = (message: string, slug: string): boolean => message.split(/[^a-z0-9-]+/).includes(slug)

function givenFiles(slug: string, given: TakeAways): Artefact[] {
  return Object.entries(given).map(([name, file]) => {
    const content = 'text' in file ? file.text : file.base64
    const bytes = () => ('text' in file ? file.text : Buffer.from(file.base64, 'base64'))
    return {address: `/builds/${slug}/${name}`, key: keyOf(content), bytes}
  })
}
