import {lstat, mkdir, readFile, rm, writeFile} from 'node:fs/promises'
import {join} from 'node:path'
import {createInterface} from 'node:readline/promises'
import {readLeaf} from '../../plugins/build-file/quantities/read-leaf.ts'
import {nearest} from '../../plugins/build-file/schema/nearest.ts'
import {startFrom} from '../../plugins/build-file/start-from.ts'
import {newBuild} from '../../plugins/build-file/writing/new-build.ts'
import {mendedPaths} from '../../plugins/plan/as-built/setting-up.ts'
import {comparisons, fewestBuilds, habits} from '../../plugins/plan/deviations.ts'
import {type UsualKindName, usualKinds} from '../../plugins/tables/usual-kinds.ts'
import {habitInWords} from '../../plugins/words/measured.ts'
import {listBuilds} from '../journal/list-builds.ts'
import {readJournalFolder} from '../journal/read-journal.ts'
import {readSettings} from '../journal/settings.ts'
import {asCalled} from '../kit/called.ts'
import {diskTrouble} from '../kit/disk-trouble.ts'
import {uncachedSteps} from '../steps/run-steps.ts'
import {asideFor, countOfBuilds, emptyJournal} from './empty-journal.ts'
import {printable} from './report.ts'
import {readArguments} from './usage.ts'

const kinds = Object.entries(usualKinds).map(([name, {says}]) => `  ${name.padEnd(21)} ${says}`)
const usage = `npm run new -- SLUG               a new build file, builds/SLUG.md, ready to fill
npm run new -- SLUG --from OTHER  its dimensions from a past build, as measured where measured
npm run new -- SLUG --kind NAME   from one of the usual kinds:
${kinds.join('\n')}
  --title "TITLE"   --scale LENGTH   --units in|mm
npm run new -- --empty            an empty journal; what is in builds/ is moved aside, after asking (--yes: without)

SLUG is lower-case letters, digits and hyphens. Nothing is ever overwritten.`

const {values, positionals} = readArguments(
  usage,
  {
    from: {type: 'string'},
    kind: {type: 'string'},
    title: {type: 'string'},
    scale: {type: 'string'},
    units: {type: 'string'},
    empty: {type: 'boolean'},
    yes: {type: 'boolean'},
  },
  {most: 1},
)
/** Half of what a disk takes for a name, so that whatever is made beside it has room. */
const longestSlug = 120

const root = process.cwd()
const isAsked = process.stdin.isTTY && process.stdout.isTTY

function wrong(message: string, code = 2): never {
  console.error(asCalled(code === 2 ? `${message}\n\n${usage}` : message))
  process.exit(code)
}

async function ask(question: string, fallback: string): Promise<string> {
  if (!isAsked) return fallback
  const lines = createInterface({input: process.stdin, output: process.stdout})
  const answer = (await lines.question(`${question}${fallback ? ` [${fallback}]` : ''} `)).trim()
  lines.close()
  return answer || fallback
}

if (values.empty) {
  if (positionals.length > 0) wrong('--empty takes no slug')
  process.exit(await empty())
}

const slug = positionals[0] ?? (await ask('A short name for its address, such as needle-box:', ''))
if (!/^[a-z0-9-]+$/.test(slug))
  wrong(
    slug
      ? `"${slug}" is no slug: lower-case letters, digits and hyphens, such as needle-box`
      : 'the slug is missing',
  )
if (slug === 'readme') wrong('a file readme.md is never a build; choose another slug')
if (slug.length > longestSlug) wrong(`a slug has at most ${longestSlug} characters`)
if (values.from !== undefined && values.kind !== undefined) wrong('--from and --kind exclude each other')
const units = values.units === 'in' || values.units === 'mm' ? values.units : undefined
if (values.units !== undefined && !units) wrong(`--units takes in or mm, not "${values.units}"`)

const target = join(root, 'builds', `${slug}.md`)
for (const file of [`${slug}.md`, `${slug}/index.md`])
  if (await isThere(join(root, 'builds', file)))
    wrong(`builds/${file} is there already; choose another slug`, 1)

const {settings} = await readSettings(join(root, 'builds'))
const journalUnits = units ?? settings.units?.value ?? 'in'

const begun = values.from === undefined ? await fromKind() : await fromPast(values.from)
const text = withHabits(begun, await habitsHere())
try {
  await mkdir(join(root, 'builds'), {recursive: true})
  await writeFile(target, text, {flag: 'wx'})
} catch (error) {
  if ((error as NodeJS.ErrnoException).code !== 'EEXIST') await rm(target, {force: true}).catch(() => {})
  wrong(`builds/${slug}.md is not written: ${printable(diskTrouble(error, root, 'builds'))}`, 1)
}
console.log(
  asCalled(`builds/${slug}.md is there, ready to fill. npm start shows its page at /builds/${slug}/`),
)

/** Begin an empty journal, after asking; without a terminal nothing is moved unless --yes says so. */
async function empty(): Promise<number> {
  const aside = await asideFor(root)
  const what =
    aside && `What is in builds/ (${await countOfBuilds(root)} files and folders) moves to ${aside}/.`
  if (what && !values.yes) {
    if (!isAsked)
      console.error(`${what} Nothing was moved: this asks on a terminal; --yes moves without asking.`)
    const isMeant = isAsked && /^y(es)?$/i.test(await ask(`${what} Begin an empty journal? y or n:`, 'n'))
    if (!isMeant) return 1
  }
  await emptyJournal(root, aside).catch((error: unknown) =>
    wrong(`Nothing was moved: ${printable(diskTrouble(error, root, 'builds'))}`, 1),
  )
  if (aside) console.log(`What was in builds/ is now in ${aside}/, whole.`)
  console.log(
    asCalled('builds/journal.yaml is there, ready to fill; npm run new -- SLUG begins the first build.'),
  )
  return 0
}

/** Hold the scale length that was asked for to one that an instrument can have, in the units it is read in. */
function checkScale(inUnits: 'in' | 'mm'): void {
  if (values.scale === undefined) return
  const limits = {min: 100, max: 2000}
  const reading = readLeaf('length', values.scale, {units: inUnits, limits})
  if (reading.ok) return
  const other = inUnits === 'in' ? 'mm' : 'in'
  const isBare = /^[\d\s./]+$/.test(values.scale)
  const isMeant = isBare && readLeaf('length', values.scale, {units: other, limits}).ok
  wrong(
    isMeant
      ? `--scale: ${values.scale} ${inUnits} is no scale length, and the build is in ${inUnits}; were ${values.scale} ${other} meant? Then write --scale "${values.scale} ${other}"`
      : `--scale: ${reading.message}`,
  )
}

async function fromKind(): Promise<string> {
  checkScale(journalUnits)
  const named = values.kind ?? (await ask(`Which kind?\n${kinds.join('\n')}\n`, 'three-string-slide'))
  if (!Object.hasOwn(usualKinds, named)) {
    const close = nearest(named, Object.keys(usualKinds))
    wrong(`there is no kind ${named}${close ? `; was ${close} meant?` : ''}`)
  }
  const title = values.title ?? (await ask('Its title:', titleOf(slug)))
  return newBuild(usualKinds[named as UsualKindName], {
    title,
    ...(values.scale === undefined ? {} : {scale: values.scale}),
    units: journalUnits,
  })
}

async function fromPast(from: string): Promise<string> {
  const {builds} = await readJournalFolder(root, uncachedSteps()).catch((error: Error) =>
    wrong(error.message, 1),
  )
  const past = builds.find((build) => build.slug === from)
  if (!past) {
    const close = nearest(
      from,
      builds.map((build) => build.slug),
    )
    return wrong(`there is no build ${from}${close ? `; was ${close} meant?` : ''}`)
  }
  checkScale(units ?? past.build.values.units?.value ?? journalUnits)
  const title = values.title ?? (await ask('Its title:', titleOf(slug)))
  const started = startFrom(past.text, from, {
    journal: settings,
    title,
    mended: mendedPaths(past.plan.settingUp),
    ...(values.scale === undefined ? {} : {scale: values.scale}),
    ...(units === undefined ? {} : {units}),
  })
  return started ?? wrong(`${past.file} cannot be read; npm run check says where, and what would mend it`, 1)
}

/** Find what this workshop does to its plans again and again; nothing where too little was measured. */
async function habitsHere(): Promise<string[]> {
  const {builds: listed} = await listBuilds(root).catch(() => ({builds: []}))
  const texts = await Promise.all(listed.map(({path}) => readFile(path, 'utf8').catch(() => '')))
  if (texts.filter((one) => /^measured:/m.test(one)).length < fewestBuilds) return []
  const {builds} = await readJournalFolder(root, uncachedSteps()).catch(() => ({builds: []}))
  return habits(comparisons(builds)).map((habit) => habitInWords(habit, journalUnits))
}

/** Put what this workshop does before the end of the dimensions, as remarks. */
function withHabits(written: string, found: readonly string[]): string {
  if (found.length === 0) return written
  const remarks = ['As this workshop’s measures have it:', ...found].map((line) => `# ${line}\n`).join('')
  return written.replace(/(?<=\n)---\n/, () => `${remarks}---\n`)
}

function titleOf(name: string): string {
  const words = name.replaceAll('-', ' ').trim()
  return words.charAt(0).toUpperCase() + words.slice(1)
}

async function isThere(path: string): Promise<boolean> {
  return lstat(path).then(
    () => true,
    () => false,
  )
}
