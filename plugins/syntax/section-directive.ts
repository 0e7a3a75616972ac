import {directive} from 'micromark-extension-directive'
import type {Construct, ConstructRecord, TokenizeContext} from 'micromark-util-types'

const colon = 58

/**
 * Recognise `::name[label]{attributes}` alone on a line at the top level of the body: the leaf construct of
 * micromark-extension-directive. Inside a list or a quotation the line stays ordinary text.
 */
export const sectionDirective: Construct = {
  name: 'sectionDirective',
  tokenize(effects, ok, nok) {
    const begun = leafConstruct().tokenize.call(this, effects, ok, nok)
    return isTopLevel(this) ? begun : nok
  },
}

/** At the top level nothing but blanks stands before the directive, so its line's first token is in column 1. */
function isTopLevel(context: TokenizeContext): boolean {
  if (context.now().column === 1) return true
  const last = context.events.at(-1)?.[1]
  return last?.type === 'linePrefix' && last.start.column === 1
}

/** The leaf form stands after the container form among the extension's constructs for a colon. */
function leafConstruct(): Construct {
  const flow = (directive().flow as ConstructRecord)[colon] as Construct[]
  return flow[1] as Construct
}
