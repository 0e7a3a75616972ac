import type {Element, Root, RootContent} from 'hast'
import type {VFile} from 'vfile'
import {textOf} from '../sections/kit-table.ts'
import {walk} from '../syntax/walk.ts'
import {isComputed} from './computed.ts'

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
    const taken = idsOf(tree)
    const above: number[] = []
    walk<RootContent>(tree, (node) => {
      if (isComputed(node)) {
        walk<RootContent>(node, (element) => {
          if (isHeading(element) && element.properties.id) headings.push(entry(element))
        })
        return 'skip'
      }
      if (!isHeading(node)) return undefined
      const depth = depthOf(node)
      while (above.length > 0 && above.at(-1)! >= depth) above.pop()
      above.push(depth)
      node.tagName = `h${Math.min(6, above.length + 1)}`
      node.properties.id ??= freeId(textOf(node), taken)
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

function idsOf(tree: Root): Set<string> {
  const taken = new Set<string>()
  walk<RootContent>(tree, (node) => {
    const id = node.type === 'element' ? node.properties.id : undefined
    if (typeof id === 'string') taken.add(id)
  })
  return taken
}

/** Make an id of a heading's words, as code hosts do, with a number where it is taken. */
function freeId(title: string, taken: Set<string>): string {
  const words = title
    .toLowerCase()
    .replace(/[^\p{L}\p{N}\s_-]/gu, '')
    .trim()
    .replace(/\s/g, '-')
  const plain = words || 'part'
  let id = plain
  for (let count = 1; taken.has(id); count++) id = `${plain}-${count}`
  taken.add(id)
  return id
}

function setDate(node: Element): void {
  const [first] = node.children
  const [, date, rest] =
    (first?.type === 'text' && /^(\d{4}-\d\d-\d\d)(?![\w-])(.*)$/s.exec(first.value)) || []
  if (date === undefined || rest === undefined) return
  const time: Element = {
    type: 'element',
    tagName: 'time',
    properties: {dateTime: date},
    children: [{type: 'text', value: date}],
  }
  node.children.splice(0, 1, time, {type: 'text', value: rest})
}
