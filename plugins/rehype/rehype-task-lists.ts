import type {Element, ElementContent, Root} from 'hast'
import {visit} from 'unist-util-visit'

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
    visit(tree, 'element', (node) => {
      const at = node.children.findIndex(isBox)
      if (at < 0 || node.tagName === 'label') return
      const end = node.children.findIndex(
        (child, i) => i > at && child.type === 'element' && blocks.has(child.tagName),
      )
      const labelled = node.children.slice(at, end < 0 ? undefined : end)
      const label: Element = {type: 'element', tagName: 'label', properties: {}, children: labelled}
      node.children.splice(at, labelled.length, label)
    })
  }
}

function isBox(node: ElementContent): boolean {
  return node.type === 'element' && node.tagName === 'input'
}
