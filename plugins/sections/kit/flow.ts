import type {BlockContent, Heading, List, Paragraph} from 'mdast'
import {type Inline, inline} from './inline.ts'

/** Write a paragraph. */
export function paragraph(...content: Inline[]): Paragraph {
  return {type: 'paragraph', children: inline(content)}
}

/** Write a heading inside a section, one level under the section's own. */
export function subHeading(...content: Inline[]): Heading {
  return {type: 'heading', depth: 3, children: inline(content)}
}

/** Write a quiet remark below what it is about. */
export function note(...content: Inline[]): Paragraph {
  return {...paragraph(...content), data: {hProperties: {className: ['note']}}}
}

/** Say where a table's or a threshold's numbers come from; give `common practice, no source` where they have none. */
export function source(...content: Inline[]): Paragraph {
  return {...paragraph('Source: ', ...content), data: {hProperties: {className: ['source']}}}
}

/** Write a list; an item is a text, a run of inline content, or whole blocks. */
export function list(
  items: readonly (string | readonly Inline[] | {blocks: BlockContent[]})[],
  options: {ordered?: boolean} = {},
): List {
  return {
    type: 'list',
    ordered: options.ordered ?? false,
    spread: false,
    children: items.map((item) => ({
      type: 'listItem',
      spread: false,
      children: isBlocks(item) ? item.blocks : [paragraph(...(typeof item === 'string' ? [item] : item))],
    })),
  }
}

function isBlocks(
  item: string | readonly Inline[] | {blocks: BlockContent[]},
): item is {blocks: BlockContent[]} {
  return typeof item === 'object' && 'blocks' in item
}
