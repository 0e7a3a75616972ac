import type {} from 'remark-stringify'
import type {Processor} from 'unified'
import {buildSyntax} from './build-syntax.ts'
import {buildFromMarkdown} from './from-markdown.ts'
import {buildToMarkdown} from './to-markdown.ts'

/** Add the syntax of build files to a unified pipeline, for reading and for writing. */
export function remarkBuildSyntax(this: Processor): void {
  const data = this.data()
  data.micromarkExtensions = [...(data.micromarkExtensions ?? []), buildSyntax]
  data.fromMarkdownExtensions = [...(data.fromMarkdownExtensions ?? []), buildFromMarkdown()]
  data.toMarkdownExtensions = [...(data.toMarkdownExtensions ?? []), buildToMarkdown()]
}
