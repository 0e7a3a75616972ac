import {directive} from 'micromark-extension-directive'
import type {Code, Construct, ConstructRecord, Extension, State, TokenizeContext} from 'micromark-util-types'

const colon = 58

/**
 * Recognise `::name[label]{attributes}` alone on a line at the top level of the body: the leaf construct of
 * micromark-extension-directive. Inside a list or a quotation the line stays ordinary text.
 */
const sectionDirective: Construct = {
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

declare module 'micromark-util-types' {
  interface TokenTypeMap {
    valueReference: 'valueReference'
    valueReferenceMarker: 'valueReferenceMarker'
    valueReferencePath: 'valueReferencePath'
    stepReference: 'stepReference'
    stepReferenceMarker: 'stepReferenceMarker'
    stepReferencePath: 'stepReferencePath'
  }
}

const openBracket = 91
const closeBracket = 93

/**
 * Recognise `:value[path]` or `:step[name]` in a sentence, and nothing else that starts with a colon.
 * What is in it stands on one line and holds no bracket; with nothing, or with no end, all of it is ordinary text.
 */
const reference = (to: 'value' | 'step'): Construct => ({
  name: `${to}Reference`,
  tokenize(effects, ok, nok) {
    const opening = `:${to}[`
    let read = 0
    return start

    function start(code: Code): State | undefined {
      effects.enter(`${to}Reference`)
      effects.enter(`${to}ReferenceMarker`)
      return marker(code)
    }

    function marker(code: Code): State | undefined {
      if (code !== opening.charCodeAt(read)) return nok(code)
      effects.consume(code)
      read += 1
      if (read < opening.length) return marker
      effects.exit(`${to}ReferenceMarker`)
      return beforePath
    }

    function beforePath(code: Code): State | undefined {
      if (endsText(code) || code === closeBracket) return nok(code)
      effects.enter(`${to}ReferencePath`)
      return path(code)
    }

    function path(code: Code): State | undefined {
      if (endsText(code)) return nok(code)
      if (code !== closeBracket) {
        effects.consume(code)
        return path
      }
      effects.exit(`${to}ReferencePath`)
      effects.enter(`${to}ReferenceMarker`)
      effects.consume(code)
      effects.exit(`${to}ReferenceMarker`)
      effects.exit(`${to}Reference`)
      return ok
    }
  },
})

/** Say whether a path cannot go on: at the end of the text or of the line (codes below −2), or at a `[`. */
function endsText(code: Code): boolean {
  return code === null || code < -2 || code === openBracket
}

/**
 * Extend micromark by what a build file adds to Markdown: section directives, and references to values and steps.
 * Every other colon is left as it is.
 */
export const buildSyntax: Extension = {
  flow: {[colon]: sectionDirective},
  text: {[colon]: [reference('value'), reference('step')]},
}
