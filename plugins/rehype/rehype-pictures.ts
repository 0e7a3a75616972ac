import type {Element, ElementContent, Root} from 'hast'
import {h} from 'hastscript'
import {SKIP, visit} from 'unist-util-visit'
import {ownTarget} from '../syntax/body.ts'
import {isComputed} from './computed.ts'

/** A picture of the build's own folder, as the file names it. */
interface Picture {
  target: string
  alt: string
  title?: string
}

/** Make what stands for a picture on the page. */
export type MakePicture = (picture: Picture) => ElementContent[]

/**
 * Put what the site makes of each picture in its place. A picture of another address becomes a link to it:
 * no page asks anything of another site.
 */
export function rehypePictures({picture = plain}: {picture?: MakePicture}) {
  return (tree: Root): void => {
    visit(tree, (node, at, parent) => {
      if (isComputed(node)) return SKIP
      if (node.type !== 'element' || node.tagName !== 'img') return undefined
      const made = isElsewhere(node) ? [linkTo(node)] : picture(asPicture(node))
      parent!.children[at!] = made.length === 1 ? made[0]! : h('span', made)
      return SKIP
    })
  }
}

function asPicture({properties: {src, alt, title}}: Element): Picture {
  return {
    target: ownTarget(String(src ?? ''), true) ?? '',
    alt: String(alt ?? ''),
    ...(title ? {title: String(title)} : {}),
  }
}

function plain({target, alt, title}: Picture): ElementContent[] {
  return [
    h('img', {src: encodeURI(target).replaceAll(/[?#]/g, encodeURIComponent), alt, title, loading: 'lazy'}),
  ]
}

function isElsewhere({properties: {src}}: Element): boolean {
  return /^(?:[a-z][a-z\d+.-]*:|\/\/)/i.test(String(src ?? ''))
}

function linkTo({properties: {src, alt}}: Element): Element {
  const href = String(src)
  return h('a', {href}, String(alt || href))
}
