import type {Element, Root} from 'hast'
import {toString as textOf} from 'hast-util-to-string'
import {h} from 'hastscript'
import {svgText} from '../drawings/writers/svg.ts'
import {elementsIn} from './computed.ts'

/** Keep a drawing as a file of its own, and give the address that it is shown from. */
export type KeepDrawing = (name: string, svg: string) => string

/**
 * Let folded drawings load as files once their fold is opened, each told by its own description; the one that stands
 * in the open stays in the page, since its names are links. Without a way to keep them all stay.
 */
export function rehypeDrawings({keepDrawing}: {keepDrawing?: KeepDrawing | undefined}) {
  return (tree: Root): void => {
    if (!keepDrawing) return
    for (const element of elementsIn(tree))
      if (element.tagName === 'details') keepWithin(element, keepDrawing)
  }
}

function keepWithin(fold: Element, keep: KeepDrawing): void {
  fold.children = fold.children.map((child) => {
    if (child.type !== 'element') return child
    if (child.tagName === 'svg') return shown(child, keep)
    keepWithin(child, keep)
    return child
  })
}

function shown(svg: Element, keep: KeepDrawing): Element {
  const {ariaLabelledBy, ariaDescribedBy: _, role: __, width, height, ...properties} = svg.properties
  const name = String(ariaLabelledBy).replace(/^drawing-|-title$/g, '')
  const told = svg.children.find((child) => child.type === 'element' && child.tagName === 'desc')
  const file: Element = {
    ...svg,
    properties: {
      xmlns: 'http://www.w3.org/2000/svg',
      width,
      height,
      ...properties,
      color: '#26292b',
      fontFamily: 'system-ui, sans-serif',
    },
    children: svg.children.filter((child) => child !== told),
  }
  const src = keep(name, svgText(file))
  return h('img', {src, alt: told ? textOf(told) : '', width, height, loading: 'lazy'})
}
