import type {Element} from 'xast'
import {toXml} from 'xast-util-to-xml'

const declaration = {type: 'instruction', name: 'xml', value: 'version="1.0" encoding="utf-8"'} as const

/**
 * Write an XML document. The writer passes on what no document can hold (XML 1.0, 2.2 and 2.4): characters that are
 * none are left out, and what would end a section of plain text is escaped.
 */
export function xmlDocument(root: Element): string {
  const written = toXml([declaration, root])
    .replaceAll(/[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]/g, '')
    .replaceAll(']]>', ']]&gt;')
  return `${written}\n`
}
