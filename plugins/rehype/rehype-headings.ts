import GithubSlugger, {slug} from 'github-slugger'
import type {Element, Root} from 'hast'
import {toString as textOf} from 'hast-util-to-string'
import {h} from 'hastscript'
import {SKIP, visit} from 'unist-util-visit'
import type {VFile} from 'vfile'
import {elementsIn, isComputed} from './computed.ts'

/** A heading of the page below its title. */
export interface PageHeading {
  id: string
  depth: number
  title: string
}

declare module 'vfile' {
  interface DataMap {
    headings: PageHeading[]
  }
}

/**
 * Bring the author's headings under the page's title without a gap, whatever levels were written, give each an id,
 * and set the date of a day's entry as a time. All headings, the computed ones too, are then in `file.data.headings`.
 */
export function rehypeHeadings() {
  return (tree: Root, file: VFile): void => {
    const headings: PageHeading[] = []
    const ids = new GithubSlugger()
    for (const {properties} of elementsIn(tree))
      if (typeof properties.id === 'string') ids.occurrences[properties.id] = 0
    const above: number[] = []
    visit(tree, (node) => {
      if (isComputed(node)) {
        for (const element of elementsIn(node))
          if (isHeading(element) && element.properties.id) headings.push(entry(element))
        return SKIP
      }
      if (!isHeading(node)) return undefined
      const depth = depthOf(node)
      while (above.length > 0 && above.at(-1)! >= depth) above.pop()
      above.push(depth)
      node.tagName = `h${Math.min(6, above.length + 1)}`
      node.properties.id ??= ids.slug(slug(textOf(node).trim().replace(/\s/g, ' ')) || 'part')
      setDate(node)
      headings.push(entry(node))
      return undefined
    })
    file.data.headings = headings
  }
}

function isHeading(node: unknown): node is Element {
  return /^h[1-6]$/.test((node as Partial<Element>).tagName ?? '')
}

function depthOf({tagName}: Element): number {
  return Number(tagName.slice(1))
}

function entry(node: Element): PageHeading {
  return {id: String(node.properties.id), depth: depthOf(node), title: textOf(node)}
}

function setDate(node: Element): void {
  const [first] = node.children
  const [, date, rest] =
    (first?.type === 'text' && /^(\d{4}-\d\d-\d\d)(?![\w-])(.*)$/s.exec(first.value)) || []
  if (date === undefined || rest === undefined) return
  node.children.splice(0, 1, h('time', {dateTime: date}, date), {type: 'text', value: rest})
}
