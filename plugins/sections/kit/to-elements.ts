import type {ElementContent} from 'hast'
import type {RootContent} from 'mdast'
import {toHast} from 'mdast-util-to-hast'

/** Turn section content, inline or block, into the elements it becomes on the page. */
export function toElements(content: readonly RootContent[]): ElementContent[] {
  return content.map((node) => toHast(node)).filter((made) => made.type !== 'root' && made.type !== 'doctype')
}
