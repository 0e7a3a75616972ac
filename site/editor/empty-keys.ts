import {exampleOf, type Kind} from '../../plugins/build-file/schema/kinds.ts'
import {kindAt} from '../../plugins/build-file/schema/path.ts'
import type {Problem} from '../../plugins/build-file/schema/problem.ts'
import {buildSchema, journalSchema} from '../../plugins/build-file/schema/schema.ts'

/**
 * Say of each key that still waits for its value what it means and takes, with the words that it knows to choose
 * from: what hover and completion would say, told as a remark at the end of its line.
 */
export function emptyKeys(text: string, name: string): Problem[] {
  if (name === 'rack.yaml') return []
  const lines = text.split(/\r\n?|\n/)
  const isBuild = name !== 'journal.yaml'
  const end = isBuild ? lines.indexOf('---', 1) : lines.length
  const schema = (isBuild ? buildSchema : journalSchema) as unknown as Kind
  const found: Problem[] = []
  const above: {indent: number; key: string}[] = []
  for (let at = isBuild ? 1 : 0; at < end; at += 1) {
    const [, indent, key, rest] = /^( *)([a-z-]+):(.*)$/.exec(lines[at]!) ?? []
    if (indent === undefined || key === undefined) continue
    while ((above.at(-1)?.indent ?? -1) >= indent.length) above.pop()
    const path = [...above.map((one) => one.key), key].join('.')
    above.push({indent: indent.length, key})
    const kind = kindAt(path, schema)
    if (!kind || !/^\s*(#.*)?$/.test(rest!) || isFilledBelow(lines, at, indent.length)) continue
    const column = indent.length + key.length + 2
    const place = {line: at + 1, column, endLine: at + 1, endColumn: column}
    const words = wordsOf(kind).map((word) => ` ${word}`)
    const message = `${path}: ${kind.says} It takes ${exampleOf(kind).replace(/,$/, '')}.`
    found.push({
      rule: 'key-is-empty',
      severity: 'remark',
      ...place,
      message,
      ...(words[0] && {expected: words}),
    })
  }
  return found
}

/** Whether the value of a key stands on the lines below it. */
function isFilledBelow(lines: readonly string[], at: number, indent: number): boolean {
  const next = lines.slice(at + 1).find((line) => !/^\s*(#.*)?$/.test(line)) ?? ''
  return /^ */.exec(next)![0].length > indent || /^\s*-\s/.test(next)
}

function wordsOf(kind: Kind): readonly string[] {
  if (kind.is === 'choice') return kind.of
  if (kind.is === 'either') return [...wordsOf(kind.first), ...wordsOf(kind.second)]
  return kind.is === 'leaf' && kind.leaf === 'flag' ? ['true', 'false'] : []
}
