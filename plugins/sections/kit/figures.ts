import type {BlockContent} from 'mdast'
import {type Inline, inline} from './inline.ts'
import type {Figures} from './nodes.ts'

/**
 * Fold engineering figures away under one line (`figures` where nothing better names them).
 * The sentence that says what they mean stands before it, in the open.
 */
export function figures(summary: Inline, content: BlockContent[]): Figures {
  return {
    type: 'figures',
    data: {hName: 'details', hProperties: {className: ['figures']}},
    children: [{type: 'figuresSummary', data: {hName: 'summary'}, children: inline([summary])}, ...content],
  }
}
