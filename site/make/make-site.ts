import {join} from 'node:path'
import type {Build} from '../../plugins/build-file/build.ts'
import type {FileProblems} from '../commands/report.ts'
import {keyOf} from '../html/page-of.ts'
import {type PlannedBuild, readJournalFolder} from '../journal/read-journal.ts'
import type {Surround} from '../layouts/surround.ts'
import type {SiteBuild, SiteData} from '../site-data.ts'
import {makeBuild} from './make-build.ts'
import {publishedFiles} from './published-files.ts'
import {relativesOf} from './relatives-of.ts'

/** How this site is made: where it will lie, and whether for somebody who is writing. */
export interface SiteOptions {
  prefix: string
  isWriting: boolean
  assets: Surround['assets']
}

/**
 * Make all that pages are written from, of the journal at `root` as it is now; and list what is wrong with it.
 * It is stopped by an error in the file of a build that it shows, or in the settings or the rack.
 */
export async function makeSite(
  root: string,
  options: SiteOptions,
): Promise<{site: SiteData; problems: FileProblems[]; isStopped: boolean}> {
  const {settings, rack, builds, problems, others} = await readJournalFolder(root)
  const shown = builds.filter(({build}) => options.isWriting || build.values.publish?.value !== false)
  const around: Surround = {
    ...options,
    title: settings.title?.value ?? 'Build journal',
    ...(settings.maker ? {maker: settings.maker.value} : {}),
    ...(settings.site ? {origin: settings.site.value.replace(/\/+$/, '')} : {}),
  }
  const all = shown.map(({build}) => build)
  const made: SiteBuild[] = []
  for (const one of shown) made.push(await siteBuild(one, all, around, join(root, '.cache/pictures')))
  return {
    site: {
      around,
      journal: settings,
      rack,
      builds: made.sort(newestFirst),
      unread: options.isWriting ? others : [],
    },
    problems: [...problems, ...builds].map((one) => ({file: one.file, problems: one.problems})),
    isStopped: [...problems, ...shown].some((one) => one.problems.some(({severity}) => severity === 'error')),
  }
}

async function siteBuild(
  one: PlannedBuild,
  all: readonly Build[],
  around: Surround,
  pictureCache: string,
): Promise<SiteBuild> {
  const {slug, file, text, build, plan, problems} = one
  const relatives = relativesOf(build, all)
  const {pictures, files} = await publishedFiles(one, pictureCache)
  const made = makeBuild({
    path: file.replace(/^builds\//, ''),
    text,
    build,
    plan,
    problems,
    relatives,
    pictures,
    published: all.map((each) => each.slug),
    pathPrefix: around.prefix,
  })
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
    key: keyOf(JSON.stringify(made), JSON.stringify(plan), text, JSON.stringify(around)),
    files,
  }
}

const dateOf = ({build}: SiteBuild) => (build.values.finished ?? build.values.started)?.iso ?? ''

function newestFirst(a: SiteBuild, b: SiteBuild): number {
  return dateOf(a) === dateOf(b) ? (a.slug < b.slug ? -1 : 1) : dateOf(a) > dateOf(b) ? -1 : 1
}
