import {expect, test} from 'vitest'
import {report} from '../../site/commands/report.ts'

const place = {line: 3, column: 1, endLine: 3, endColumn: 2}
const told = (message: string, file = 'builds/a.md') =>
  report([{file, problems: [{rule: 'unknown-key', severity: 'warning', ...place, message}]}], process.stderr)

test('a report has as many lines as problems, whatever stands in them', () => {
  for (const end of ['\n', '\r', '\r\n', '\u0085', '\u2028', '\u2029', '\v', '\f'])
    expect(told(`a${end}1 file: nothing to mend`).split(/\r\n?|[\n\v\f\u0085\u2028\u2029]/)).toHaveLength(4)
  expect(told('a', 'builds/a\n1 file: nothing to mend.md').split('\n')).toHaveLength(4)
})

test('nothing in a message reaches the terminal that it would obey', () => {
  const all = Array.from({length: 0x100}, (_, code) => String.fromCharCode(code)).join('')
  for (const sign of told(`${all}\u202e\u2066\u200f`).replaceAll('\n', ''))
    expect(sign).not.toMatch(/[\p{Cc}\u200e\u200f\u2028-\u202e\u2066-\u2069]/u)
  expect(told('\u001b[2J')).toContain('\\u{1b}[2J')
})

test('words of any language stay as they are', () =>
  expect(told('Läufer – ½ „弦“ 😀')).toContain('Läufer – ½ „弦“ 😀'))
