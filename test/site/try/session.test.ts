import {readdirSync, readFileSync} from 'node:fs'
import {toHtml} from 'hast-util-to-html'
import {h} from 'hastscript'
import {beforeAll, describe, expect, test} from 'vitest'
import {readBuild, readJournal} from '../../../plugins/build-file/read.ts'
import {leavesOf} from '../../../plugins/build-file/schema/path.ts'
import {checks} from '../../../plugins/checks/checks.ts'
import {heroDrawing} from '../../../plugins/drawings/hero/hero.ts'
import {planBuild} from '../../../plugins/plan/plan.ts'
import {settle} from '../../../plugins/plan/settle.ts'
import {frontMatterOf} from '../../../site/pages/build.ts'
import {differenceOf} from '../../../site/try/difference.ts'
import {keysOf} from '../../../site/try/fields.ts'
import {handlesOf, moved} from '../../../site/try/handles.ts'
import {fetchChecks, fetchHealing} from '../../../site/try/later.ts'
import * as light from '../../../site/try/light-markup.ts'
import {linkOf, readLink} from '../../../site/try/link.ts'
import {newBuildOf, wholeOf} from '../../../site/try/making.ts'
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
import {randomFrom, slipped, slips} from '../../support/slips.ts'
import {soundBuilds} from '../../support/sound-builds.ts'

import '../../support/slow.ts'

beforeAll(async () => {
  await fetchChecks()
  await fetchHealing()
})

const {settings} = readJournal(readFileSync('builds/journal.yaml', 'utf8'))
const around: Around = {context: {journal: settings, pieces: []}, body: {days: []}}
const texts = readdirSync('builds', {recursive: true, encoding: 'utf8'})
  .filter((name) => name.endsWith('.md'))
  .map((name): [string, string] => [name, frontMatterOf(readFileSync(`builds/${name}`, 'utf8'))])
const textOf = (name: string) => texts.find(([each]) => each === name)![1]
const opened = new Map<string, Session>()
const open = (text: string) => {
  const session = opened.get(text) ?? openSession(text, 'needle-box', around)
  opened.set(text, session)
  return session
}
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
  test.each(texts.filter(([name]) => /left-bank|tide-table|needle|lantern/.test(name)))(
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
    expect(plan).toEqual(wholeOf(session.now, around.context).plan)
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
    for (let seed = 1; seed <= 3; seed += 1) {
      const {text} = slipped(textOf('left-bank.md'), randomFrom(seed))
      const session = writeIn(open(textOf('left-bank.md')), text)
      const {problems} = readBuild(text, {slug: 'needle-box', journal: settings})
      const told = session.now.problems.map(({rule, line}) => `${rule} ${line}`)
      expect(told).toEqual(expect.arrayContaining(problems.map(({rule, line}) => `${rule} ${line}`)))
      for (const problem of session.now.problems)
        if (problem.expected?.length) expect(mendIn(session, problem, 0).now.text).not.toBe(text)
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

// Every slip of the tests of mending, typed into the field of a value that it can be made on.
test.each(Object.keys(slips))(
  'a slip typed into a field is told at it, and mended with a tap: %s',
  (name) => {
    let typed = 0
    for (const file of ['left-bank.md', 'tide-table.md', 'lantern-pier/index.md']) {
      const start = open(textOf(file))
      const fields = new Set(keysOf(start.now.build))
      for (const [path, {text}] of leavesOf(start.now.build.values)) {
        if (typed >= 3) return
        if (!fields.has(path)) continue
        const line = `${path.split('.').at(-1)}: ${text}`
        const slip = slips[name]!(line, randomFrom(typed + 1))
        const value = slip?.match(/^[\w-]+: (.*)$/)?.[1]?.trim()
        if (!value || value === text) continue
        typed += 1
        const session = setIn(start, [[path, value]])
        const given = [name, path, value]
        expect([...given, viewOf(session).text === start.now.text]).toEqual([...given, false])
        const known = start.now.problems.map(({rule}) => rule)
        const isFresh = ({rule, severity}: (typeof start.now.problems)[number]) =>
          severity === 'error' && !known.includes(rule)
        for (const problem of session.now.problems.filter(isFresh)) {
          expect([...given, viewOf(session).problems.find((one) => one.rule === problem.rule)?.path]).toEqual(
            [...given, path],
          )
          if (!problem.expected?.length) continue
          const {now} = mendIn(session, problem, 0)
          expect([...given, now.problems.filter(isFresh).map(({rule}) => rule)]).toEqual([...given, []])
        }
        expect(setIn(session, [[path, text]]).now.text).toBe(start.now.text)
      }
    }
  },
)

describe('a handle', () => {
  const sound = `---\n${soundBuilds['on top']}---\n`
  const bare = textOf('needle-box-one.md')
  test.each([
    ['a sound build', sound],
    ['a bare one', bare],
    ['one placed by the bridge', textOf('left-bank.md')],
  ])('of %s stands where it was moved, proposed or given, and a link brings it back there', (_, text) => {
    const start = open(text)
    const {handles, scale} = handlesOf(start.now.plan)!
    for (const {name, mm} of handles) {
      const to = mm + scale.rulerMm * (mm < 0 ? -4 : 4)
      const after = setIn(start, moved(name, to, start.now))
      const now = handlesOf(after.now.plan)?.handles.find((one) => one.name === name)
      expect([name, Math.abs((now?.mm ?? 0) - to) <= scale.rulerMm]).toEqual([name, true])
      expect(setIn(start, changedValues(after)).now.text).toBe(after.now.text)
    }
  })
})

test('every value that a build can have is listed once, those of its lists by number', () => {
  const keys = keysOf(open(textOf('left-bank.md')).now.build)
  expect(new Set(keys).size).toBe(keys.length)
  expect(keys).toEqual(expect.arrayContaining(['scale.length', 'strings.4.note', 'neck.wood', 'tuners.at.3']))
})

test('what was tried becomes a build of its own, without what was made of the other', () => {
  const text = textOf('lantern-pier/index.md')
  const {now} = setIn(open(text), [['scale.length', '25']])
  const own = newBuildOf(now, 'Longer pier', 'lantern-pier')
  const {build, problems} = readBuild(own, {slug: 'longer-pier', journal: settings})
  expect(problems.filter(({severity}) => severity === 'error')).toEqual([])
  const {title, status, measured, started, scale} = build.values
  expect([title?.value, build.values['based-on']?.value, status?.value, scale?.length?.text]).toEqual([
    'Longer pier',
    'lantern-pier',
    'idea',
    '25',
  ])
  expect([measured, started]).toEqual([undefined, undefined])
  expect(own).toContain('  length: 25')
})

test('of two texts the lines that differ are told, in order', () => {
  expect(differenceOf('a\nb\nc\nd', 'a\nx\nc\nd\ne')).toEqual([
    {is: 'gone', line: 'b'},
    {is: 'new', line: 'x'},
    {is: 'new', line: 'e'},
  ])
  expect(differenceOf('a', 'a')).toEqual([])
  // A line that stands under a key says under which.
  expect(
    differenceOf('scale:\n  length: 23\nbox:\n  length: 9', 'scale:\n  length: 24\nbox:\n  length: 8'),
  ).toEqual([
    {is: 'under', line: 'scale:'},
    {is: 'gone', line: '  length: 23'},
    {is: 'new', line: '  length: 24'},
    {is: 'under', line: 'box:'},
    {is: 'gone', line: '  length: 9'},
    {is: 'new', line: '  length: 8'},
  ])
})

// Outside check: the libraries that the page's small markup stands for.
test('markup is written as the libraries write it', () => {
  for (const [, text] of texts) {
    const svg = heroDrawing(open(text).now.plan, {})!
    expect(light.toHtml(svg)).toBe(toHtml(svg, {space: 'svg'}))
  }
  const parts = [
    'p.a.b#c',
    {dataX: '', hidden: true, title: 'a "b" & <c>', ariaLabelledBy: ['x', 'y']},
  ] as const
  const children = ['1 < 2 & 3', undefined, [h('b', 'x'), 4], null]
  expect(light.toHtml(light.h(...parts, ...(children as never[])))).toBe(
    toHtml(h(...(parts as unknown as [string]), ...(children as never[]))),
  )
})

describe('a proposal taken', () => {
  test('sets its value, and set back leaves no trace', () => {
    const start = open(`---\n${soundBuilds['on top']}---\n`)
    const broken = setIn(start, [['play', 'slidee']])
    const problem = broken.now.problems.find(({expected, severity}) => expected && severity !== 'remark')!
    const mended = mendIn(broken, problem, 0)
    expect(mended.now.problems.filter(({rule}) => rule === problem.rule)).toEqual([])
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
    for (let at = 0; at < link.length; at += 23) {
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
