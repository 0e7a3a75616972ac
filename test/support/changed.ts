import {isScalar, parse, parseDocument} from 'yaml'

/**
 * Change front matter at dotted paths (lists count from 1), each to a value as a maker writes it; an empty one takes
 * the key out. Everything else keeps its line, as long as nothing is added.
 */
export function changed(frontMatter: string, changes: Readonly<Record<string, string>>): string {
  const doc = parseDocument(frontMatter.trim())
  for (const [path, written] of Object.entries(changes)) {
    const keys = path.split('.').map((key) => (/^\d+$/.test(key) ? Number(key) - 1 : key))
    const shorthand = keys.slice(0, -1)
    // A short form such as `1 5/8` stands for the mapping's commonest key, which a longer path then writes out.
    if (shorthand.length && isScalar(doc.getIn(shorthand, true))) doc.setIn(shorthand, doc.createNode({}))
    if (written === '') doc.deleteIn(keys)
    else doc.setIn(keys, doc.createNode(parse(written)))
  }
  return doc.toString({flowCollectionPadding: false, lineWidth: 0})
}
