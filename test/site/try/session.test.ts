import {readdirSync, readFileSync} from 'node:fs'
import {describe, expect, test} from 'vitest'
import {readBuild, readJournal} from '../../../plugins/build-file/read.ts'
import {checks} from '../../../plugins/checks/checks.ts'
import {planBuild} from '../../../plugins/plan/plan.ts'
import {settle} from '../../../plugins/plan/settle.ts'
import {frontMatterOf} from '../../../site/pages/build.ts'
import {linkOf, readLink} from '../../../site/try/link.ts'
import {
  type Around,
  changedValues,
  mendIn,
  openSession,
  type Session,
  setIn,
  shownText,
  writeIn,
} from '../../../site/try/session.ts'
import {viewOf} from '../../../site/try/view.ts'
import {randomFrom, slipped} from '../../support/slips.ts'
import {soundBuilds} from '../../support/sound-builds.ts'
import '../../support/slow.ts'

const {settings} = readJournal(readFileSync('builds/journal.yaml', 'utf8'))
const around: Around = {context: {journal: settings, pieces: []}, body: {days: []}}
const texts = readdirSync('builds', {recursive: true, encoding: 'utf8'})
  .filter((name) => name.endsWith('.md'))
  .map((name): [string, string] => [name, frontMatterOf(readFileSync(`builds/${name}`, 'utf8'))])
const textOf = (name: string) => texts.find(([each]) => each === name)![1]
const open = (text: string) => openSession(text, 'needle-box', around)
const remarks = (text: string) => text.match(/(?<=^|\s)#.*$/gm)?.sort() ?? []

// Keys that stand in the file, in short forms, in lists, and keys that it does not have.
const twelve: [string, string][] = [
  ['scale.length', '25 1/2 in'],
  ['box.length', '11 in'],
  ['box.width', '8 in'],
  ['box.depth', '2 1/4 in'],
  ['strings.1.gauge', '.032 in w'],
  ['strings.1.note', 'D3'],
  ['neck.width.nut', '1 3/4 in'],
  ['neck.thickness', '1 in'],
  ['bridge.height', '3/8 in'],
  ['spacing.nut', '1 1/8 in'],
  ['head.length', '6 1/2 in'],
  ['handed', 'left'],
]

describe('twelve keys', () => {
  test.each(texts)(
    'set in %s read as they were set, with every remark kept, and set back leave no trace',
    (_, text) => {
      const start = open(text)
      let session = start
      for (const change of twelve) session = setIn(session, [change])
      const {build, problems} = readBuild(session.now.text, {slug: 'needle-box', journal: settings})
      expect(problems).toEqual([])
      for (const [path, value] of twelve)
        expect([path, shownText({...session.now, build}, path)]).toEqual([path, value])
      expect(remarks(session.now.text)).toEqual(remarks(text))
      for (const [path] of twelve) session = setIn(session, [[path, shownText(start.now, path)]])
      expect(session.now.text).toBe(text)
    },
  )

  test('set in a sound build give a file that check is silent about, and the same plan', () => {
    const sound: [string, string][] = [
      ['title', 'Breakwater, longer'],
      ['scale.length', '24 1/2'],
      ['strings.1.gauge', '.031w'],
      ['strings.2.gauge', '.021w'],
      ['action.nut', '9/64'],
      ['action.octave', '15/64'],
      ['spacing.nut', '1 1/32'],
      ['spacing.bridge', '1 1/16'],
      ['play', 'slide'],
      ['finish', 'oil'],
      ['box.at', '16 1/4'],
      ['summary', 'Another scale on the same box'],
    ]
    const start = open(`---\n${soundBuilds['on top']}---\n`)
    let session = start
    for (const change of sound) session = setIn(session, [change])
    const {build, problems} = readBuild(session.now.text, {slug: 'needle-box', journal: settings})
    const settled = settle(build, settings)
    const plan = planBuild(settled, {journal: settings, pieces: []})
    expect([...problems, ...checks(settled, plan)].filter(({severity}) => severity !== 'remark')).toEqual([])
    expect(plan).toEqual(session.now.plan)
    for (const [path] of sound) session = setIn(session, [[path, shownText(start.now, path)]])
    expect(session.now.text).toBe(start.now.text)
  })
})

test('only the lines of the key that changes are written anew', () => {
  const text = textOf('lantern-pier/index.md')
  const changed = (values: [string, string][]) => {
    const now = setIn(open(text), values).now.text.split('\n')
    return now.filter((line) => !text.split('\n').includes(line))
  }
  expect(changed([['scale.length', '25']])).toEqual(['  length: 25'])
  expect(changed([['bridge.height', '3/8']])).toEqual([
    '  height: 3/8                  # from what it stands on to the crown, rod included',
  ])
  expect(changed([['frets.crown', '0.040']])).toEqual(['frets: {crown: 0.040}'])
})

describe('a text that somebody writes', () => {
  // Outside check: each slip is one that the tests of mending know; the judge is the reader of the command line.
  test('may hold any slip: it is told as check tells it, and what is proposed can be taken', () => {
    for (let seed = 1; seed <= 8; seed += 1) {
      const {text} = slipped(textOf('left-bank.md'), randomFrom(seed))
      const session = writeIn(open(textOf('left-bank.md')), text)
      const {problems} = readBuild(text, {slug: 'needle-box', journal: settings})
      const told = session.now.problems.map(({rule, line}) => `${rule} ${line}`)
      expect(told).toEqual(expect.arrayContaining(problems.map(({rule, line}) => `${rule} ${line}`)))
      for (const [at, {expected = []}] of session.now.problems.entries())
        if (expected.length > 0) expect(mendIn(session, at, 0).now.text).not.toBe(text)
    }
  })

  test('may be anything at all', () => {
    for (const text of [
      '',
      '---\n---\n',
      '---\n[1, 2]\n---\n',
      '---\n{title: x}\n---\n',
      'no fences',
      '---\nopen',
    ])
      expect(
        viewOf(setIn(writeIn(open(textOf('left-bank.md')), text), [['scale.length', '25']])),
      ).toMatchObject({
        isStart: false,
      })
  })
})

test.each(['"', '{', ']', '25 1/2 #', '- -', ': :', '&a', '*a', '25\u00a01/2', '1/0', '-3', '9'.repeat(300)])(
  'what is typed into a field stays within it: %s',
  (typed) => {
    const text = textOf('tide-table.md')
    const session = setIn(open(text), [['scale.length', typed]])
    expect(shownText(session.now, 'scale.length')).toBe(typed.trim())
    const others = (one: Session) => [...one.now.text.split('\n')].filter((line) => !line.includes('length:'))
    expect(others(session)).toEqual(others(open(text)))
    expect(setIn(session, [['scale.length', shownText(open(text).now, 'scale.length')]]).now.text).toBe(text)
  },
)

describe('a proposal taken', () => {
  test('sets its value, and set back leaves no trace', () => {
    const start = open(`---\n${soundBuilds['on top']}---\n`)
    const broken = setIn(start, [['play', 'slidee']])
    const at = broken.now.problems.findIndex(({expected, severity}) => expected && severity !== 'remark')
    expect(broken.now.problems[at]?.severity).not.toBe('remark')
    const mended = mendIn(broken, at, 0)
    expect(mended.now.problems.filter(({rule}) => rule === broken.now.problems[at]!.rule)).toEqual([])
    expect(setIn(mended, [['play', 'slide']]).now.text).toBe(start.now.text)
  })
})

describe('a link', () => {
  const changed = setIn(open(textOf('left-bank.md')), twelve)
  const link = linkOf('left-bank', changedValues(changed))

  test('carries the changes alone, and gives them back', () => {
    const {from, changes, left} = readLink(`#${link}`)
    expect([from, left]).toEqual(['left-bank', 0])
    expect(setIn(open(textOf('left-bank.md')), changes).now.plan).toEqual(changed.now.plan)
    expect(link.length).toBeLessThan(600)
  })

  test('that was cut, that is hostile or that an older version wrote does no harm', () => {
    for (let at = 0; at < link.length; at += 7) {
      const {changes} = readLink(`#${link.slice(0, at)}`)
      expect(() => viewOf(setIn(open(textOf('left-bank.md')), changes))).not.toThrow()
    }
    const hostile =
      '#from=../../etc&__proto__.x=1&constructor=2&no.such=3&scale.length=%00&title=<script>alert(1)</script>'
    const {from, changes} = readLink(hostile)
    expect(from).toBe('')
    const session = setIn(open(textOf('left-bank.md')), changes)
    expect([...session.changes.keys()]).toEqual(['title'])
    expect(viewOf(session).drawing).not.toContain('<script')
    expect(readLink(`#${'a=1&'.repeat(5000)}`).changes.length).toBeLessThanOrEqual(300)
  })
})

test('what changed is said in words, against the start', () => {
  const {says} = viewOf(setIn(open(textOf('lantern-pier/index.md')), [['scale.length', '26']]))
  // Taylor: at one pitch the pull goes with the square of the length.
  const part = Math.round(((26 / 24.25) ** 2 - 1) * 100)
  expect(says[0]).toMatch(new RegExp(`^pull up ${part} %, to `))
  expect(says).toContain('bridge line 26 in instead of 24 1/4 in')
})
