import {readBody} from '../../plugins/build-file/body.ts'
import type {Build} from '../../plugins/build-file/build.ts'
import type {Problem} from '../../plugins/build-file/problem.ts'
import {readBuild} from '../../plugins/build-file/read.ts'
import type {JournalSettings} from '../../plugins/build-file/schema.ts'
import type {BuildFile} from './list-builds.ts'
import {listFolder} from './list-folder.ts'
import {readText} from './read-text.ts'

/** A build of the journal, read; `problems` are the reader's own. */
export interface OpenBuild extends BuildFile {
  text: string
  build: Build
  problems: Problem[]
}

/** Read one build file of a journal whose other builds are known by name. */
export async function openBuild(
  found: BuildFile,
  settings: JournalSettings,
  others: ReadonlySet<string>,
): Promise<OpenBuild> {
  const isFlat = !found.file.endsWith('/index.md')
  const text = (await readText(found.path)) ?? ''
  const files = await listFolder(found.folder, isFlat ? others : undefined)
  const {build, problems} = readBuild(text, {
    slug: found.slug,
    journal: settings,
    surroundings: {files, builds: []},
    body: readBody,
  })
  const twice = found.twice ? [twiceProblem(found.file, found.twice)] : []
  return {...found, text, build, problems: [...twice, ...problems]}
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
