import type {Element, Root} from 'hast'
import {visit} from 'unist-util-visit'

const linking = ['href', 'src', 'srcSet', 'poster'] as const

/** Put the path prefix (`/`, `/journal/`) before every link of a tree that starts at the site's root; changes the tree. */
export function withPrefix<T extends Root | Element>(tree: T, prefix: string): T {
  if (prefix !== '/') visit(tree, 'element', (element: Element) => prefixElement(element, prefix))
  return tree
}

function prefixElement({properties}: Element, prefix: string): void {
  for (const name of linking) {
    const value = properties[name]
    if (Array.isArray(value))
      Object.assign(properties, {[name]: value.map((part) => underPrefix(String(part), prefix))})
    else if (typeof value === 'string') properties[name] = underPrefix(value, prefix)
  }
}

/** Put the prefix before one address that starts at the site's root. */
export function underPrefix(address: string, prefix: string): string {
  return /^\/(?!\/)/.test(address) ? prefix + address.slice(1) : address
}
