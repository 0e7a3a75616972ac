import {expect, test} from 'vitest'
import {readLeaf} from '../../../plugins/build-file/quantities/read-leaf.ts'
import type {Limits} from '../../../plugins/build-file/schema/kinds.ts'
import type {LeafName} from '../../../plugins/build-file/schema/values.ts'
import {planOf} from '../../support/plan-of.ts'
import fc from '../../support/properties.ts'

const kinds: LeafName[] = [
  'angle',
  'capacitance',
  'date',
  'density',
  'duration',
  'flag',
  'force',
  'gauge',
  'label',
  'length',
  'massPerLength',
  'money',
  'number',
  'pitch',
  'step',
  'stiffness',
]
const pieces =
  '0 1 2 3 7 12 24 .5 .017 1/2 3/0 1e999 ¾ - − / . , : in inn ft mm cm m " \' h min N lbf kg/m3 GPa nF w A H b # ° 2026 NaN x'
const typed = fc
  .array(fc.constantFrom(...pieces.split(' ')), {maxLength: 6})
  .chain((words) => fc.constantFrom(words.join(''), words.join(' '), words.join('-')))
const limits: fc.Arbitrary<Limits> = fc.constantFrom(
  {},
  {signed: true},
  {min: 0.1, max: 3},
  {min: 100, max: 2000},
)

test('a reading never throws, gives numbers that are numbers, and proposes only what can be read', () => {
  fc.assert(
    fc.property(
      fc.constantFrom(...kinds),
      typed,
      limits,
      fc.constantFrom('in', 'mm'),
      (kind, text, within, units) => {
        const context = {units, limits: within}
        const found = readLeaf(kind, text, context)
        if (found.ok) {
          for (const value of Object.values(found.value))
            if (typeof value === 'number') expect(Number.isFinite(value)).toBe(true)
          return
        }
        expect(found.message).toContain('"')
        for (const proposal of found.expected ?? []) {
          const again = readLeaf(kind, proposal, context)
          if (found.rule === 'out-of-range') expect([proposal, again]).toMatchObject([proposal, {ok: true}])
          else expect([proposal, again]).not.toMatchObject([proposal, {rule: found.rule}])
        }
      },
    ),
    {numRuns: 5000},
  )
})

test('a text as long as a whole file is answered, and quoted shortly', () => {
  for (const fill of ['1', ' ', '1 ', '-', '1/', 'a', '½', "'", '1,', 'mm '])
    for (const kind of kinds) {
      const found = readLeaf(kind, fill.repeat(100_000), {units: 'in', limits: {}})
      expect(found.ok || found.message.length < 500).toBe(true)
    }
})

// Each stands at the value itself: line and column from 1, in the file as written.
test.each([
  ['scale: 24 inn', 'unreadable-length', 3, 8],
  ['scale: 3/0', 'unreadable-length', 3, 8],
  ['scale: 1/2/3', 'unreadable-length', 3, 8],
  ['scale: 1/2 in 3', 'unreadable-length', 3, 8],
  ['scale: NaN', 'unreadable-length', 3, 8],
  ['scale: .nan', 'unreadable-length', 3, 8],
  ['scale: 1e999', 'unreadable-length', 3, 8],
  ['scale: 0', 'out-of-range', 3, 8],
  ['scale: 24 m', 'out-of-range', 3, 8],
  ['scale: {length: 24, lines: 400}', 'out-of-range', 3, 28],
  ['neck: {length: -4}', 'negative-length', 3, 16],
  ['neck: {length: -1-1/2}', 'negative-length', 3, 16],
  ['strings: [{note: G}]', 'unreadable-pitch', 3, 18],
  ['strings: [{note: H2}]', 'unreadable-pitch', 3, 18],
  ['strings: [{note: "G#b3"}]', 'unreadable-pitch', 3, 18],
  ['strings: [{note: "F #3"}]', 'unreadable-pitch', 3, 18],
  ['strings: 0', 'out-of-range', 3, 10],
  ['units: mm\nstrings: [{note: G3, gauge: .017}]', 'out-of-range', 4, 29],
  ['started: 2026-02-30', 'unreadable-date', 3, 10],
])('%s', (text, rule, line, column) => {
  const {problems} = planOf(`title: Slip\n${text}`)
  expect(
    problems.map((problem) => ({
      rule: problem.rule,
      severity: problem.severity,
      line: problem.line,
      column: problem.column,
    })),
  ).toEqual([{rule, severity: 'error', line, column}])
})
