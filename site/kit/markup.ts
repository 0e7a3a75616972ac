import type {Element, ElementContent, Root} from 'hast'
import {toHtml} from 'hast-util-to-html'
import {visit} from 'unist-util-visit'
import type {Element as XmlElement} from 'xast'
import {toXml} from 'xast-util-to-xml'
import {type Inline, inline, toElements} from '../../plugins/sections/kit.ts'
import {fractions, length, lengthAlone} from '../../plugins/sections/measures.ts'
import type {Ruler} from '../../plugins/words/lengths.ts'

/** Write elements as HTML; every text and attribute is escaped by the writer. */
export function markup(tree: Root | Element | ElementContent[], space: 'html' | 'svg' = 'html'): string {
  return toHtml(tree, {allowDangerousHtml: true, closeSelfClosing: false, space})
}

/** Place HTML that this project has written before, as it is, inside a tree. */
export function written(html: string): ElementContent {
  return {type: 'raw', value: html} as unknown as ElementContent
}

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
function underPrefix(address: string, prefix: string): string {
  return /^\/(?!\/)/.test(address) ? prefix + address.slice(1) : address
}

/** Write a length in the build's units, the other in smaller type. */
export const lengthOf = (mm: number, ruler: Ruler): ElementContent[] => toElements([length(mm, ruler)])

/** Write a length in the build's units alone. */
export const lengthOnly = (mm: number, ruler: Ruler): ElementContent[] => toElements([lengthAlone(mm, ruler)])

/** Set the fractions of a text, each kept on the line of its whole number. */
export const keptFractions = (text: string): Inline[] =>
  fractions(text.replace(/(\d) (?=\d+\/\d)/g, '$1\u00a0'))

/** Set the fractions of a text a maker wrote. */
export const withFractions = (text: string): ElementContent[] => toElements(inline(keptFractions(text)))

const declaration = {type: 'instruction', name: 'xml', value: 'version="1.0" encoding="utf-8"'} as const

/**
 * Write an XML document. The writer passes on what no document can hold (XML 1.0, 2.2 and 2.4): characters that are
 * none are left out, and what would end a section of plain text is escaped.
 */
export function xmlDocument(root: XmlElement): string {
  const written = toXml([declaration, root])
    .replaceAll(/[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]/g, '')
    .replaceAll(']]>', ']]&gt;')
  return `${written}\n`
}
