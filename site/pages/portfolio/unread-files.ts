import type {ElementContent} from 'hast'
import {h} from 'hastscript'
import type {SiteData} from '../../site-data.ts'

/** List, while somebody writes, the files of the journal that have no page, and why. */
export function unreadFiles(unread: SiteData['unread']): ElementContent[] {
  if (unread.length === 0) return []
  const items = unread.map(({file, message}) => h('li', [h('code', file), ` ${message}`]))
  return [h('section.unread', {ariaLabel: 'Files without a page'}, [h('ul', items)])]
}
