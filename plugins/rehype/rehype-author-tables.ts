import type {Root, RootContent} from 'hast'
import {walk} from '../syntax/walk.ts'
import {isComputed} from './computed.ts'

/** Give the author's tables scopes, and a box to scroll in; alignment becomes a class, where it is to the right. */
export function rehypeAuthorTables() {
  return (tree: Root): void => {
    walk<RootContent>(tree, (node, at, parent) => {
      if (isComputed(node)) return 'skip'
      if (node.type !== 'element' || node.tagName !== 'table') return
      walk<RootContent>(node, tidyCell)
      parent.children[at] = {
        type: 'element',
        tagName: 'div',
        properties: {className: ['scrolling'], tabIndex: 0, role: 'group', ariaLabel: 'Table'},
        children: [node],
      }
      return 'skip'
    })
  }
}

function tidyCell(node: RootContent): void {
  if (node.type !== 'element' || (node.tagName !== 'th' && node.tagName !== 'td')) return
  const {align, ...properties} = node.properties
  node.properties = {...properties, ...(align === 'right' && {className: ['number']})}
  if (node.tagName === 'th') node.properties.scope ??= 'col'
}
