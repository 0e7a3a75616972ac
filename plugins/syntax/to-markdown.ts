import {directiveToMarkdown, type LeafDirective} from 'mdast-util-directive'
import type {Handle, Options} from 'mdast-util-to-markdown'
import './nodes.ts'

/** Write section directives and value references back as Markdown; no other colon is escaped. */
export function buildToMarkdown(): Options {
  const leafDirective = directiveToMarkdown().handlers?.leafDirective as Handle
  return {
    handlers: {
      leafDirective: (node: LeafDirective, ...rest) => node.data?.asWritten ?? leafDirective(node, ...rest),
      valueReference: (node: {value: string}) => `:value[${node.value}]`,
    },
    unsafe: [
      {character: ':', after: 'value\\[', inConstruct: 'phrasing'},
      {atBreak: true, character: ':', after: ':[^:\\s]', notInConstruct: ['listItem', 'blockquote']},
    ],
  }
}
