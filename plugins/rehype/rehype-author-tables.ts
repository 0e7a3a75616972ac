import type {Element, Root} from 'hast'
import {SKIP, visit} from 'unist-util-visit'
import {isComputed} from './computed.ts'

/** Give the author's tables scopes, and a box to scroll in; alignment becomes a class, where it is to the right. */
export function rehypeAuthorTables() {
  return (tree: Root): void => {
    visit(tree, (node, at, parent) => {
      if (isComputed(node)) return SKIP
      if (node.type !== 'element' || node.tagName !== 'table' || !parent || at === undefined) return undefined
      visit(node, 'element', tidyCell)
      parent.children[at] = {
        type: 'element',
        tagName: 'div',
        properties: {className: ['scrolling'], tabIndex: 0, role: 'group', ariaLabel: 'Table'},
        children: [node],
      }
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
