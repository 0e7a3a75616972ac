import {describe, expect, test} from 'vitest'
import {readBuild} from '../../plugins/build-file/read.ts'
import {checks} from '../../plugins/checks/checks.ts'
import {planBuild} from '../../plugins/plan/plan.ts'

const head = '---\ntitle: Needle box\nbox: 10 1/8 x 7 x 2\n'
const inBox = (lines: string) => `${head}${lines}\n---\n`

/** Everything that a file brings, as `line:column severity rule`. */
function problemsOf(text: string): string[] {
  const {build, problems} = readBuild(text, {slug: 'needle-box'})
  const plan = planBuild(build, {journal: {}, pieces: []})
  return [...problems, ...checks(build, plan)].map(
    ({line, column, severity, rule}) => `${line}:${column} ${severity} ${rule}`,
  )
}

const nine = (name: string) => Array(9).fill(`*${name}`).join(', ')
const bomb = `---\ntitle: A\na: &a [x, x, x, x, x, x, x, x, x]\nb: &b [${nine('a')}]\nc: &c [${nine('b')}]\nd: &d [${nine('c')}]\ne: &e [${nine('d')}]\ntags: [${nine('e')}]\n---\n`

const bad: Record<string, [string, string]> = {
  'YAML that breaks off': [`${head}scale: {length: 24\nstrings: 3\n---\n`, '4:1 error unreadable-yaml'],
  'a tab for a blank': [inBox('scale:\n\tlength: 24'), '5:1 error unreadable-yaml'],
  'a second document after dots': ['---\ntitle: A\n...\ntitle: B\n---\n', '4:1 error two-documents'],
  'a second block of dimensions': [
    '---\ntitle: A\n---\ntitle: B\nbox: 10 x 7 x 2\n---\n',
    '4:1 error two-documents',
  ],
  'aliases that unfold without end': [bomb, '7:8 error alias-bomb'],
  'an alias within what it stands for': ['---\ntitle: A\ntags: &t [*t]\n---\n', '3:11 error alias-bomb'],
  'an alias that stands for nothing': [inBox('summary: *this'), '4:10 error unreadable-yaml'],
  'five megabytes': [`---\ntitle: A\n---\n${'word '.repeat(1_000_000)}`, '1:1 error file-too-large'],
  'no front matter': ['# Needle box\n', '1:1 error front-matter-missing'],
  'an empty file': ['', '1:1 error front-matter-missing'],
  'front matter that never ends': ['---\ntitle: A\n', '1:1 error front-matter-unclosed'],
  'front matter that is a list': ['---\n- a\n- b\n---\n', '2:1 error front-matter-not-keys'],
  'front matter in JavaScript': ["---js\n{title: 'x'}\n---\n", '1:1 error front-matter-fence'],
  'front matter in TOML': ["---toml\ntitle='x'\n---\n", '1:1 error front-matter-fence'],
  'a remark on the fence': ['--- # mine\ntitle: A\n---\n', '1:1 error front-matter-fence'],
  'bytes that are no text': [`\u0000\u0001${'\uFFFD'.repeat(9)}`, '1:1 error not-text'],
  'a unit with a slip': [inBox('scale: 24 inn'), '4:8 error unreadable-length'],
  'a division by nothing': [inBox('scale: 3/0'), '4:8 error unreadable-length'],
  'two fraction bars': [inBox('scale: 1/2/3'), '4:8 error unreadable-length'],
  'a length below zero': [inBox('scale: -4'), '4:8 error negative-length'],
  'a mixed length below zero': [inBox('scale: -1-1/2'), '4:8 error negative-length'],
  'a number after the unit': [inBox('scale: 1/2 in 3'), '4:8 error unreadable-length'],
  'no number': [inBox('scale: NaN'), '4:8 error unreadable-length'],
  'a number past all numbers': [inBox('scale: 1e999'), '4:8 error unreadable-length'],
  'a pitch without its octave': [inBox('strings: [G .017]'), '4:11 error unreadable-pitch'],
  'a letter that is no note': [inBox('strings: [H2 .017]'), '4:11 error unreadable-pitch'],
  'a sharp and a flat': [inBox('strings: [G#b3 .017]'), '4:11 error unreadable-pitch'],
  'a blank before the sharp, in quotes': [inBox('strings: ["F #3 .017"]'), '4:12 error unreadable-pitch'],
  'a blank before the sharp, which makes a comment': [
    inBox('strings: [F #3 .017]'),
    '4:1 error unreadable-yaml',
  ],
  'a date that does not exist': [inBox('started: 2026-02-30'), '4:10 error unreadable-date'],
  'a scale of zero': [inBox('scale: 0'), '4:8 error out-of-range'],
  'a scale of 24 m': [inBox('scale: 24 m'), '4:8 error out-of-range'],
  'four hundred lines': [inBox('scale: {length: 24, lines: 400}'), '4:28 error out-of-range'],
  'no strings': [inBox('strings: 0'), '4:10 error out-of-range'],
  'an empty list of strings': [inBox('strings: []'), '4:10 error out-of-range'],
  'a gauge without its unit in a millimetre build': [
    '---\ntitle: A\nunits: mm\nstrings: [D3 .017]\n---\n',
    '4:14 error out-of-range',
  ],
  'unequal lists of tuners': [
    inBox('strings: 3\ntuners: {at: [-2, -3], off: [1/2, -1/2, 1/2]}'),
    '5:14 error tuners-uneven',
  ],
  'a key twice': [inBox('scale: 24\nscale: 25'), '5:1 error key-twice'],
  'a title missing': ['---\nbox: 10 x 7 x 2\n---\n', '1:1 error title-missing'],
  'a key that nobody knows': [inBox('sclae: 24'), '4:1 warning unknown-key'],
  'a comma inside braces': [
    inBox('played:\n  - {on: 2026-03-16, remark: low, soft}'),
    '5:30 warning comma-in-braces',
  ],
  'a list where keys belong': [inBox('neck: [1, 2]'), '4:7 error wrong-shape'],
  'two sides of a box': ['---\ntitle: A\nbox: 10 x 7\n---\n', '3:6 error wrong-shape'],
  'a word that the key does not take': [inBox('handed: lefty'), '4:9 error unknown-choice'],
  'wood that is not on the rack': [inBox('take: [A4]'), '4:8 fault piece-unknown'],
  'a rule that nobody knows': [inBox('accept: {bow: it plays}'), '4:10 warning unknown-rule'],
}

describe('a bad file is named at its place', () => {
  for (const [name, [text, problem]] of Object.entries(bad))
    test(name, () => expect(problemsOf(text)).toContain(problem))

  test('and brings nothing else where one value is bad', () => {
    expect(problemsOf(inBox('scale: 24 inn')).filter((each) => / (error|fault|warning) /.test(each))).toEqual(
      ['4:8 error unreadable-length'],
    )
  })
})

describe('line ends and marks shift no place', () => {
  const slip = inBox('scale: 24 inn\nhanded: lefty')
  const sound = inBox('scale: 24 1/4')
  test.each([
    ['CRLF', (text: string) => text.replaceAll('\n', '\r\n')],
    ['a byte-order mark', (text: string) => `\uFEFF${text}`],
    ['both', (text: string) => `\uFEFF${text.replaceAll('\n', '\r\n')}`],
    ['blanks after the fences', (text: string) => text.replaceAll('---', '---  ')],
  ])('%s', (_, change) => {
    expect(problemsOf(change(slip))).toEqual(problemsOf(slip))
    expect(problemsOf(change(sound))).toEqual(problemsOf(sound))
  })
})

test('all problems of a file come together, in its order', () => {
  const text = '---\nbox: 10 x 7\nscale: 24 inn\nstarted: 2026-02-30\nsclae: 24\n---\n'
  const {problems} = readBuild(text, {slug: 'x'})
  expect(problems.map(({line, rule}) => `${line} ${rule}`)).toEqual([
    '1 title-missing',
    '2 wrong-shape',
    '3 unreadable-length',
    '4 unreadable-date',
    '5 unknown-key',
  ])
})

test('a key given twice points at the first', () => {
  const {problems} = readBuild(inBox('scale: 24\nscale: 25'), {slug: 'x'})
  expect(problems[0]).toMatchObject({rule: 'key-twice', cause: {line: 4, column: 1}})
})

describe('an indent that is off is one problem, at its line', () => {
  test.each([
    ['below a key that has its value', 'title: A\n box: 10 x 7 x 2\nscale: 24\nneck: 2 x 1', 3],
    ['deeper than its neighbours', 'title: A\nbox:\n  length: 10\n   width: 7\n  depth: 2\nscale: 24', 5],
    ['less deep than its neighbours', 'title: A\nbox:\n  length: 10\n width: 7\n  depth: 2\nscale: 24', 5],
    ['the first key', ' title: A\nbox: 10 x 7 x 2\nscale: 24\nneck: 2 x 1\nstrings: 3', 2],
    ['an item of a list', 'title: A\nstrings:\n  - D3\n - A3\n  - D4\nscale: 24', 5],
    ['keys below a value', 'title: A\nscale: 24\n  lines: 12\n  fretted: true\nbox: 10 x 7 x 2', 3],
    ['a brace', 'title: A\nscale: {length: 24,\nlines: 12}\nbox: 10 x 7 x 2', 4],
  ])('%s', (_, front, line) => {
    const text = `---\n${front}\n---\n`
    const grave = readBuild(text, {slug: 'a'}).problems
    expect(grave.map((each) => `${each.line} ${each.rule}`)).toEqual([`${line} unreadable-yaml`])
    const length = text.split('\n')[line - 1]!.length
    for (const {column, endLine, endColumn} of grave) {
      expect(column).toBeLessThanOrEqual(length + 1)
      expect([endLine, endColumn <= length + 1]).toEqual([line, true])
    }
  })
})

describe('more than anybody writes is told once, and the rest of the file is read', () => {
  const many = (count: number, line: (at: number) => string) =>
    Array.from({length: count}, (_, at) => line(at))
  const rulesOf = (front: string) => readBuild(`---\ntitle: A\n${front}\nbox: 10 x 7 x 2\n---\n`, {slug: 'a'})
  test.each([
    ['keys', many(8000, (at) => `sclae-${at}: 3`).join('\n'), 502],
    ['measured lines', `measured:\n  lines:\n${many(20_000, (at) => `    ${at}: 3`).join('\n')}`, 505],
    ['finishes', `finish: [${many(10_000, () => 'oil').join(', ')}]`, 3],
    ['tags', `tags: [${many(10_000, () => 'a').join(', ')}]`, 3],
    ['days of playing', `played:\n${many(101, () => '  - {on: 2026-03-16}').join('\n')}`, 4],
    ['scores', `played: {scores: {${many(11, (at) => `s${at}: 3`).join(', ')}}}`, 3],
  ])('%s', (_, front, line) => {
    const {build, problems} = rulesOf(front)
    const last = problems.filter(({severity}) => severity === 'error')
    expect(last.map((each) => each.rule)).toContain('out-of-range')
    expect(last.map((each) => each.line)).toContain(line)
    expect(problems.length).toBeLessThanOrEqual(101)
    if (front.length < 100_000) expect(build.values.title?.text).toBe('A')
  })
  test('problems', () => {
    const {problems, build} = rulesOf(many(300, (at) => `key-${at}: 3`).join('\n'))
    expect(problems).toHaveLength(101)
    expect(problems.at(-1)).toMatchObject({rule: 'too-many-problems', line: 103})
    expect(build.values.box?.length?.text).toBe('10')
  })
  test('aliases that stand for nothing', () => {
    const {problems} = rulesOf(`tags: [${many(5000, (at) => `*a${at}`).join(', ')}]`)
    expect(problems.map(({rule}) => rule)).toEqual(['out-of-range', ...Array(20).fill('unreadable-yaml')])
  })
  test.each([
    ['commas', `tags: [${','.repeat(160_000)}]`],
    ['values on one line', `tags: [${'a, '.repeat(160_000)}a]`],
    ['values on their lines', `parts:\n${'  - {name: a, wood: b}\n'.repeat(30_000)}`],
    ['keys that are not known', `neck-2:\n${many(21_001, (at) => `  widht-${at}: 3`).join('\n')}`],
  ])('%s without end are not read, and their place is told', (_, front) => {
    const {problems, build} = rulesOf(front)
    expect(problems.map(({rule, severity}) => [rule, severity])).toEqual([['file-too-large', 'error']])
    expect(problems[0]!.line).toBeGreaterThan(2)
    expect(build.values.title).toBeUndefined()
  })
  test('ten thousand pieces of stock are read', () => {
    const row = '  - {id: A1, wood: ash, length: 96, width: 8, thickness: 1}\n'
    expect(rulesOf(`stock:\n${row.repeat(9900)}`).build.values.stock).toHaveLength(9900)
  })
  test('aliases in a list of values', () => {
    const {problems} = rulesOf(`tags: [&a x, ${many(20_000, () => '*a').join(', ')}]`)
    expect(problems.map(({rule}) => rule)).toEqual(['alias-bomb'])
  })
})

test('of a file full of broken lines all are told, and the first are searched for what was meant', () => {
  const lines = Array.from({length: 60}, (_, at) => `a${at}: b: c`).join('\n')
  const {problems} = readBuild(`---\ntitle: Needle box\n${lines}\nscale: 24\n---\n`, {slug: 'x'})
  const broken = problems.filter(({rule}) => rule === 'unreadable-yaml')
  expect(broken).toHaveLength(60)
  expect(broken.map(({expected}) => expected !== undefined)).toEqual(broken.map((_, at) => at < 50))
})
