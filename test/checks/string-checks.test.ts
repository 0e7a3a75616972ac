import {describe, expect, test} from 'vitest'
import {planOf} from '../support/plan-of.ts'

const build = (strings: string, more = '') => `title: Test
scale: 24 1/4
${more}strings:
${strings}`

const of = (frontMatter: string) =>
  planOf(frontMatter).problems.map(({rule, severity, line}) => `${rule} ${severity} ${line}`)

/** Put the value that the first problem proposes in place of the one it names. */
function mended(frontMatter: string): string {
  const {problems} = planOf(frontMatter)
  const [problem] = problems
  const lines = frontMatter.split('\n')
  const at = problem!.line - 2
  lines[at] =
    lines[at]!.slice(0, problem!.column - 1) +
    problem!.expected![0] +
    lines[at]!.slice(problem!.endColumn - 1)
  return lines.join('\n')
}

const sound = `  - {note: D3, gauge: .030w}
  - {note: A3, gauge: .020w}
  - {note: D4, gauge: .013}`

test('a sound set is met with silence', () => {
  expect(of(build(sound))).toEqual([])
})

describe.each([
  {
    rule: 'string-slack',
    says: 'slack under a slide by one gauge',
    bad: build(sound.replace('.013', '.010')),
    good: build(sound.replace('.013', '.011')),
    problem: 'string-slack warning 7',
  },
  {
    rule: 'string-slack',
    says: 'slack under fingers',
    bad: build('  - {note: D4, gauge: .009}', 'play: fingers\n'),
    good: build('  - {note: D4, gauge: .010}', 'play: fingers\n'),
    problem: 'string-slack warning 6',
  },
  {
    rule: 'string-stiff',
    says: 'stiff by one gauge',
    bad: build(sound.replace('.030w', '.036w')),
    good: build(sound.replace('.030w', '.032w')),
    problem: 'string-stiff warning 5',
  },
  {
    rule: 'string-uneven',
    says: 'far more than the middle of the others',
    bad: build(
      '  - {note: D3, gauge: .024w}\n  - {note: A3, gauge: .017}\n  - {note: D4, gauge: .0105}\n  - {note: D4, gauge: .0150}',
    ),
    good: build(
      '  - {note: D3, gauge: .024w}\n  - {note: A3, gauge: .017}\n  - {note: D4, gauge: .0105}\n  - {note: D4, gauge: .0140}',
    ),
    problem: 'string-uneven warning 8',
  },
  {
    rule: 'string-near-breaking',
    says: 'at 0.70 of its strength',
    bad: build('  - {note: G#4, gauge: .010}'),
    good: build('  - {note: G4, gauge: .010}'),
    problem: 'string-near-breaking remark 5',
  },
  {
    rule: 'string-near-breaking',
    says: 'at 0.80 of its strength',
    bad: build('  - {note: A4, gauge: .010}'),
    good: build('  - {note: G4, gauge: .010}'),
    problem: 'string-near-breaking warning 5',
  },
  {
    rule: 'string-near-breaking',
    says: 'past its strength',
    bad: build('  - {note: B4, gauge: .008}'),
    good: build('  - {note: F#4, gauge: .010}'),
    problem: 'string-near-breaking fault 5',
  },
  {
    rule: 'string-near-breaking',
    says: 'by the core where the core is given',
    bad: build('  - {note: A3, gauge: .020w, core: .009}'),
    good: build('  - {note: A3, gauge: .020w, core: .012}'),
    problem: 'string-near-breaking warning 5',
  },
  {
    rule: 'pitches-out-of-order',
    says: 'told once',
    bad: build('  - {note: D4, gauge: .013}\n  - {note: A3, gauge: .018}\n  - {note: G3, gauge: .020}'),
    good: build('  - {note: G3, gauge: .020}\n  - {note: A3, gauge: .018}\n  - {note: D4, gauge: .013}'),
    problem: 'pitches-out-of-order remark 6',
  },
  {
    rule: 'core-not-inside',
    says: 'a core as thick as the string',
    bad: build('  - {note: A3, gauge: .020w, core: .018}'),
    good: build('  - {note: A3, gauge: .020w, core: .012}'),
    problem: 'core-not-inside error 5',
  },
  {
    rule: 'core-on-plain',
    says: 'a core on a plain string',
    bad: build('  - {note: D3, gauge: .030, material: steel, core: .015}'),
    good: build('  - {note: D3, gauge: .030w, core: .015}'),
    problem: 'core-on-plain error 5',
  },
  {
    rule: 'core-on-plain',
    says: 'a wrap on a plain string',
    bad: build('  - {note: A3, gauge: .018, wrap: pure nickel}'),
    good: build('  - {note: A3, gauge: .018w, wrap: pure nickel}'),
    problem: 'core-on-plain error 5',
  },
  {
    rule: 'wound-too-thin',
    says: 'a wound string that nobody makes',
    bad: build('  - {note: D4, gauge: .013w}'),
    good: build('  - {note: D4, gauge: .013}'),
    problem: 'wound-too-thin warning 5',
  },
  {
    rule: 'string-material-open',
    says: 'a thick plain string of unknown material',
    bad: build('  - {note: D3, gauge: .028}'),
    good: build('  - {note: D3, gauge: .028w}'),
    problem: 'string-material-open remark 5',
  },
])('$rule: $says', ({bad, good, problem}) => {
  test('is named once, at its line', () => expect(of(bad)).toEqual([problem]))
  test('a build next to it is silent', () => expect(of(good)).toEqual([]))
})

describe('what a problem proposes mends it', () => {
  test.each([
    build(sound.replace('.013', '.009')),
    build(sound.replace('.030w', '.042w')),
    build(sound.replace('.020w', '.009')),
    build(sound.replace('.013', '.026, material: steel')),
    build('  - {note: A#4, gauge: .009}'),
    build('  - {note: D3, gauge: .060w, core: .018}\n  - {note: D4, gauge: .013}'),
    build('  - {note: D4, mass: 0.2 g/m}'),
    build('  - {note: D4, tension: {pull: 30 N, scale: 25 1/2, note: E4}}'),
    build('  - {note: E4, gauge: .018, material: nylon}', 'play: fingers\n'),
    build('  - {note: D3, gauge: .028}'),
    `units: mm\n${build(sound.replaceAll(/\.(\d+)(w?)/g, '.$1 in $2').replace('.013', '.008')).replace('24 1/4', '616')}`,
  ])('%#', (bad) => {
    expect(of(bad)).toHaveLength(1)
    expect(of(mended(bad))).toEqual([])
  })
})

test.each([
  ['.012w, core: .010', ['wound-too-thin', 'core-not-inside']],
  ['.017, core: .015', ['core-on-plain']],
  ['.010, wrap: pure nickel', ['core-on-plain']],
])(
  'a gauge that its core or wrap forbids is not proposed as another that they forbid: %s',
  (gauge, rules) => {
    const {problems} = planOf(build(`  - {note: D4, gauge: ${gauge}}`))
    const ofGauge = problems.filter(({rule}) => !rule.startsWith('string-'))
    expect(ofGauge.map(({rule}) => rule)).toEqual(rules)
    expect(ofGauge.flatMap(({expected = []}) => expected)).toEqual([])
  },
)

test('two wrong gauges are named with gauges that would do', () => {
  const {problems} = planOf(
    build('  - {note: D3, gauge: .013}\n  - {note: A3, gauge: .042w}\n  - {note: D4, gauge: .013}'),
  )
  expect(problems.map(({rule}) => rule)).toEqual(['string-slack', 'string-stiff'])
  for (const {expected} of problems) {
    expect(expected!.length).toBeGreaterThan(0)
    for (const gauge of expected!) expect(gauge).toMatch(/^\.\d{3}w?$/)
  }
  const [low, middle] = problems.map(({expected}) => expected![0])
  expect(
    of(build(`  - {note: D3, gauge: ${low}}\n  - {note: A3, gauge: ${middle}}\n  - {note: D4, gauge: .013}`)),
  ).toEqual([])
})

describe('string-too-long', () => {
  const long = (at: string) => `title: Long
scale: 30
tuners: {at: [-2], off: [0], side: bass}
anchors: {at: ${at}}
strings: [D3 .026w]`

  test('is named at the anchors, and the place it proposes is near enough', () => {
    // 1000 mm of a packet less 2 in and 75 mm past the post leave 34 13/32 in.
    expect(of(long('34 7/16')).filter((one) => one.startsWith('string'))).toEqual([
      'string-too-long warning 5',
    ])
    expect(of(long('34 13/32')).filter((one) => one.startsWith('string'))).toEqual([])
  })
})

describe('heights-disagree', () => {
  const heights = (bridge: string) => `title: Heights
scale: 24 1/4
box: 10 x 7 x 2
bridge: {height: ${bridge}}
action: {nut: 1/8, octave: 7/32}
strings: [D3 .030w, A3 .020w, D4 .013]`

  test('one mark of the ruler is no matter, two are', () => {
    expect(of(heights('5/16'))).toEqual([])
    expect(of(heights('11/32'))).toEqual([])
    expect(of(heights('3/8'))).toEqual(['heights-disagree fault 5'])
    expect(of(heights('1/4'))).toEqual(['heights-disagree fault 5'])
    expect(of(mended(heights('1/2')))).toEqual([])
  })
  test('the other value is told', () => {
    expect(planOf(heights('3/8')).problems[0]!.cause).toEqual({line: 6, column: expect.any(Number)})
  })
})

test('strings-on-face: a bridge on the top that is lower than the neck', () => {
  const low = (height: string) => `title: Low
scale: 24 1/4
box: 10 x 7 x 2
neck: 1 5/8 x 13/16
bridge: {on: top, height: ${height}}
action: {nut: 1/8}
strings: [D3 .030w, A3 .020w, D4 .013]`
  const faults = (text: string) => of(text).filter((one) => one.includes('on-face'))
  expect(faults(low('5/8'))).toEqual(['strings-on-face fault 6'])
  expect(faults(low('1'))).toEqual([])
  expect(faults(mended(low('5/8')))).toEqual([])
})

test('packet-incomplete: a pull without its scale is not used', () => {
  const text = build('  - {note: D4, gauge: .013, tension: {pull: 80 N, note: D4}}')
  expect(of(text)).toEqual(['packet-incomplete remark 5'])
  expect(planOf(text).plan.strings![0]!.massFrom).toBe('plain')
})
