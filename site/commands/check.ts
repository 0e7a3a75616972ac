import {basename} from 'node:path'
import {plainJson} from '../../plugins/words/printed-plan.ts'
import {findFile, notThere} from '../journal/find-file.ts'
import type {BuildFile} from '../journal/list-builds.ts'
import {readJournalFolder} from '../journal/read-journal.ts'
import {readOne} from '../journal/read-one.ts'
import {readSettings, settingsFiles} from '../journal/settings.ts'
import type {FileProblems} from '../site-data.ts'
import {uncachedSteps} from '../steps/run-steps.ts'
import {fails, printable, report} from './report.ts'
import {readArguments} from './usage.ts'

const usage = `npm run check              looks at every build of the journal
npm run check -- FILE …    looks at these files, wherever they lie: builds, rack.yaml, journal.yaml
npm run check -- --json    prints one JSON object for machines

Prints each problem as line:column severity message rule.
Leaves with 1 on errors and faults, with 0 otherwise.`

const {values, positionals} = readArguments(usage, {json: {type: 'boolean'}})
const root = process.cwd()
const from = process.env.INIT_CWD ?? root

async function all(): Promise<FileProblems[]> {
  const {builds, problems, others} = await readJournalFolder(root, uncachedSteps())
  for (const {file, message} of others) console.error(printable(`${file} ${message}`))
  return [...problems, ...builds].sort((a, b) => (a.file < b.file ? -1 : 1))
}

async function named(file: string): Promise<FileProblems> {
  const found = await findFile(file, from, root)
  if ('build' in found)
    return settingsFiles.includes(basename(found.build.path)) ? settings(found.build) : readOne(found, root)
  console.error(printable(notThere(file, found)))
  process.exit(2)
}

async function settings({file, path, folder}: BuildFile): Promise<FileProblems> {
  const {problems} = await readSettings(folder)
  return {file, problems: problems.find((one) => one.file === basename(path))?.problems ?? []}
}

const files = await (positionals.length > 0 ? Promise.all(positionals.map(named)) : all()).catch(
  (error: Error) => {
    console.error(printable(error.message))
    process.exit(1)
  },
)
const failed = fails(files)
console.log(
  values.json
    ? plainJson({files: files.map(({file, problems}) => ({file, problems})), failed})
    : report(files),
)
process.exitCode = failed ? 1 : 0
