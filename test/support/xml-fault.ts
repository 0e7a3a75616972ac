import {SaxesParser} from 'saxes'

/** Say where a text is no well-formed XML with namespaces, by a parser that nothing here is made with. */
export function xmlFault(text: string): string | undefined {
  const parser = new SaxesParser({xmlns: true})
  let fault: string | undefined
  parser.on('error', (error) => {
    fault ??= error.message
  })
  parser.write(text).close()
  return fault
}
