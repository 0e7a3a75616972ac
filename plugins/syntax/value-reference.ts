import type {Code, Construct, State} from 'micromark-util-types'

declare module 'micromark-util-types' {
  interface TokenTypeMap {
    valueReference: 'valueReference'
    valueReferenceMarker: 'valueReferenceMarker'
    valueReferencePath: 'valueReferencePath'
  }
}

const opening = ':value['
const openBracket = 91
const closeBracket = 93

/**
 * Recognise `:value[path]` in a sentence, and nothing else that starts with a colon.
 * The path stands on one line and holds no bracket; with none, or with no end, all of it is ordinary text.
 */
export const valueReference: Construct = {
  name: 'valueReference',
  tokenize(effects, ok, nok) {
    let read = 0
    return start

    function start(code: Code): State | undefined {
      effects.enter('valueReference')
      effects.enter('valueReferenceMarker')
      return marker(code)
    }

    function marker(code: Code): State | undefined {
      if (code !== opening.charCodeAt(read)) return nok(code)
      effects.consume(code)
      read += 1
      if (read < opening.length) return marker
      effects.exit('valueReferenceMarker')
      return beforePath
    }

    function beforePath(code: Code): State | undefined {
      if (endsText(code) || code === closeBracket) return nok(code)
      effects.enter('valueReferencePath')
      return path(code)
    }

    function path(code: Code): State | undefined {
      if (endsText(code)) return nok(code)
      if (code !== closeBracket) {
        effects.consume(code)
        return path
      }
      effects.exit('valueReferencePath')
      effects.enter('valueReferenceMarker')
      effects.consume(code)
      effects.exit('valueReferenceMarker')
      effects.exit('valueReference')
      return ok
    }
  },
}

/** Say whether a path cannot go on: at the end of the text or of the line (codes below −2), or at a `[`. */
function endsText(code: Code): boolean {
  return code === null || code < -2 || code === openBracket
}
