import type {Nodes} from 'hast'

/** Give the text of an element, as it is read. */
export function textOf(node: Nodes): string {
  if (node.type === 'text') return node.value
  return 'children' in node ? node.children.map(textOf).join('') : ''
}
