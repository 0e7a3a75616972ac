import type {Root, RootContent} from 'hast'
import type {Root as MarkdownRoot} from 'mdast'
import rehypeStringify from 'rehype-stringify'
import remarkRehype from 'remark-rehype'
import {unified} from 'unified'
import {VFile} from 'vfile'
import {measuredByDay} from '../plan/as-built/as-built.ts'
import {type KnownBuild, remarkBuild} from '../remark-build.ts'
import type {Failed} from '../sections/fill-body.ts'
import type {Relatives} from '../sections/section.ts'
import {buildFileParser} from '../syntax/parse-build-file.ts'
import type {SectionName} from '../tables/section-names.ts'
import {number} from '../words/quantities.ts'
import {computedHandlers, rehypeComputed, remarkOwnElements} from './computed.ts'
import {rehypeAuthor} from './rehype-author.ts'
import {rehypeAuthorTables, rehypeFootnotes, rehypeTaskLists} from './rehype-author-blocks.ts'
import {rehypeDays} from './rehype-days.ts'
import {type KeepDrawing, rehypeDrawings} from './rehype-drawings.ts'
import {type PageHeading, rehypeHeadings} from './rehype-headings.ts'
import {type LinkOptions, rehypeLinks} from './rehype-links.ts'
import {type MakePicture, rehypePictures} from './rehype-pictures.ts'
import {rehypeRecordings} from './rehype-recordings.ts'

/** All that the body of a build's page is made of, so that a page can be kept by these inputs. */
export interface PageInput extends KnownBuild, LinkOptions {
  /** The build file as read. */
  text: string
  /** The tree of `text`, where it is parsed already (parse-build-file.ts); it is used up. */
  tree?: MarkdownRoot
  relatives?: Relatives
  /** Told of a section that fails, which is a fault of this program; without it, the fault is thrown. */
  failed?: Failed
  /** Leave out what warns the maker: the page is of a finished instrument, and for whoever looks at it. */
  isForVisitors?: boolean
  /** Keep a folded drawing as a file of its own; left out, it stays in the page. */
  keepDrawing?: KeepDrawing
  /** Make what stands for a picture of the build's folder (`photos/front.jpg`); left out: a plain `<img>`. */
  picture?: MakePicture
}

/** `headings` are those below the page's title, in order. */
export interface PageBody {
  /** How the build stands, in a line. */
  state: string
  drawing: string
  /** The prose and the other sections. */
  html: string
  headings: readonly PageHeading[]
}

/**
 * Render the body of a build's page: prose, days and computed sections, as HTML that holds nothing of the author's
 * that could run or reach outside. The page's own `<h1>`, facts and frame stand around it.
 */
export function renderPageBody(input: PageInput): PageBody {
  const {text, path, tree, relatives, build, plan, problems, failed, isForVisitors} = input
  const file = new VFile({path, value: text})
  const known = {build, plan, problems}
  const page = unified()
    .use(buildFileParser)
    .use(remarkBuild, {known, relatives, failed, isForVisitors})
    .use(remarkOwnElements)
    .use(remarkRehype, {allowDangerousHtml: true, handlers: computedHandlers, clobberPrefix: ''})
    .use(rehypeAuthor)
    .use(rehypeFootnotes)
    .use(rehypeAuthorTables)
    .use(rehypeTaskLists)
    .use(rehypePictures, input)
    .use(rehypeRecordings, input)
    .use(rehypeHeadings)
    .use(rehypeDays, {
      told: daysInWords(build),
      isNewestOpen: plan.status === 'on the bench',
      measured: measuredByDay(plan.asBuilt),
    })
    .use(rehypeLinks, input)
    .use(rehypeComputed)
    .use(rehypeDrawings, input)
    .use(rehypeStringify)
  const {children} = page.runSync(tree ?? page.parse(file), file)
  // What comes first stands by itself on the page, above its way to jump and beside its text.
  const first = children.filter((node) => node.type !== 'text').slice(0, 2)
  const named = (name: SectionName) => first.filter((node) => isSection(node, name))
  const [state, drawing] = [named('before-you-cut'), named('drawing')]
  const apart = new Set<RootContent>([...state, ...drawing])
  const rest = children.filter((node) => !apart.has(node))
  const written = (nodes: RootContent[]) => page.stringify({type: 'root', children: nodes} as Root, file)
  return {
    state: written(state),
    drawing: written(drawing),
    html: written(rest),
    headings: file.data.headings ?? [],
  }
}

/** Count days and hours at the bench: `6 days, 11.5 h`. */
function daysInWords({days, minutes}: PageInput['build']): string {
  const count = days.length === 1 ? 'one day' : `${days.length} days`
  return minutes > 0 ? `${count}, ${number(minutes / 60, 1)} h` : count
}

const isSection = (node: RootContent, name: SectionName): boolean =>
  node.type === 'element' && String(node.properties.className).includes(`computed-${name}`)
