import type {Element, Root} from 'hast'
import {toString as textOf} from 'hast-util-to-string'
import {h} from 'hastscript'
import {SKIP, visit} from 'unist-util-visit'
import {svgText} from '../drawings/writers/svg.ts'

/** Keep a drawing as a file of its own, and give the address that it is shown from. */
export type KeepDrawing = (name: string, svg: string) => string

/**
 * Let folded drawings load as files once their fold is opened, each told by its own description; the one that stands
 * in the open stays in the page, since its names are links. Without a way to keep them all stay.
 */
export function rehypeDrawings({keepDrawing}: {keepDrawing?: KeepDrawing | undefined}) {
  return (tree: Root): void => {
    if (!keepDrawing) return
    visit(tree, {tagName: 'details'}, (fold: Element) => {
      visit(fold, {tagName: 'svg'}, (svg: Element, at, parent) => {
        parent!.children[at!] = shown(svg, keepDrawing)
        return SKIP
      })
      return SKIP
    })
  }
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
