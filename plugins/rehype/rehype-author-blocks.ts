import type {Element, ElementContent, Root, RootContent} from 'hast'
import {h} from 'hastscript'
import {SKIP, visit} from 'unist-util-visit'
import {isComputed} from './computed.ts'

/** Give the author's tables scopes, and a box to scroll in; alignment becomes a class, where it is to the right. */
export function rehypeAuthorTables() {
  return (tree: Root): void => {
    visit(tree, (node, at, parent) => {
      if (isComputed(node)) return SKIP
      if (node.type !== 'element' || node.tagName !== 'table') return undefined
      visit(node, 'element', tidyCell)
      parent!.children[at!] = h('div.scrolling', node)
      return SKIP
    })
  }
}

function tidyCell(node: Element): void {
  if (node.tagName !== 'th' && node.tagName !== 'td') return
  const {align, ...properties} = node.properties
  node.properties = {...properties, ...(align === 'right' && {className: ['number']})}
  if (node.tagName === 'th') node.properties.scope ??= 'col'
}

// biome-ignore format: words in lines
const blocks = new Set([
  'blockquote', 'details', 'div', 'dl', 'figure', 'hr', 'ol', 'p', 'pre', 'table', 'ul',
])

/** Make the text of each of the author's task list items the label of its box. */
export function rehypeTaskLists() {
  return (tree: Root): void => {
    visit(tree, (node) => {
      if (isComputed(node)) return SKIP
      if (node.type !== 'element' || node.tagName === 'label') return undefined
      const at = node.children.findIndex(isBox)
      if (at < 0) return undefined
      const end = node.children.findIndex(
        (child, i) => i > at && child.type === 'element' && blocks.has(child.tagName),
      )
      const [box, ...words] = node.children.slice(at, end < 0 ? undefined : end)
      node.children.splice(at, words.length + 1, h('label', [box!, h('span', words)]))
      return undefined
    })
  }
}

function isBox(node: ElementContent): boolean {
  return node.type === 'element' && node.tagName === 'input'
}

/** Bring the author's footnotes up to the end of the prose, before the computed sections that follow it. */
export function rehypeFootnotes() {
  return (tree: Root): void => {
    const notes = tree.children.findLast(isFootnotes)
    if (!notes) return
    const others = tree.children.filter((node) => node !== notes)
    const end = others.findLastIndex((node) => node.type === 'element')
    const after = others.findIndex((node, at) => at > end && isComputed(node))
    if (after < 0) return
    others.splice(after, 0, notes, {type: 'text', value: '\n'})
    tree.children = others
  }
}

function isFootnotes(node: RootContent): boolean {
  return node.type === 'element' && node.properties.dataFootnotes !== undefined
}
