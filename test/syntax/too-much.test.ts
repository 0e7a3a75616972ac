import {expect, test} from 'vitest'
import {parseBuildFile} from '../../plugins/syntax/parse-build-file.ts'
import {findTooMuch} from '../../plugins/syntax/too-much.ts'

const prose = (body: string) => `---\ntitle: Needle box\n---\n\n${body}\n`
const table = (columns: number, rows: number) =>
  `|${'a|'.repeat(columns)}\n|${'-|'.repeat(columns)}\n${'|\n'.repeat(rows)}`
const address = `[here]: /${'x'.repeat(6000)}\n\n`

test.each([
  ['cells', table(3000, 3000)],
  ['cells', `${table(50, 150)}\n${table(50, 150)}`],
  ['cells', '|a|b|c\n'.repeat(4000)],
  ['lines', 'A word.\n\n'.repeat(10_001)],
  ['paragraph', 'A word.\n'.repeat(10_001)],
  ['paragraph', `- A word.\n${'  More of it.\n'.repeat(10_001)}`],
  ['lines', '\n'.repeat(20_001)],
  ['signs', '\\'.repeat(20_001)],
  ['signs', '`a` '.repeat(10_001)],
  ['signs', '<b>a</b> '.repeat(20_001)],
  ['signs', ':value[scale.lengthMm] '.repeat(20_000)],
  ['signs', 'www.a.b '.repeat(20_001)],
  ['references', `${address}${'[here] '.repeat(2000)}`],
  ['references', `${address}${'![here][]\n'.repeat(500)}`],
  ['depth', Array.from({length: 5000}, (_, at) => `${'  '.repeat(at % 90)}- a\n`).join('')],
  ['items', '- a\n'.repeat(5001)],
  ['items', '> 1. a\n\n'.repeat(5001)],
  ['items', '- > -\n'.repeat(2501)],
  ['headings', '## Again\n'.repeat(16_000)],
  ['headings', 'Again\n---\n'.repeat(1001)],
  ['definitions', Array.from({length: 1001}, (_, at) => `[^${at}]: A note.`).join('\n')],
])('too many %s are not parsed, and their place is told', (of, body) => {
  const tree = parseBuildFile(prose(body))
  expect(tree.children).toHaveLength(1)
  expect(tree.data?.tooMuch).toMatchObject({of, place: {column: 1}})
  expect(tree.data?.tooMuch?.place.line).toBeGreaterThan(4)
})

test('nothing is parsed where there are more dimensions than are read', () => {
  const tree = parseBuildFile(`---\ntitle: Needle box\n${'a: b\n'.repeat(21_000)}---\n\nProse.\n`)
  expect(tree.data?.tooMuch).toMatchObject({of: 'lines', place: {line: 21_003}})
})

test.each([
  ['long code', `~~~\n${'a word\n'.repeat(15_000)}~~~`],
  ['a long table', table(8, 1000)],
  ['many tables', `${table(4, 20)}\n`.repeat(50)],
  ['an address used often', `[here]: /photos/front.jpg\n\n${'[here] '.repeat(1000)}`],
  ['a day for most of three years', '## 2026-03-07 Milling\n\nSome words.\n\n'.repeat(900)],
  ['a book of lines', 'A line of words, as an editor breaks it.\n'.repeat(9000)],
  ['a photograph a day for three years', '![The *neck*](photos/neck.jpg) and `what` I did\n\n'.repeat(1000)],
  ['four tasks a day for three years', '- [x] planed\n'.repeat(4400)],
  ['a thousand pages of words', 'A word and another. '.repeat(40_000)],
])('%s is read', (_, body) => expect(findTooMuch(prose(body))).toBeUndefined())
