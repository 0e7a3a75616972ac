import type {Element, ElementContent, Root} from 'hast'
import {toHtml} from 'hast-util-to-html'

/** What a page's functions hand on: elements, texts, and nothing where there is nothing to show. */
export type Piece = ElementContent | string | undefined | false | readonly Piece[]

/** Write elements as HTML; every text and attribute is escaped by the writer. */
export function markup(tree: Root | Element | ElementContent[]): string {
  return toHtml(tree, {allowDangerousHtml: true, closeSelfClosing: false})
}

/** Place HTML that this project has written before, as it is, inside a tree. */
export function written(html: string): ElementContent {
  return {type: 'raw', value: html} as unknown as ElementContent
}
