import type {Root} from 'mdast'
import remarkFrontmatter from 'remark-frontmatter'
import remarkGfm from 'remark-gfm'
import remarkParse from 'remark-parse'
import {unified} from 'unified'
import {remarkBuildSyntax} from './remark-build-syntax.ts'

const parser = unified()
  .use(remarkParse)
  .use(remarkFrontmatter)
  .use(remarkGfm)
  .use(remarkBuildSyntax)
  .freeze()

/** Parse a whole build file, front matter included, so that every position is a place in the file. */
export function parseBuildFile(text: string): Root {
  return parser.parse(text)
}
