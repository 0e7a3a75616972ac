import type {Element, Nodes, Root, RootContent} from 'hast'
import {raw} from 'hast-util-raw'
import {sanitize} from 'hast-util-sanitize'
import {EXIT, SKIP, visit} from 'unist-util-visit'
import {authorSchema} from './author-schema.ts'
import {type Computed, isComputed} from './computed.ts'

/**
 * Make what the author wrote harmless, before anything computed stands among it.
 * Each stretch between two computed sections is read by itself, so that HTML left open swallows none of them.
 */
export function rehypeAuthor() {
  return (tree: Root): void => {
    const harmless: RootContent[] = []
    let stretch: RootContent[] = []
    for (const node of [...tree.children, undefined]) {
      if (node && !isComputed(node)) stretch.push(node)
      else {
        harmless.push(...clean(stretch), ...(node ? [node] : []))
        stretch = []
      }
    }
    tree.children = harmless
  }
}

function clean(stretch: RootContent[]): RootContent[] {
  const written: Root = {type: 'root', children: stretch}
  const whole = hasHtml(written) ? raw(written, {passThrough: ['computed']}) : written
  const values = setAside(whole)
  const harmless = sanitize(whole, authorSchema)
  visit(harmless, 'element', (node, at, parent) => {
    const value = values[Number(node.data?.setAside ?? Number.NaN)]
    if (!value || !parent || at === undefined) return
    parent.children[at] = value
    return SKIP
  })
  return harmless.type === 'root' ? harmless.children : [harmless as RootContent]
}

function hasHtml(tree: Root): boolean {
  let found = false
  visit(tree, 'raw', () => {
    found = true
    return EXIT
  })
  return found
}

/** Put a marked, empty element for each computed value; the mark is in `data`, which no HTML can write. */
function setAside(tree: Nodes): Computed[] {
  const values: Computed[] = []
  visit(tree, isComputed, (node: Computed, at, parent) => {
    if (!parent || at === undefined) return
    const mark: Element = {
      type: 'element',
      tagName: 'span',
      properties: {},
      children: [],
      data: {setAside: values.length},
    }
    values.push(node)
    parent.children[at] = mark
    return SKIP
  })
  return values
}

declare module 'hast' {
  interface ElementData {
    setAside?: number
  }
}
