import type {Element, ElementContent, Root} from 'hast'
import {toHtml} from 'hast-util-to-html'

/** Write elements as HTML; every text and attribute is escaped by the writer. */
export function markup(tree: Root | Element | ElementContent[], space: 'html' | 'svg' = 'html'): string {
  return toHtml(tree, {allowDangerousHtml: true, closeSelfClosing: false, space})
}

/** Place HTML that this project has written before, as it is, inside a tree. */
export function written(html: string): ElementContent {
  return {type: 'raw', value: html} as unknown as ElementContent
}
