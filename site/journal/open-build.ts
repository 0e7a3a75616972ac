import type {Problem} from '../../plugins/build-file/problem.ts'
import type {JournalSettings} from '../../plugins/build-file/schema.ts'
import {keyOf} from '../html/page-of.ts'
import type {ReadWork, Works} from '../work/works.ts'
import type {BuildFile} from './list-builds.ts'
import {readText} from './read-text.ts'

/** A build of the journal, read; `problems` are the reader's own. */
export interface OpenBuild extends BuildFile, ReadWork {
  text: string
  /** The key of the reading alone. */
  readKey: string
}

/** Read one build file of a journal. */
export async function openBuild(
  found: BuildFile,
  settings: JournalSettings,
  works: Works,
): Promise<OpenBuild> {
  const text = (await readText(found.path)) ?? ''
  const read = await works.read({slug: found.slug, text, journal: settings})
  if (!found.twice) return {...found, ...read, text, readKey: read.key}
  const problems = [twiceProblem(found.file, found.twice), ...read.problems]
  return {...found, ...read, text, readKey: read.key, key: keyOf(read.key, found.twice), problems}
}

const twiceProblem = (file: string, other: string): Problem => ({
  rule: 'build-twice',
  severity: 'error',
  line: 1,
  column: 1,
  endLine: 1,
  endColumn: 1,
  message: `this build is there twice, as ${file} and as ${other}; keep one`,
})
