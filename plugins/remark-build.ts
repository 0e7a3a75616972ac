import type {Root} from 'mdast'
import type {Processor} from 'unified'
import type {VFile} from 'vfile'
import {inOrder, readBuild} from './build-file/read.ts'
import {type Surroundings, slugOf} from './build-file/schema/build.ts'
import type {Problem} from './build-file/schema/problem.ts'
import type {JournalSettings} from './build-file/schema/schema.ts'
import {checks} from './checks/checks.ts'
import type {Piece} from './plan/kit/context.ts'
import type {Settled} from './plan/kit/settled.ts'
import {type Plan, planBuild} from './plan/plan.ts'
import {settle} from './plan/settle.ts'
import {type Failed, fillBody} from './sections/fill-body.ts'
import {kitToMarkdown} from './sections/kit-to-markdown.ts'
import type {Relatives} from './sections/section.ts'
import {readBody} from './syntax/body.ts'
import {remarkBuildSyntax} from './syntax/parse-build-file.ts'

/** A build with all that follows from it. */
export interface KnownBuild {
  build: Settled
  plan: Plan
  problems: readonly Problem[]
}

export interface BuildOptions {
  /** The build's slug; left out, it comes from the file's path. */
  slug?: string
  /** The journal's settings, which a build inherits. */
  journal?: JournalSettings
  /** The pieces of wood that this build may cut. */
  pieces?: readonly Piece[]
  /** The build's folder and the rest of the journal, for the checks that look past the file. */
  surroundings?: Surroundings | undefined
  /** What this build was copied from, and what was copied from it. */
  relatives?: Relatives | undefined
  /** The build, where it is read, planned and checked already. */
  known?: KnownBuild
  /** Leave out what warns the maker: the page is of a finished instrument, and for whoever looks at it. */
  isForVisitors?: boolean | undefined
  /** Told of a section that fails; without it, the fault is thrown. */
  failed?: Failed | undefined
}

/**
 * Turn a build file into a page: fill its directives and value references, add the sections that it does not
 * place, and report every problem as a message of the file. Use it after remark-frontmatter and remark-gfm;
 * what was computed is in `file.data.build`.
 */
export function remarkBuild(this: Processor, options: BuildOptions = {}) {
  remarkBuildSyntax.call(this)
  const data = this.data()
  data.toMarkdownExtensions = [...(data.toMarkdownExtensions ?? []), kitToMarkdown]
  return (tree: Root, file: VFile): void => {
    const source = String(file)
    const known = options.known ?? knowBuild(tree, source, options.slug ?? slugOf(file.path ?? ''), options)
    file.data.build = known
    reportProblems(file, known.problems)
    const {relatives, failed, isForVisitors} = options
    fillBody(tree, {...known, source, relatives, failed, isForVisitors})
  }
}

function knowBuild(tree: Root, source: string, slug: string, options: BuildOptions): KnownBuild {
  const {journal = {}, pieces = [], surroundings} = options
  const body = () => readBody(tree)
  const {build, problems} = readBuild(source, {slug, journal, body, surroundings})
  const settled = settle(build, journal)
  const plan = planBuild(settled, {journal, pieces})
  return {build: settled, plan, problems: inOrder([...problems, ...checks(settled, plan)])}
}

declare module 'vfile' {
  interface DataMap {
    build: KnownBuild
  }
}

/**
 * Report problems as messages of the file: errors and faults as fatal, warnings as such, remarks as information.
 * Nothing is thrown. Each has its place, its rule, the page that explains it, and what would do.
 */
function reportProblems(file: VFile, problems: readonly Problem[]): void {
  for (const problem of problems) {
    const {rule, severity, message, expected, note, cause} = problem
    const place = {
      start: {line: problem.line, column: problem.column},
      end: {line: problem.endLine, column: problem.endColumn},
    }
    const report = file.message(message, {place, ruleId: rule, source: 'nut-to-bridge'})
    report.fatal = severity === 'remark' ? undefined : severity !== 'warning'
    report.url = `/rules/#${rule}`
    if (expected) report.expected = expected
    if (note) report.note = note
    if (cause) report.cause = new Error(`it disagrees with line ${cause.line}, column ${cause.column}`)
  }
}
