import type {Element, Root} from 'hast'
import {elementsIn} from './computed.ts'

export interface LinkOptions {
  /** The file's path within the folder of builds. */
  path: string
  /** Slugs of the builds that have a page. */
  published: readonly string[]
  /** Where the site lies: `/`, or `/x/`. */
  pathPrefix: string
}

const base = 'build:/'

/**
 * Turn links to other builds' files into their pages' addresses, put the path prefix before addresses from the
 * site's root, and let links within the page find the ids that the author's own HTML has.
 * A link to a build without a page becomes plain text.
 */
export function rehypeLinks(options: LinkOptions) {
  return (tree: Root): void => {
    const elements = elementsIn(tree)
    const ids = new Set(elements.map(({properties}) => properties.id))
    for (const node of elements) {
      const {href} = node.properties
      if (node.tagName !== 'a' || typeof href !== 'string') continue
      if (href.startsWith('#')) node.properties.href = within(href, ids)
      else if (href.startsWith('/') && !href.startsWith('//'))
        node.properties.href = options.pathPrefix + href.slice(1)
      else relink(node, href, options)
    }
  }
}

/** The sanitiser puts `own-` before the author's ids. */
function within(href: string, ids: ReadonlySet<unknown>): string {
  const id = href.slice(1)
  return !ids.has(id) && ids.has(`own-${id}`) ? `#own-${id}` : href
}

function relink(node: Element, href: string, {path, published, pathPrefix}: LinkOptions): void {
  const {protocol, pathname, hash} = URL.canParse(href, base + path)
    ? new URL(href, base + path)
    : new URL(base)
  const [, slug = ''] = (protocol === 'build:' && /^\/([a-z\d-]+)(?:\.md|\/index\.md)$/.exec(pathname)) || []
  if (published.includes(slug)) node.properties.href = `${pathPrefix}builds/${slug}/${hash}`
  else if (slug) Object.assign(node, {tagName: 'span', properties: {}})
}
