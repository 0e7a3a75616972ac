import {describe, expect, test} from 'vitest'
import {mendText} from '../../plugins/build-file/heal/mend.ts'
import {readBuild, readJournal, readRack} from '../../plugins/build-file/read.ts'
import {readOnly} from '../support/slip-healing.ts'

const read = (frontMatter: string) =>
  readBuild(`---\ntitle: Needle box\n${frontMatter}\n---\n`, {slug: 'needle-box'})

describe('one line stands for the commonest form', () => {
  const pairs: [string, string][] = [
    ['scale: 24 1/4', 'scale: {length: 24 1/4}'],
    ['box: 10 1/8 x 7 x 2', 'box: {length: 10 1/8, width: 7, depth: 2}'],
    ['neck: 1 5/8 x 13/16', 'neck: {width: 1 5/8, thickness: 13/16}'],
    ['strings: [D3 .030w]', 'strings: [{note: D3, gauge: .030w}]'],
    ['box: {top: 1/8}', 'box: {top: {thickness: 1/8}}'],
    ['neck: {width: 1 5/8}', 'neck: {width: {nut: 1 5/8}}'],
    ['anchors: {at: 26 3/4}', 'anchors: {at: 26 3/4}'],
    ['finish: [oil]', 'finish: [{kind: oil}]'],
  ]
  const bare = (value: unknown): unknown =>
    JSON.parse(JSON.stringify(value, (key, item) => (key === 'place' ? undefined : item)))
  test.each(pairs)('%s', (short, long) => {
    const [a, b] = [read(short), read(long)]
    expect(a.problems).toEqual([])
    expect(b.problems).toEqual([])
    expect(bare(a.build.values)).toEqual(bare(b.build.values))
  })

  test('strings: 3 is three strings of which nothing else is known', () => {
    expect(read('strings: 3').build.values.strings).toEqual([{}, {}, {}])
  })
  test('none is as good as left out', () => {
    expect(read('fingerboard: none').build.values).not.toHaveProperty('fingerboard')
  })
  test('a key without a value is as good as left out', () => {
    const {build, problems} = read('scale:\nstrings:\nbox: {wood: , length: 10}')
    expect(problems).toEqual([])
    expect(Object.keys(build.values)).toEqual(['title', 'box'])
  })
})

describe('every value keeps its text and its place', () => {
  const text =
    '---\ntitle: Needle box\nbox: 10 1/8 x 7 x 2\nstrings: [D3 .030w, "A3 .020w"]\nscale: {length: 24 1/4, dots: [3, 6 1/2]}\n---\n'
  const {build} = readBuild(text, {slug: 'x'})
  const lines = text.split('\n')
  // The file's own text at a place is the oracle.
  test.each([
    ['box.length', '10 1/8'],
    ['box.width', '7'],
    ['box.depth', '2'],
    ['strings.1.note', 'D3'],
    ['strings.1.gauge', '.030w'],
    ['strings.2.gauge', '.020w'],
    ['scale.length', '24 1/4'],
    ['scale.dots.2', '6 1/2'],
    ['title', 'Needle box'],
  ])('%s', (path, written) => {
    const {line, column, endLine, endColumn} = build.places[path]!
    expect(endLine).toBe(line)
    expect(lines[line - 1]!.slice(column - 1, endColumn - 1)).toBe(written)
  })
  test('as written, not as parsed', () =>
    expect(build.values.box?.length).toMatchObject({text: '10 1/8', mm: 257.175}))
})

describe('as built', () => {
  test('by path, by line, by string', () => {
    const {build, problems} = read(
      'measured: {on: 2026-03-15, scale.length: 24 9/32, neck.width: 1 5/8, lines: {12: 12 5/32, 6 1/2: 7}, cents: {7: 2}, resonance: 205 Hz, strings.D4.tension: 60 N, neck.thickness: }',
    )
    expect(problems).toEqual([])
    expect(build.values.measured).toMatchObject({on: {iso: '2026-03-15'}})
    expect(build.values.measured!.days).toMatchObject([
      {
        of: 'measured',
        on: {iso: '2026-03-15'},
        lines: [
          {label: '12', value: {text: '12 5/32'}},
          {label: '6 1/2', value: {mm: 177.8}},
        ],
        cents: [{label: '7', value: {value: 2}}],
        resonance: {value: 205},
        tensions: [{name: 'D4', value: {n: 60}}],
        paths: [
          {path: 'scale.length', value: {text: '24 9/32'}},
          {path: 'neck.width', value: {mm: 41.275}},
        ],
      },
    ])
  })
  test('day after day, in the order of the days and not of the file', () => {
    const {build, problems} = read(
      'measured: [{on: 2026-06-01, action.octave: 15/64}, {action.octave: 7/32}, null, {on: 2026-03-15, action.octave: 1/4}]',
    )
    expect(problems).toEqual([])
    expect(build.values.measured!.on!.iso).toBe('2026-06-01')
    expect(build.values.measured!.days.map(({of, on}) => [of, on?.iso])).toEqual([
      ['measured.2', undefined],
      ['measured.4', '2026-03-15'],
      ['measured.1', '2026-06-01'],
    ])
    expect(build.places['measured.4.action.octave']).toBeDefined()
  })
  test.each([
    ['a text for a day', '[{on: 2026-06-01}, soon]', 'wrong-shape'],
    ['a list within the list', '[[{on: 2026-06-01}]]', 'wrong-shape'],
    ['a slip in the second day', '[{on: 2026-06-01}, {on: 2026-07-01, scale.lenght: 24}]', 'unknown-key'],
    ['a day that is not in the calendar', '[{on: 2026-02-30}]', 'unreadable-date'],
    ['a list without end', `[${'{resonance: 205}, '.repeat(201)}]`, 'out-of-range'],
  ])('%s is named', (_, written, rule) => {
    const {problems} = read(`measured: ${written}`)
    expect(problems.map((one) => one.rule)).toEqual([rule])
  })
  test('a day under another name proposes on', () => {
    expect(read('measured: [{date: 2026-03-15, scale.length: 24}]').problems).toMatchObject([
      {rule: 'unknown-key', expected: ['on'], sure: true},
    ])
  })
  test('an unknown path proposes the nearest', () => {
    expect(read('measured: {scale.lenght: 24}').problems).toMatchObject([
      {rule: 'unknown-key', severity: 'warning', line: 3, column: 12, expected: ['scale.length']},
    ])
  })
})

test('a bare number is in the journal’s unit unless the build says', () => {
  const journal = readJournal('units: mm\nsaw: {kerf: 3}\n')
  expect(journal.problems).toEqual([])
  const metric = readBuild('---\ntitle: A\nscale: 640\n---\n', {slug: 'a', journal: journal.settings})
  expect(metric.build.values.scale?.length?.mm).toBe(640)
  const inches = readBuild('---\ntitle: A\nunits: in\nscale: 24\n---\n', {
    slug: 'a',
    journal: journal.settings,
  })
  expect(inches.build.values.scale?.length?.mm).toBeCloseTo(609.6, 12)
})

test('a rack is a list of pieces', () => {
  const rack = readRack(
    '- {id: A4, wood: white ash, length: 40, width: 3 1/2, thickness: 3/4, clear: [0, 39]}\n- {id: B1, count: 6, lenght: 3}\n',
  )
  expect(rack.pieces).toMatchObject([{id: {value: 'A4'}, clear: [{mm: 0}, {mm: 990.6}]}, {count: {value: 6}}])
  expect(rack.problems).toMatchObject([{rule: 'unknown-key', line: 2}])
})

test('a key that comes near none says which are known there', () => {
  const {problems} = readBuild('---\ntitle: A\nparts: [{name: rail, size: 3}]\n---\n', {slug: 'a'})
  expect(problems).toMatchObject([
    {
      rule: 'unknown-key',
      message: expect.stringMatching(/; what is known there: name, wood, length, width, thickness, count$/),
      expected: ['name', 'wood', 'length', 'width', 'thickness', 'count'],
    },
  ])
})

describe('how many there are, where sizes belong', () => {
  const mended = (lines: string) =>
    mendText(`---\ntitle: Needle box\n${lines}\n---\n`, readOnly).text.split('\n').slice(2, -2).join('\n')
  test.each([
    ['scale: 24\nfrets: {count: 18}', 'scale: {length: 24, lines: 18, fretted: true}'],
    ['scale: 24\nfrets:\n  number: 18', 'scale: {length: 24, lines: 18, fretted: true}'],
    [
      'scale: 24\nfrets: {count: 18, crown: 1/16}',
      'scale: {length: 24, lines: 18, fretted: true}\nfrets: {crown: 1/16}',
    ],
    ['scale: {length: 24, frets: {count: 18}}', 'scale: {length: 24, lines: 18, fretted: true}'],
    [
      'scale: {length: 24, lines: 18}\nfrets: {crown: 1/16, count: 18}',
      'scale: {length: 24, lines: 18}\nfrets: {crown: 1/16}',
    ],
  ])('%s', (lines, as) => expect(mended(lines)).toBe(as))
  test('is asked about where the scale says another, or each string has one', () => {
    for (const lines of ['scale: {length: 24, lines: 12}\nfrets: {count: 18}', 'tuners: {count: 3}']) {
      const {problems} = readBuild(`---\ntitle: Needle box\n${lines}\n---\n`, {slug: 'needle-box'})
      expect(problems).toMatchObject([
        {rule: 'unknown-key', message: expect.stringMatching(/lines: 18|each string/)},
      ])
      expect(mended(lines)).toBe(lines)
    }
  })
})

describe('a list without its brackets', () => {
  const told = (line: string) =>
    readBuild(`---\ntitle: A\n${line}\n---\n`, {slug: 'a'}).problems.map(({rule, expected}) => [
      rule,
      expected,
    ])
  test('of short texts is asked about, with both readings to paste, and each is then silent', () => {
    expect(told('tags: evening, harbour')).toEqual([
      ['list-without-brackets', ['[evening, harbour]', '"evening, harbour"']],
    ])
    expect([told('tags: [evening, harbour]'), told('tags: "evening, harbour"')]).toEqual([[], []])
  })
  test('a lone text or a sentence is one text', () => {
    for (const line of ['tags: evening', 'cautions: this neck is old, keep children away from it'])
      expect(told(line)).toEqual([])
  })
})

test('a warning of the text that the build accepts is a remark with the reason, and is not mended', () => {
  const [problem] = readBuild(
    '---\ntitle: A\nsummary: “So”\naccept: {quotes-curly: they belong to it}\n---\n',
    {
      slug: 'a',
    },
  ).problems
  expect(problem).toMatchObject({
    severity: 'remark',
    message: expect.stringContaining('(accepted: they belong'),
  })
  expect(problem).not.toHaveProperty('sure')
})
