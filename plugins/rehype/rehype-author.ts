import type {Element, Root, RootContent} from 'hast'
import {raw} from 'hast-util-raw'
import {sanitize} from 'hast-util-sanitize'
import {walk} from '../syntax/walk.ts'
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
  const whole = (hasHtml(written) ? raw(written, {passThrough: ['computed']}) : written) as Root
  const values = setAside(whole)
  const harmless = sanitize(whole, authorSchema)
  if (harmless.type !== 'root') return [harmless]
  walk<RootContent>(harmless, (node, at, parent) => {
    const value = values[(node.type === 'element' && node.data?.setAside) || 0]
    if (!value) return
    parent.children[at] = value
    return 'skip'
  })
  return harmless.children
}

function hasHtml(tree: Root): boolean {
  let found = false
  walk<RootContent>(tree, (node) => {
    if (node.type === 'raw') found = true
  })
  return found
}

/** Put a marked, empty element for each computed value; the mark is in `data`, which no HTML can write. */
function setAside(tree: Root): (Computed | undefined)[] {
  const values: (Computed | undefined)[] = [undefined]
  walk<RootContent>(tree, (node, at, parent) => {
    if (!isComputed(node)) return
    const mark: Element = {
      type: 'element',
      tagName: 'span',
      properties: {},
      children: [],
      data: {setAside: values.length},
    }
    values.push(node)
    parent.children[at] = mark
    return 'skip'
  })
  return values
}

declare module 'hast' {
  interface ElementData {
    setAside?: number
  }
}
