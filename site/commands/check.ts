import {readFile} from 'node:fs/promises'
import {basename} from 'node:path'
import {plainJson} from '../../plugins/words/printed-plan.ts'
import {type Found, findFile, notThere} from '../journal/find-file.ts'
import type {BuildFile} from '../journal/list-builds.ts'
import {readJournalFolder} from '../journal/read-journal.ts'
import {readOne} from '../journal/read-one.ts'
import {textReader} from '../journal/read-text.ts'
import {readSettings, settingsFiles} from '../journal/settings.ts'
import {asCalled} from '../kit/called.ts'
import type {FileProblems} from '../kit/site-data.ts'
import {uncachedSteps} from '../steps/run-steps.ts'
import {mendFile} from './mend-file.ts'
import {fails, printable, report} from './report.ts'
import {readArguments} from './usage.ts'

const usage = `npm run check              looks at every build of the journal
npm run check -- FILE …    looks at these files, wherever they lie: builds, rack.yaml, journal.yaml
npm run check -- --json    prints one JSON object for machines
npm run check -- FILE --mend      writes into FILE what is certain, and shows each change
npm run check -- FILE --mend=ask  asks about each change, one by one

Prints each problem as line:column severity message rule.
Leaves with 1 on errors and faults, with 0 otherwise.`

// An option with a value or without one is two to the reader of arguments.
const words = process.argv.map((word) => (word === '--mend=ask' ? '--mend-ask' : word))
process.argv.splice(0, words.length, ...words)
const {values, positionals} = readArguments(usage, {
  json: {type: 'boolean'},
  mend: {type: 'boolean'},
  'mend-ask': {type: 'boolean'},
})
const mends = values.mend || values['mend-ask']
if (mends && positionals.length === 0) {
  console.error(asCalled(`the file to mend is missing\n\n${usage}`))
  process.exit(2)
}

type Named = Extract<Found, {build: BuildFile}>

const root = process.cwd()
const from = process.env.INIT_CWD ?? root

async function all(): Promise<FileProblems[]> {
  const {builds, problems, others} = await readJournalFolder(root, uncachedSteps())
  for (const {file, message} of others) console.error(printable(`${file} ${message}`))
  return [...problems, ...builds].sort((a, b) => (a.file < b.file ? -1 : 1))
}

async function named(file: string): Promise<FileProblems> {
  const found = await findFile(file, from, root)
  if ('build' in found) {
    if (mends) await mend(found)
    return settingsFiles.includes(basename(found.build.path)) ? settings(found.build) : readOne(found, root)
  }
  console.error(printable(notThere(file, found)))
  process.exit(2)
}

/** Mend a file; what is left is then looked at like any other. */
async function mend({build: {path, file, slug}, journalFolder}: Named): Promise<void> {
  const {settings: journal} = await readSettings(journalFolder)
  const read = textReader(basename(path), slug, journal)
  const say = values.json ? () => {} : (line: string) => console.log(line)
  await mendFile({path, file, read, asks: Boolean(values['mend-ask']) && !values.json, say})
}

async function settings({file, path, folder}: BuildFile): Promise<FileProblems> {
  const {problems} = await readSettings(folder)
  return {file, problems: problems.find((one) => one.file === basename(path))?.problems ?? []}
}

/** The texts of the files that were mended, to show what can be pasted. */
async function texts(all: readonly FileProblems[]): Promise<Map<string, string>> {
  const found = new Map<string, string>()
  for (const [at, {file}] of all.entries()) {
    const one = await findFile(positionals[at]!, from, root)
    if ('build' in one) found.set(file, await readFile(one.build.path, 'utf8'))
  }
  return found
}

// One after another where files are written and questions asked.
async function eachNamed(): Promise<FileProblems[]> {
  const found: FileProblems[] = []
  for (const file of positionals) found.push(await named(file))
  return found
}

const files = await (positionals.length > 0 ? eachNamed() : all()).catch((error: Error) => {
  console.error(printable(error.message))
  process.exit(1)
})
const failed = fails(files)

console.log(
  values.json
    ? plainJson({files: files.map(({file, problems}) => ({file, problems})), failed})
    : report(files, process.stdout, mends ? await texts(files) : undefined),
)
process.exitCode = failed ? 1 : 0
