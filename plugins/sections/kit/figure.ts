import type {Element, ElementContent} from 'hast'
import {type Inline, inline} from './inline.ts'
import type {Drawing} from './nodes.ts'
import {toElements} from './to-elements.ts'

/**
 * Put a drawing or a plot on the page: a whole `<svg>` as hast, which names itself by its own title and desc.
 * `alt` says what it shows where only text can stand; the caption is read by everyone.
 */
export function figure(svg: Element, {alt, caption}: {alt: string; caption?: readonly Inline[]}): Drawing {
  const below: ElementContent[] = caption
    ? [{type: 'element', tagName: 'figcaption', properties: {}, children: toElements(inline(caption))}]
    : []
  return {
    type: 'drawing',
    alt,
    data: {hName: 'figure', hProperties: {className: ['drawing']}, hChildren: [svg, ...below]},
    children: [],
  }
}
