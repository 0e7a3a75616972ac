import {describe, expect, test} from 'vitest'
import {checks} from '../../plugins/checks/checks.ts'
import {planOf} from '../support/plan-of.ts'

/** The problems of one rule, each by where it stands and what would do. */
function found(rule: string, frontMatter: string) {
  const {problems} = planOf(frontMatter)
  return problems
    .filter((problem) => problem.rule === rule)
    .map(({line, column, severity, expected}) => ({line, column, severity, expected}))
}

describe('dot-without-line', () => {
  const build = (dots: string) => `title: Dots\nscale:\n  length: 24\n  lines: 12\n  dots: ${dots}`

  test('dots on lines that are there', () => {
    expect(found('dot-without-line', build('[3, 12]'))).toEqual([])
  })
  test('a dot one line past the last', () => {
    expect(found('dot-without-line', build('[3, 13]'))).toEqual([
      {line: 6, column: 13, severity: 'fault', expected: ['12']},
    ])
  })
  test('a half fret that a chromatic build does not have', () => {
    expect(found('dot-without-line', build('[6 1/2]'))).toEqual([
      {line: 6, column: 10, severity: 'fault', expected: ['6']},
    ])
    expect(found('dot-without-line', build('[6]'))).toEqual([])
  })
})

describe('line-past-bridge', () => {
  // 60 lines of 200 mm leave 200/32 = 6.25 mm before the bridge line, 59 leave 6.62 mm.
  const build = (lines: number, foot = 13) =>
    `title: Far\nunits: mm\nscale:\n  length: 200\n  lines: ${lines}\nbridge: {foot: ${foot}}`

  test('lines end before the foot of the bridge', () => {
    expect(found('line-past-bridge', build(59))).toEqual([])
    expect(found('line-past-bridge', build(60, 12))).toEqual([])
  })
  test('a line under the foot', () => {
    expect(found('line-past-bridge', build(60))).toEqual([
      {line: 6, column: 10, severity: 'fault', expected: ['59']},
    ])
  })
  test('a line measured past the bridge', () => {
    const measured = (mm: number) => `title: Far\nunits: mm\nscale: 640\nmeasured:\n  lines: {12: ${mm}}`
    expect(found('line-past-bridge', measured(320))).toEqual([])
    expect(found('line-past-bridge', measured(640))).toEqual([
      {line: 6, column: 15, severity: 'warning', expected: undefined},
    ])
  })
})

describe('lines-past-pattern', () => {
  const build = (pattern: string, lines: number) =>
    `title: List\nscale:\n  length: 24\n  pattern: ${pattern}\n  lines: ${lines}`

  test('a list that stops at the octave repeats', () => {
    expect(found('lines-past-pattern', build('[3, 5, 7, 10, 12]', 11))).toEqual([])
    expect(found('lines-past-pattern', build('[3, 5, 7]', 3))).toEqual([])
  })
  test('one line more than the list has', () => {
    expect(found('lines-past-pattern', build('[3, 5, 7]', 4))).toEqual([
      {line: 6, column: 10, severity: 'warning', expected: ['3']},
    ])
  })
})

describe('measured-line-unknown', () => {
  const build = (label: string, list = 'lines') =>
    `title: Measured\nscale:\n  length: 24\n  lines: 12\nmeasured:\n  ${list}:\n    ${label}: 6`

  test('a line that is there', () => {
    expect(found('measured-line-unknown', build('12'))).toEqual([])
    expect(found('measured-line-unknown', build('12', 'cents'))).toEqual([])
  })
  test.each(['lines', 'cents'])('one line past the last under %s', (list) => {
    expect(found('measured-line-unknown', build('13', list))).toEqual([
      {line: 8, column: 9, severity: 'warning', expected: undefined},
    ])
  })
  test('a half fret by any spelling', () => {
    for (const label of ['6 1/2', '6.5', '6½'])
      expect(found('measured-line-unknown', build(label))).toMatchObject([{line: 8}])
    const diatonic = build('6.5').replace('lines: 12', 'pattern: [2, 4, 5, 7, 9, 10, 11, 12]')
    expect(found('measured-line-unknown', diatonic)).toEqual([])
  })
})

describe('pattern-not-rising', () => {
  const build = (pattern: string) => `title: List\nscale:\n  length: 24\n  pattern: ${pattern}`

  test('a list that rises', () => {
    expect(found('pattern-not-rising', build('[2, 4, 5]'))).toEqual([])
  })
  test.each(['[2, 4, 4]', '[2, 4, 3]'])('%s', (pattern) => {
    expect(found('pattern-not-rising', build(pattern))).toEqual([
      {line: 5, column: 19, severity: 'error', expected: undefined},
    ])
  })
})

describe('temperament', () => {
  const steps = ['16/15', '9/8', '6/5', '5/4', '4/3', '45/32', '3/2', '8/5', '5/3', '9/5', '15/8']
  const build = (list: string[]) =>
    `title: Tempered\nscale:\n  length: 24\n  temperament:\n${list.map((step) => `    - ${step}`).join('\n')}`

  test('a temperament that rises to the octave', () => {
    expect(planOf(build([...steps, '2/1'])).problems).toEqual([])
    expect(planOf(build([...steps, '1200'])).problems).toEqual([])
  })
  test('a twelfth step a cent off the octave', () => {
    expect(found('temperament-octave', build([...steps, '1201']))).toEqual([
      {line: 17, column: 7, severity: 'error', expected: ['1200']},
    ])
    expect(found('temperament-octave', build([...steps, '19/10']))).toEqual([
      {line: 17, column: 7, severity: 'error', expected: ['2/1']},
    ])
  })
  test('two steps alike, and a first one at the open string', () => {
    const alike = [...steps.slice(0, 4), '5/4', ...steps.slice(5), '2/1']
    expect(found('temperament-not-rising', build(alike))).toEqual([
      {line: 10, column: 7, severity: 'error', expected: undefined},
    ])
    const low = ['0', ...steps.slice(1), '2/1']
    expect(found('temperament-not-rising', build(low))).toEqual([
      {line: 6, column: 7, severity: 'error', expected: undefined},
    ])
  })
})

describe('tuners-uneven', () => {
  const build = (at: string, off: string, strings = 'strings: 3') =>
    `title: Tuned\n${strings}\ntuners:\n  at: ${at}\n  off: ${off}`

  test('one place for each string', () => {
    expect(found('tuners-uneven', build('[-2, -3, -4]', '[-1/2, 1/2, -1/2]'))).toEqual([])
  })
  test('a tuner too few under at, and under off', () => {
    expect(found('tuners-uneven', build('[-2, -3]', '[-1/2, 1/2, -1/2]'))).toEqual([
      {line: 5, column: 7, severity: 'error', expected: undefined},
    ])
    expect(found('tuners-uneven', build('[-2, -3, -4]', '[-1/2, 1/2]'))).toEqual([
      {line: 6, column: 8, severity: 'error', expected: undefined},
    ])
  })
  test('at and off in unequal numbers where the strings are not listed yet', () => {
    expect(found('tuners-uneven', build('[-2, -3]', '[-1/2]', 'tags: []'))).toEqual([
      {line: 6, column: 8, severity: 'error', expected: undefined},
    ])
    expect(found('tuners-uneven', build('[-2, -3]', '[-1/2, 1/2]', 'tags: []'))).toEqual([])
  })
})

// What a problem proposes first, put at its place, mends it.
test.each([
  ['dot-without-line', 'title: A\nscale: {length: 24, lines: 12, dots: [13]}'],
  ['line-past-bridge', 'title: A\nunits: mm\nscale: {length: 200, lines: 60}\nbridge: {foot: 13}'],
  ['lines-past-pattern', 'title: A\nscale: {length: 24, lines: 9, pattern: [3, 5, 7]}'],
  [
    'temperament-octave',
    'title: A\nscale: {length: 24, temperament: [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 1201]}',
  ],
])('the proposal of %s mends it', (rule, frontMatter) => {
  const {build, plan} = planOf(frontMatter)
  const [problem] = checks(build, plan).filter((each) => each.rule === rule)
  const lines = frontMatter.split('\n')
  const at = problem!.line - 2
  lines[at] =
    lines[at]!.slice(0, problem!.column - 1) +
    problem!.expected![0] +
    lines[at]!.slice(problem!.endColumn - 1)
  expect(found(rule, lines.join('\n'))).toEqual([])
})
