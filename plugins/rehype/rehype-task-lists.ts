import type {Element, ElementContent, Root, RootContent} from 'hast'
import {walk} from '../syntax/walk.ts'
import {isComputed} from './computed.ts'

const blocks = new Set([
  'p',
  'ul',
  'ol',
  'div',
  'table',
  'pre',
  'blockquote',
  'dl',
  'figure',
  'details',
  'hr',
])

/** Make the text of each of the author's task list items the label of its box. */
export function rehypeTaskLists() {
  return (tree: Root): void => {
    walk<RootContent>(tree, (node) => {
      if (isComputed(node)) return 'skip'
      if (node.type !== 'element' || node.tagName === 'label') return undefined
      const at = node.children.findIndex(isBox)
      if (at < 0) return undefined
      const end = node.children.findIndex(
        (child, i) => i > at && child.type === 'element' && blocks.has(child.tagName),
      )
      const [box, ...words] = node.children.slice(at, end < 0 ? undefined : end)
      const text: Element = {type: 'element', tagName: 'span', properties: {}, children: words}
      const label: Element = {type: 'element', tagName: 'label', properties: {}, children: [box!, text]}
      node.children.splice(at, words.length + 1, label)
      return undefined
    })
  }
}

function isBox(node: ElementContent): boolean {
  return node.type === 'element' && node.tagName === 'input'
}
