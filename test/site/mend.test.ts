import {chmodSync, mkdtempSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync} from 'node:fs'
import {tmpdir} from 'node:os'
import {join} from 'node:path'
import {Readable} from 'node:stream'
import {afterAll, describe, expect, test} from 'vitest'
import type {MendReading} from '../../plugins/build-file/heal/mend.ts'
import {leavesOf} from '../../plugins/build-file/schema/path.ts'
import {mendFile} from '../../site/commands/mend-file.ts'
import {manyBuilds, readAll, readOnly} from '../support/slip-healing.ts'
import {randomFrom, slips} from '../support/slips.ts'
import {tempJournal} from '../support/temp-journal.ts'

import '../support/slow.ts'

const folder = mkdtempSync(join(tmpdir(), 'mend-'))
afterAll(() => rmSync(folder, {recursive: true}))

/** Write a file, mend it, and tell what became of it and what was said. */
async function mended(
  source: string | Buffer,
  {read = readAll, asks = false, answers = '', mode = 0o644} = {} as {
    read?: (text: string) => MendReading
    asks?: boolean
    answers?: string
    mode?: number
  },
) {
  const path = join(folder, 'box.md')
  rmSync(path, {force: true})
  writeFileSync(path, source)
  chmodSync(path, mode)
  const said: string[] = []
  const say = (line: string) => said.push(line)
  const left = await mendFile({path, file: 'box.md', read, asks, say, answers: Readable.from([answers])})
  return {text: readFileSync(path, 'utf8'), said, left, mode: statSync(path).mode & 0o777}
}

const file = (lines: readonly string[], end = '\n') => ['---', ...lines, '---', ''].join(end)
const slippedLines = [
  '# the first one',
  'title: Needle box',
  'box:   10 1/8 x 7 x 2     # as found',
  '',
  'scale: 24 1/4 inn         # a slip',
  'strings: [D3 .030w,  A3 .020w, D4 .013]',
]
const soundLines = slippedLines.map((line) => line.replace(' inn ', ' in ').replace(' inn', ' in'))

describe('what is written', () => {
  test('each change is shown before and after, then counted', async () => {
    const {said} = await mended(file(slippedLines))
    expect(said).toEqual([
      'box.md',
      '  6  - scale: 24 1/4 inn         # a slip',
      '     + scale: 24 1/4 in         # a slip',
      '  1 change written',
    ])
  })
  test.each([
    ['ends of lines as one system writes them', '\r\n', ''],
    ['a byte order mark', '\n', '\uFEFF'],
    ['both', '\r\n', '\uFEFF'],
  ])('keeps remarks, order, spacing and %s', async (_, end, mark) => {
    const {text} = await mended(mark + file(slippedLines, end))
    expect(text).toBe(mark + file(soundLines, end))
  })
  test('keeps tabs in prose and mends those of the front matter', async () => {
    const {text} = await mended('---\ntitle: A\nscale:\n\tlength: 24\n---\n\n\tcode\tas it is\n')
    expect(text).toBe('---\ntitle: A\nscale:\n  length: 24\n---\n\n\tcode\tas it is\n')
  })
  test('keeps the rights of the file, and leaves nothing beside it', async () => {
    expect(await mended(file(slippedLines), {mode: 0o600})).toMatchObject({mode: 0o600})
    expect(readdirSync(folder)).toEqual(['box.md'])
  })
  test.each([
    [
      'what belongs under an empty key',
      ['box:', 'length: 10 1/8', 'width: 7'],
      ['box:', '  length: 10 1/8', '  width: 7'],
    ],
    [
      'a key of a list item at the dash',
      ['strings:', '  - note: D3', '  gauge: .030w'],
      ['strings:', '  - note: D3', '    gauge: .030w'],
    ],
    [
      'a remark with a comma to come',
      ['strings: [D3, A3   # bass side: both'],
      ['strings: [D3, A3]   # bass side: both'],
    ],
    ['a key of measured that is no path', ['measured: {rsonance: 205}'], ['measured: {resonance: 205}']],
    [
      'a colon left out in braces',
      ['strings: [{note D3, gauge: .030w}]'],
      ['strings: [{note: D3, gauge: .030w}]'],
    ],
    [
      'a count of what each string has',
      ['strings: [D3, A3]', 'tuners: 2 on the bass side'],
      ['strings: [D3, A3]', 'tuners: {side: bass}'],
    ],
  ])('%s', async (_, slipped, meant) => {
    const title = 'title: Needle box'
    expect((await mended(file([title, ...slipped]), {read: readOnly})).text).toBe(file([title, ...meant]))
  })
  test.each([
    ['a comma at the end of a text', 'title: Needle box,'],
    ['a comma within quotes that never end', 'title: "Needle box,'],
    ['a figure that several keys can have', 'bridge: bolt, 5/16'],
    ['a tuning without its octaves', 'strings: open G'],
    ['a line and its place without a colon', 'measured: {lines: {12, 12 1/8}}'],
  ])('%s is asked about, not written', async (_, line) => {
    const source = file(line.startsWith('title') ? [line] : ['title: Needle box', line])
    const {text, left} = await mended(source, {read: readOnly})
    expect(text).toBe(source)
    expect(left.some(({expected, sure}) => expected && !sure)).toBe(true)
    const asked = await mended(source, {read: readOnly, asks: true, answers: '1\n'})
    expect(asked.text).not.toBe(source)
  })
  test('curly quotes round a text, and what they hid', async () => {
    const {text, left} = await mended(file(['title: “Needle box”', 'scale: “24 1/4”']))
    expect([text, left.filter(({severity}) => severity === 'error')]).toEqual([
      file(['title: “Needle box”', 'scale: 24 1/4']),
      [],
    ])
  })
  test('one slip in a file of four thousand lines', async () => {
    const prose = 'It hums. Half an inch was left, 24 inn of it.\n\n'.repeat(2_000)
    const {text} = await mended(file(slippedLines) + prose, {read: readOnly})
    expect(text).toBe(file(soundLines) + prose)
  })
  test('a hundred and twenty slips in one file, more than are told at once', async () => {
    const holes = (unit: string) =>
      Array.from({length: 120}, (_, at) => `  - {diameter: 1 ${(at % 63) + 1}/64 ${unit}}`)
    const lines = (unit: string) => ['title: A', 'box:', '  holes:', ...holes(unit)]
    const {text} = await mended(file(lines('inn')), {read: readOnly})
    expect(text).toBe(file(lines('in')))
  })
})

describe('what is not', () => {
  test('what has more than one reading stays, with its lines to paste', async () => {
    const source = file(['title: A', 'neck: 1x2'])
    const {text, said, left} = await mended(source)
    expect([text, said]).toEqual([source, ['box.md', '  nothing here is certain enough to be written']])
    expect(
      left.find(({rule}) => rule === 'unreadable-length' || rule === 'wrong-shape')?.expected,
    ).not.toEqual([])
  })
  test('a file that is read-only', async () => {
    const source = file(slippedLines)
    const {text, said, mode} = await mended(source, {mode: 0o444})
    expect([text, mode]).toEqual([source, 0o444])
    expect(said.at(-1)).toBe('box.md cannot be written: it is read-only. The changes above were not made')
  })
  test.each(['before', 'after'])(
    'a file that somebody writes while it is mended, %s the slip',
    async (where) => {
      const source = file(slippedLines)
      const theirs = where === 'before' ? `${source}One more line.\n` : file(['title: Theirs'])
      let reads = 0
      const read = (text: string) => {
        reads += 1
        if (reads === 1) writeFileSync(join(folder, 'box.md'), theirs)
        return readAll(text)
      }
      const {text, said} = await mended(source, {read})
      expect(text).toBe(theirs)
      expect(said.at(-1)).toContain('was changed while it was looked at')
    },
  )
  test('a file that is taken away while it is mended', async () => {
    const read = (text: string) => {
      rmSync(join(folder, 'box.md'), {force: true})
      return readAll(text)
    }
    await expect(mended(file(slippedLines), {read})).rejects.toThrow('ENOENT')
    expect(readdirSync(folder)).toEqual([])
  })
  test('bytes that are no text', async () => {
    const bytes = Buffer.concat([Buffer.from(file(slippedLines)), Buffer.from([0xe4, 0x0a])])
    const {said} = await mended(bytes)
    expect(readFileSync(join(folder, 'box.md')).equals(bytes)).toBe(true)
    expect(said).toEqual(['box.md cannot be read as text'])
  })
  test('what would change the meaning of another key', async () => {
    // A reader by whom each change of the scale's line also loses the title.
    const read = (text: string): MendReading => {
      const {problems, values} = readAll(text)
      const {title: _, ...without} = values as Record<string, unknown>
      return {problems, values: text.includes('inn') ? values : without}
    }
    const source = file(slippedLines)
    expect(await mended(source, {read})).toMatchObject({text: source})
    expect(await mended(source, {read, asks: true, answers: 'y\n'})).toMatchObject({text: source})
  })
})

describe('asked one by one', () => {
  const source = file(['title: A', 'scale: 24 inn', 'neck: {width: 1 inn, thickness: 3/4}'])
  const ask = (answers: string) => mended(source, {asks: true, answers, read: readOnly})
  const [scale, width] = ['24 in', '1 in']
  const withThese = (...those: string[]) =>
    those.reduce((text, each) => text.replace(`${each}n`, each), source)

  test('y and 1 write, an empty line and n leave', async () => {
    expect((await ask('y\nn\n')).text).toBe(withThese(scale))
    expect((await ask('\n1\n')).text).toBe(withThese(width))
    expect((await ask('y\r\nYES\r\n')).text).toBe(withThese(scale, width))
    expect((await ask('n\nno\n')).text).toBe(source)
  })
  test('an answer that is none leaves it', async () => {
    for (const answer of ['2', '0', '-1', 'x', '1.5', ' ', 'yy'])
      expect((await ask(`${answer}\n${answer}\n`)).text).toBe(source)
  })
  test('the end of the answers writes those that were given', async () => {
    expect((await ask('y\n')).text).toBe(withThese(scale))
    expect((await ask('y')).text).toBe(withThese(scale))
    expect((await ask('')).text).toBe(source)
  })
  test('shows what it asks about, before and after', async () => {
    const {said} = await ask('')
    expect(said.slice(1, 4)).toEqual([
      '  3  - scale: 24 inn',
      '     + scale: 24 in',
      'Write it? y, or nothing to leave it',
    ])
  })
  test('of two readings takes the one that is chosen', async () => {
    const open = file(['title: A', 'started: 3/7/2026'])
    const first = await mended(open, {asks: true, answers: '1\n', read: readOnly})
    const second = await mended(open, {asks: true, answers: '2\n', read: readOnly})
    expect([first.text, second.text].map((text) => /started: (.*)/.exec(text)?.[1]).sort()).toEqual([
      '2026-03-07',
      '2026-07-03',
    ])
    expect((await mended(open, {asks: true, answers: 'y\n', read: readOnly})).text).toBe(open)
  })
})

/** Files with two or three slips, each of another kind on a line of its own. */
function together(count: number, seed: number) {
  const random = randomFrom(seed)
  const builds = manyBuilds()
  const names = Object.keys(slips)
  for (;;) {
    const meant = builds[Math.floor(random() * builds.length)]!
    const lines = meant.split('\n')
    const end = lines.indexOf('---', 1)
    const made: string[] = []
    const free = [...lines.keys()].filter((at) => at > 0 && at < end && !/^\s*(#|$)/.test(lines[at]!))
    for (let tries = 0; made.length < count && tries < 100; tries += 1) {
      const name = names[Math.floor(random() * names.length)]!
      const at = free[Math.floor(random() * free.length)]!
      const changed = made.includes(name) ? undefined : slips[name]!(lines[at]!, random)
      if (changed === undefined || changed === lines[at]) continue
      lines[at] = changed
      free.splice(free.indexOf(at), 1)
      made.push(name)
    }
    if (made.length === count) return {meant, made, text: lines.join('\n')}
  }
}

const said = (text: string) =>
  new Map(
    leavesOf(readOnly(text).values).map(([path, {text: _, place: __, ...value}]) => [
      path,
      JSON.stringify(value),
    ]),
  )

describe.each([
  ['pairs', 2, 5000],
  ['triples', 3, 6000],
])('%s of slips', (_, count, seed) => {
  const files = Array.from({length: 30}, (__, at) => together(count, seed + at))
  const forms = [
    (text: string) => text,
    (text: string) => text.replaceAll('\n', '\r\n'),
    (text: string) => `\uFEFF${text}`,
  ]
  test('no value is written but what was meant; a second run changes nothing', async () => {
    for (const [at, {text, meant, made}] of files.entries()) {
      const source = forms[at % 3]!(text)
      const once = await mended(source, {read: readOnly})
      const [wanted, before] = [said(meant), said(source)]
      const strange = [...said(once.text)].filter(
        ([path, value]) => wanted.get(path) !== value && before.get(path) !== value,
      )
      expect([made, strange]).toEqual([made, []])
      expect((await mended(once.text, {read: readOnly})).text, String(made)).toBe(once.text)
      const ends = (all: string) => [all.includes('\r\n'), /[^\r]\n/.test(all), all.startsWith('\uFEFF')]
      expect([made, ends(once.text)]).toEqual([made, ends(source)])
    }
  })
})

describe('the command', () => {
  const journal = tempJournal({
    'builds/needle-box.md': file(slippedLines),
    'builds/journal.yaml': 'ruler: 1/32 inn\n',
    'builds/rack.yaml': '- {id: A, wood: beech, length: 24 inn, width: 3, thickness: 1}\n',
  })
  afterAll(journal.remove)
  const at = (name: string) => readFileSync(join(journal.root, 'builds', name), 'utf8')

  test('mends builds, settings and rack, then tells what is left; a second run writes nothing', () => {
    const names = ['needle-box.md', 'journal.yaml', 'rack.yaml']
    const paths = names.map((name) => `builds/${name}`)
    const first = journal.run('check', ...paths, '--mend')
    expect(first).toMatchObject({status: 0, stderr: ''})
    expect(first.stdout.match(/1 change written/g)).toHaveLength(3)
    const texts = names.map(at)
    expect(texts).toEqual([
      file(soundLines),
      'ruler: 1/32 in\n',
      '- {id: A, wood: beech, length: 24 in, width: 3, thickness: 1}\n',
    ])
    const second = journal.run('check', ...paths, '--mend')
    expect(second.stdout.match(/nothing here is certain enough to be written/g)).toHaveLength(3)
    expect(names.map(at)).toEqual(texts)
  })
  test('asks, with answers from standard input, and prints JSON alone where it is asked for', () => {
    journal.write('builds/needle-box.md', file(slippedLines))
    expect(journal.answer('y\n', 'check', 'builds/needle-box.md', '--mend=ask').stdout).toContain('Write it?')
    expect(at('needle-box.md')).toBe(file(soundLines))
    journal.write('builds/needle-box.md', file(slippedLines))
    const {stdout} = journal.run('check', 'builds/needle-box.md', '--mend', '--json')
    expect(JSON.parse(stdout)).toMatchObject({failed: false})
    expect(at('needle-box.md')).toBe(file(soundLines))
  })
  test('without a file it says how it is used, and writes nothing', () =>
    expect(journal.run('check', '--mend')).toMatchObject({
      status: 2,
      stderr: expect.stringContaining('the file to mend is missing'),
    }))
})
