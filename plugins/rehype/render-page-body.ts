import type {Root} from 'mdast'
import rehypeStringify from 'rehype-stringify'
import remarkRehype from 'remark-rehype'
import {unified} from 'unified'
import {VFile} from 'vfile'
import {type KnownBuild, remarkBuild} from '../remark-build.ts'
import type {Failed} from '../sections/fill-body.ts'
import type {Relatives} from '../sections/section.ts'
import {buildFileParser} from '../syntax/parse-build-file.ts'
import {computedHandlers, rehypeComputed} from './computed.ts'
import {rehypeAuthor} from './rehype-author.ts'
import {rehypeAuthorTables, rehypeFootnotes, rehypeTaskLists} from './rehype-author-blocks.ts'
import {type PageHeading, rehypeHeadings} from './rehype-headings.ts'
import {type LinkOptions, rehypeLinks} from './rehype-links.ts'
import {type MakePicture, rehypePictures} from './rehype-pictures.ts'

/** All that the body of a build's page is made of, so that a page can be kept by these inputs. */
export interface PageInput extends KnownBuild, LinkOptions {
  /** The build file as read. */
  text: string
  /** The tree of `text`, where it is parsed already (parse-build-file.ts); it is used up. */
  tree?: Root
  relatives?: Relatives
  /** Told of a section that fails, which is a fault of this program; without it, the fault is thrown. */
  failed?: Failed
  /** Make what stands for a picture of the build's folder (`photos/front.jpg`); left out: a plain `<img>`. */
  picture?: MakePicture
}

/** `headings` are those below the page's title, in order. */
export interface PageBody {
  html: string
  headings: readonly PageHeading[]
}

/**
 * Render the body of a build's page: prose, days and computed sections, as HTML that holds nothing of the author's
 * that could run or reach outside. The page's own `<h1>`, facts and frame stand around it.
 */
export function renderPageBody(input: PageInput): PageBody {
  const {text, path, tree, relatives, build, plan, problems, failed} = input
  const file = new VFile({path, value: text})
  const known = {build, plan, problems}
  const page = unified()
    .use(buildFileParser)
    .use(remarkBuild, {known, relatives, failed})
    .use(remarkRehype, {allowDangerousHtml: true, handlers: computedHandlers, clobberPrefix: ''})
    .use(rehypeAuthor)
    .use(rehypeFootnotes)
    .use(rehypeAuthorTables)
    .use(rehypeTaskLists)
    .use(rehypePictures, input)
    .use(rehypeHeadings)
    .use(rehypeLinks, input)
    .use(rehypeComputed)
    .use(rehypeStringify)
  const html = page.stringify(page.runSync(tree ?? page.parse(file), file), file)
  return {html, headings: file.data.headings ?? []}
}
