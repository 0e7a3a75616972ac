import {existsSync, rmdirSync, rmSync} from 'node:fs'
import {realpath} from 'node:fs/promises'
import {dirname, join, relative} from 'node:path'
import {setFlagsFromString} from 'node:v8'
import {tellNewVersion} from '../journal/last-version.ts'
import {asCalled} from '../kit/called.ts'
import {clearSooner} from '../kit/clear-sooner.ts'
import {diskTrouble} from '../kit/disk-trouble.ts'
import {cacheOf} from '../kit/journal-cache.ts'
import type {Unmade} from '../kit/page.ts'
import type {FileProblems} from '../kit/site-data.ts'
import {journalPages} from '../make/journal-pages.ts'
import {makeSite} from '../make/make-site.ts'
import {planSite} from '../make/plan-site.ts'
import {progressTo} from '../make/progress.ts'
import {siteAssets} from '../publish/assets.ts'
import {readAtRest} from '../publish/at-rest.ts'
import {madeFrom, noteBuild, type Said, saidBefore} from '../publish/last-build.ts'
import {outputFolder, pathPrefix} from '../publish/output.ts'
import {atHand, SiteWriter} from '../publish/site-writer.ts'
import {keepSpare, spareAfter, spareOf, takeUp} from '../publish/spare.ts'
import {recallStanding, rememberStanding} from '../publish/standing.ts'
import {beginVersion, clearVersions, finishVersion, newVersion, swapSite} from '../publish/versions.ts'
import {printable, report, reportUnmade} from './report.ts'
import {readArguments} from './usage.ts'

const usage = `npm run build                             writes the site to _site/
npm run build -- --path-prefix=/x/        for a site that lies under a path
npm run build -- --output=DIR             writes it there

An error in a published build stops the build: all problems are listed, and the last good site stays.
Leaves with 1 then, and where this program fails on a page, with 0 otherwise.`

const {values} = readArguments(
  usage,
  {'path-prefix': {type: 'string', default: '/'}, output: {type: 'string', default: '_site'}},
  {most: 0},
)
// A third of the work on 40 builds was to make machine code, most of it of what then hardly runs: it is made later, of
// what runs often, and a journal of any size is built in less.
setFlagsFromString('--interrupt-budget=1000000')
const root = process.cwd()
const prefix = pathPrefix(values['path-prefix'])
if (!prefix) wrong(`--path-prefix=${values['path-prefix']} is no path of a site; /journal/ is one`)
const output = await outputFolder(root, values.output)
if ('refused' in output) wrong(`--output=${output.refused}`)
process.exitCode = await build(prefix, output.site).catch((error: unknown) => {
  const why = printable(diskTrouble(error, root, relative(root, output.site)))
  console.error(`Nothing was written: ${why}. The last good site stays as it was.`)
  return 1
})

async function build(prefix: string, site: string): Promise<number> {
  for (const line of await tellNewVersion(root)) console.log(line)
  const lies = () => madeFrom(root, prefix)
  const first = await lies()
  const last = await recallStanding(root, site, await shownBy(site))
  const before = saidBefore(last, first)
  if (before) {
    tellUnread(before)
    tellProblems(before)
    tellCount(before, site)
    await clearVersions(site)
    return 0
  }
  // All is made anew: once the heap has grown, it is too late.
  if (Object.keys(last.files).length === 0) clearSooner()
  const assets = await siteAssets()
  const cache = await cacheOf(root)
  const progress = progressTo(process.stderr)
  const options = {prefix, isWriting: false, assets: assets.addresses}
  const plan = () => planSite(root, options, cache, progress.told)
  const {read: planned, from} = await readAtRest(first, lies, plan).finally(progress.end)
  const isAsRead = async () => (await lies()).key === from.key
  const {unread} = planned.around
  tellUnread({unread})
  if (planned.isStopped) {
    console.error(report(planned.problems, process.stderr))
    console.error('Nothing was written: mend the errors first. The last good site stays as it was.')
    return 1
  }
  const unmade: Unmade[] = []
  const {moved, standing, said} = await publish(site, spareOf(site, last), async (version) => {
    const standing = takeUp(version, last)
    const writer = new SiteWriter(planned.all.around, standing, last)
    const made = await makeSite(planned, writer, progress.told).finally(progress.end)
    const problems = made.problems.map(withoutRemarks)
    tellProblems({problems})
    const own = made.own.flatMap((one) => one.pages)
    const shared = await journalPages(made.site, own, {cache})
    await writer.write([...shared.pages, atHand({pages: [], files: assets.files})])
    await writer.end()
    unmade.push(...[...made.own, shared, writer].flatMap((one) => one.unmade))
    // A picture that another took the place of is in no version: the last good site has all of its own.
    if (unmade.length > 0 && !(await isAsRead())) throw new Error('builds/ was changed meanwhile')
    const pages = shared.pages.reduce((sum, one) => sum + one.pages.length, own.length)
    return {standing, said: {unread, problems, builds: made.own.length, pages}}
  })
  const isFailed = said.problems.some(({problems}) => problems.some(({rule}) => rule === 'program-fails'))
  const isSound = unmade.length === 0 && !isFailed
  const isStill = await isAsRead()
  const isKnown = isSound && isStill && from.isSure
  standing.spare = spareAfter(last, standing)
  await rememberStanding(root, site, isKnown ? noteBuild(standing, from, said) : standing)
  if (moved) console.log(`What stood at ${relative(root, site)} is now at ${relative(root, moved)}.`)
  tellCount(said, site)
  if (!isStill) console.error('builds/ was changed meanwhile: build again to show it as it is now')
  for (const line of reportUnmade(unmade)) console.error(line)
  if (standing.spare && (await shownBy(site)) !== last.folder) await keepSpare(site, last.folder)
  await clearVersions(site)
  await cache.tidy()
  return isSound ? 0 : 1
}

/** The version (absolute) that a site shows. */
function shownBy(site: string): Promise<string> {
  return realpath(site).catch(() => '')
}

function tellUnread({unread}: Pick<Said, 'unread'>): void {
  for (const {file, message} of unread) console.error(printable(`${file} ${message}`))
}

function tellProblems({problems}: Pick<Said, 'problems'>): void {
  if (problems.some((one) => one.problems.length > 0)) console.error(report(problems, process.stderr))
}

function tellCount({builds, pages}: Said, site: string): void {
  const are = builds === 1 ? 'build' : 'builds'
  console.log(`${builds} ${are} on ${pages} pages in ${relative(root, site) || site}/`)
}

/** Write a version of the site and show it; one that cannot be written is taken away, and the last one stays. */
async function publish<T>(
  site: string,
  spare: string | undefined,
  write: (version: string) => Promise<T>,
): Promise<T & {moved: string | undefined}> {
  stillHere()
  const version = await newVersion(site, spare)
  try {
    await beginVersion(version)
    const written = await write(version)
    await finishVersion(version)
    stillHere()
    return {...written, moved: await swapSite(site, version)}
  } catch (error) {
    // What is still under way would bring it back: it is taken away when nothing more is written.
    process.once('exit', () => clearVersion(version))
    throw error
  }
}

/** A folder that was moved away is not begun anew where it was. */
function stillHere(): void {
  if (!existsSync(join(root, 'builds'))) throw new Error('this folder was moved while it was being read')
}

/** One that cannot be taken away is by the next build. */
function clearVersion(version: string): void {
  try {
    rmSync(version, {recursive: true, force: true})
    // Where all else was moved away, only what holds nothing goes.
    for (const above of [dirname(version), root]) rmdirSync(above)
  } catch {}
}

/** A build that succeeds is quiet about what is merely good to know; `check` lists it. */
function withoutRemarks({file, problems}: FileProblems): FileProblems {
  return {file, problems: problems.filter(({severity}) => severity !== 'remark')}
}

function wrong(message: string): never {
  console.error(asCalled(`${message}\n\n${usage}`))
  process.exit(2)
}
