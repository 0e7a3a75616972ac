import {type Inline, text} from './inline.ts'
import type {Fraction} from './nodes.ts'

const parts = /(\d+)\/(\d+)/

/**
 * Set every `1/2` of a text as a proper fraction (class `fraction`: two spans round a slash), which copies and
 * reads aloud as plain text. Nothing else is changed.
 */
export function fractions(written: string): Inline[] {
  const found = parts.exec(written)
  if (!found) return written ? [text(written)] : []
  const [whole, over, under] = found as unknown as [string, string, string]
  const before = written.slice(0, found.index)
  return [
    ...(before ? [text(before)] : []),
    fraction(over, under),
    ...fractions(written.slice(found.index + whole.length)),
  ]
}

function fraction(over: string, under: string): Fraction {
  return {
    type: 'fraction',
    data: {
      hName: 'span',
      hProperties: {className: ['fraction']},
      hChildren: [span(over), {type: 'text', value: '/'}, span(under)],
    },
    children: [text(over + '/' + under)],
  }
}

function span(value: string) {
  return {
    type: 'element' as const,
    tagName: 'span',
    properties: {},
    children: [{type: 'text' as const, value}],
  }
}
