import type {Element, Root} from 'hast'
import {visit} from 'unist-util-visit'

const linking = ['href', 'src', 'poster'] as const

/** Put the path prefix (`/`, `/journal/`) before every link of a tree that starts at the site's root; changes the tree. */
export function withPrefix<T extends Root | Element>(tree: T, prefix: string): T {
  if (prefix !== '/') visit(tree, 'element', (element: Element) => prefixElement(element, prefix))
  return tree
}

function prefixElement({properties}: Element, prefix: string): void {
  for (const name of linking) {
    const value = properties[name]
    if (typeof value === 'string') properties[name] = underPrefix(value, prefix)
  }
  // A list of addresses with their widths, a comma between.
  const {srcSet} = properties
  if (typeof srcSet === 'string')
    properties.srcSet = srcSet
      .split(', ')
      .map((one) => underPrefix(one, prefix))
      .join(', ')
}

/** Put the prefix before one address that starts at the site's root. */
export function underPrefix(address: string, prefix: string): string {
  return /^\/(?!\/)/.test(address) ? prefix + address.slice(1) : address
}
