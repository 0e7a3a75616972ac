import type {Root} from 'mdast'
import remarkFrontmatter from 'remark-frontmatter'
import remarkGfm from 'remark-gfm'
import remarkParse from 'remark-parse'
import {type Plugin, type Processor, unified} from 'unified'
import type {Place} from '../build-file/schema/problem.ts'
import {buildSyntax} from './build-syntax.ts'
import {buildFromMarkdown, buildToMarkdown} from './nodes.ts'
import {findTooMuch, findTooNested, type TooMuch} from './too-much.ts'

/** Add the syntax of build files to a unified pipeline, for reading and for writing. */
export function remarkBuildSyntax(this: Processor): void {
  const data = this.data()
  data.micromarkExtensions = [...(data.micromarkExtensions ?? []), buildSyntax]
  data.fromMarkdownExtensions = [...(data.fromMarkdownExtensions ?? []), buildFromMarkdown()]
  data.toMarkdownExtensions = [...(data.toMarkdownExtensions ?? []), buildToMarkdown()]
}

const parser = unified()
  .use(remarkParse)
  .use(remarkFrontmatter)
  .use(remarkGfm)
  .use(remarkBuildSyntax)
  .freeze()

declare module 'mdast' {
  interface RootData {
    /** Where the prose is nested so deep that it is not read. */
    tooNested?: Place
    /** Where the prose has so much of something that it is not read. */
    tooMuch?: TooMuch
  }
}

/**
 * Parse a whole build file, front matter included, so that every position is a place in the file.
 * In the place of prose that is nested too deep, or has too much of something, stands one line that says so; its
 * place is in `data.tooNested` or `data.tooMuch`.
 */
export function parseBuildFile(text: string): Root {
  const tooNested = findTooNested(text)
  if (tooNested) return oneLine('The prose is nested too deep to be shown.', {tooNested})
  const tooMuch = findTooMuch(text)
  if (tooMuch) return oneLine('The prose is too much to be shown.', {tooMuch})
  return parser.parse(text)
}

const oneLine = (value: string, data: Root['data']): Root => ({
  type: 'root',
  data,
  children: [{type: 'paragraph', children: [{type: 'text', value}]}],
})

/** Make a unified pipeline read build files. */
export const buildFileParser: Plugin<[], string, Root> = function () {
  this.parser = (text) => parseBuildFile(text)
}
