import {createHash} from 'node:crypto'
import type {ElementContent} from 'hast'
import type {LayoutName, Page, PageData} from '../publish/page.ts'
import {markup} from './markup.ts'
import {withPrefix} from './with-prefix.ts'

/** Make a page of elements: written at once, so that its key stands for what is on it. */
export function pageOf(
  address: string,
  data: PageData,
  content: ElementContent[],
  prefix: string,
  layout: Exclude<LayoutName, 'bare'> = 'frame',
): Page {
  const html = markup(withPrefix({type: 'root', children: content}, prefix))
  return {address, layout, data, key: keyOf(JSON.stringify(data), html), content: () => html}
}

/** Make a page of a text that stands as it is: a feed, a plan. */
export function textPage(address: string, title: string, text: string): Page {
  return {address, layout: 'bare', data: {title}, key: keyOf(text), content: () => text}
}

/** A short name for texts: the same name, the same texts. */
export function keyOf(...texts: readonly string[]): string {
  const hash = createHash('sha256')
  for (const text of texts) hash.update(text).update('\0')
  return hash.digest('hex').slice(0, 24)
}
