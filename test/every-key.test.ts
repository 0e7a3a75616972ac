import {readFileSync} from 'node:fs'
import {describe, expect, test} from 'vitest'
import {readBuild, readJournal, readRack} from '../plugins/build-file/read.ts'
import {readerRules} from '../plugins/build-file/rules/rules.ts'
import type {Choice, Kind, Leaf} from '../plugins/build-file/schema/kinds.ts'
import {valueAt} from '../plugins/build-file/schema/path.ts'
import type {Problem} from '../plugins/build-file/schema/problem.ts'
import {buildSchema, journalSchema} from '../plugins/build-file/schema/schema.ts'
import {rackSchema} from '../plugins/build-file/schema/wood.ts'
import {checks} from '../plugins/checks/checks.ts'
import {templateSvg} from '../plugins/drawings/templates/sheets.ts'
import type {Settled} from '../plugins/plan/kit/settled.ts'
import {type Plan, planBuild} from '../plugins/plan/plan.ts'
import {settle} from '../plugins/plan/settle.ts'
import {allSections} from '../plugins/sections/all.ts'
import {printedPlan} from '../plugins/words/printed-plan.ts'
import {frame} from '../site/layouts/frame.ts'
import {sheet} from '../site/layouts/sheet.ts'
import {makeSite} from '../site/make/make-site.ts'
import {planSite} from '../site/make/plan-site.ts'
import {changed} from './support/changed.ts'
import {tempJournal} from './support/temp-journal.ts'
import {wholePages} from './support/whole-pages.ts'

import './support/slow.ts'

// A key that nobody reads promises what it does not keep: whatever a key says, changing it changes something to see.

const example = 'test/journals/long-example/builds/lantern-pier'
const frontMatter = (file: string, changes: Record<string, string>) =>
  changed(readFileSync(file, 'utf8').split('---\n')[1]!, changes).trim()
const bogOak = '{wood: bog oak, thickness: 1/16, density: 800 kg/m3, stiffness: 12 GPa}'

/** Between them, these builds say everything that a build can say. */
const builds = [
  frontMatter(`${example}/index.md`, {
    'action.finger': '1/4',
    'box.notch': '1 5/8 x 1/4',
    'box.blocks.1.glued': 'under the top',
    'box.top.paper': 'keep',
    'box.top.wood': 'plywood',
    cautions: '[mind the cat]',
    'finish.1.on': 'neck',
    'head.plate': '{wood: bog oak, thickness: 1/16, density: 800 kg/m3}',
    humidity: '[35, 70]',
    'neck.cap': bogOak,
    'neck.laminations.1.density': '600 kg/m3',
    'neck.laminations.1.stiffness': '11 GPa',
    'neck.laminations.1.strips': '1',
    'neck.laminations.1.to': '20',
    'neck.laminations.1.woods': '[black cherry]',
    'neck.width': '{nut: 1 5/8, tail: 1 7/8}',
    'pickup.along': '5',
    'pickup.jack.along': '8',
    'pickup.jack.body': '1 1/4',
    'pickup.jack.off': '0',
    'pickup.off': '0',
    'pickup.thickness': '1 mm',
    'for-sale': 'true',
    price: '120',
    'screws.1.head': 'round',
    'stock.1.bought': '2026-01-01',
    'stock.1.count': '1',
    'stock.1.remark': 'a knot',
    'strings.1.course': '1',
    'strings.1.stiffness': '100 GPa',
    'strings.1.tension': '{pull: 70 N, scale: 25, note: D3}',
    take: '[Z9, R1]',
    'tuners.ratio': '18',
  }),
  frontMatter('builds/harbour-bell.md', {
    'action.finger': '1/4',
    'action.relief': '0.1 mm',
    'anchors.body': '3/16',
    'box.blocks': '[{wood: beech, at: 16, off: 1, length: 2, width: 4, thickness: 1/2, glued: on the sides}]',
    'box.holes.1.at': '18',
    'fingerboard.density': '600 kg/m3',
    'fingerboard.radius': '12',
    'fingerboard.stiffness': '10 GPa',
    'frets.material': 'brass',
    'neck.angle': '1',
    'neck.density': '700 kg/m3',
    'neck.stiffness': '11 GPa',
    'nut.diameter': '1/4',
    'nut.groove': '1/8',
    pickup:
      '{kind: piezo, diameter: 27 mm, thickness: 1 mm, under: bridge, at: 20, off: 1, jack: {hole: 3/8, thread: 3/8, in: side, at: 19, off: 2, body: 4}}',
    'scale.pattern': '[1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12]',
    'scale.temperament': '[100, 200, 300, 400, 500, 600, 700, 800, 900, 1000, 1100, 1200]',
    'screws.1':
      '{size: 6, length: 1, along: [1, 8], off: [0], through: [top, washer], into: side, head: flat}',
    'strings.1.core': '.016',
    'strings.1.course': '2',
    'strings.1.mass': '5 g/m',
    'strings.1.material': 'steel',
    'strings.1.wrap': 'pure nickel',
  }),
  frontMatter('builds/tide-table.md', {
    'anchors.along': '240',
    'anchors.at': '',
    'box.at': '300',
    'bridge.from-tail': '',
    'neck.laminations': '',
    'neck.round-over.from': '20',
    'neck.wood': 'bog oak',
    pickup: '{kind: piezo, jack: {hole: 10, thread: 10, in: end, off: 5}}',
    'screws.1': '{size: 6, length: 25, along: [10, 200], off: [0], through: [top], into: side}',
    'stock.1':
      '{id: B1, wood: bog oak, length: 900, width: 60, thickness: 30, density: 800 kg/m3, stiffness: 12 GPa}',
  }),
  frontMatter('builds/mooring-line/index.md', {'strings.1.gauge': '.017', 'strings.1.material': 'steel'}),
  'title: With units\nunits: in\nbox: 10 in x 7 in x 2 in\nscale: 24 in\nstrings: [{note: D3, gauge: .03 in w}]',
  frontMatter('builds/tide-table.md', {'screws.1.thread': '30'}),
  frontMatter('builds/harbour-bell.md', {'neck.inside': '5/8'}),
]

const rack =
  '- {id: R1, wood: bog oak, length: 40, width: 4, thickness: 1, clear: [1, 39], count: 2, cost: 7, remark: a knot, bought: 2026-01-01, density: 800 kg/m3, stiffness: 12 GPa}\n- {id: TU, item: tuners, count: 3}'
const journal =
  'title: Tide and timber\nmaker: R. Quill\ncurrency: EUR\nunits: in\nruler: 1/32\nsaw: {kerf: 1/8, trim: 1/2, plane: 1/16}\nday: 3 h\nsite: https://example.org\nask: the porch, on Saturdays\nrate: 20\nshow-money: true'

type Value = Leaf | Choice

/** List the values that a kind is made of, with their paths; of a list the first item. Maps are tested by hand. */
function valuesOf(kind: Kind, path = ''): [path: string, kind: Value][] {
  const below = (step: string) => (path ? `${path}.${step}` : step)
  if (kind.is === 'record')
    return Object.entries(kind.fields).flatMap(([key, field]) => valuesOf(field, below(key)))
  if (kind.is === 'list') return valuesOf(kind.item, below('1'))
  if (kind.is === 'either') return [...valuesOf(kind.first, path), ...valuesOf(kind.second, path)]
  // Of a choice of one there is no other.
  if (kind.is === 'choice' && kind.of.length === 1) return []
  return kind.is === 'leaf' || kind.is === 'choice' ? [[path, kind]] : []
}

/** Write other values of a kind than one that is there, the nearest first. */
function others(kind: Value, value: object): string[] {
  if (kind.is === 'choice') return [...kind.of]
  const of = value as Record<string, number>
  const {min = kind.limits.signed ? -1e9 : 0, max = 1e9, whole} = kind.limits
  const near = (n: number, unit = '', times = 1) =>
    [n * 1.06, n * 0.94, n * 1.5, n * 0.6, n * 3, n + 1, n + 5, n - 5, max]
      .map((one) => (whole ? Math.round(one) : one))
      .filter((one) => one >= min && one <= max)
      .map((one) => `${Number((one * times).toPrecision(5))}${unit}`)
  switch (kind.leaf) {
    case 'angle':
      return near(of.deg!)
    case 'capacitance':
      return near(of.nf!, ' nF')
    case 'date':
      return ['2026-03-01', '2026-04-20', '2026-06-20']
    case 'density':
      return near(of.kgM3!, ' kg/m3')
    case 'flag':
      return ['true', 'false']
    case 'force':
      return near(of.n!, ' N')
    case 'gauge':
      return near(of.mm!, of.wound ? ' mm w' : ' mm')
    case 'label':
      return ['2', '4']
    case 'length':
      return near(of.mm!, ' mm')
    case 'massPerLength':
      return near(of.kgM!, ' g/m', 1000)
    case 'money':
      return near(of.amount!)
    case 'number':
      return near(of.value!)
    case 'pitch':
      return ['C3', 'F3']
    case 'step':
      return ['90', '110']
    case 'stiffness':
      return near(of.mpa!, ' MPa')
    case 'wood':
      return ['wenge', 'balsa']
    default:
      return ['neck', 'side', 'epoxy', 'shellac', 'inlaid', 'another word']
  }
}

interface Known {
  build: Settled
  plan: Plan
  problems: readonly Problem[]
  source: string
}

function known(text: string): Known {
  const source = `---\n${text}\n---\n`
  const read = readBuild(source, {slug: 'needle-box'})
  const build = settle(read.build, {})
  const plan = planBuild(build, {journal: {}, pieces: []})
  return {build, plan, problems: [...read.problems, ...checks(build, plan)], source}
}

// Drawings take longest, so that they are looked at last.
const shown = [
  ({problems}: Known) => problems.map(({rule, message, expected, note}) => [rule, message, expected, note]),
  ...allSections
    .filter(({name}) => name !== 'drawing' && name !== 'lineage' && name !== 'before-you-cut')
    .map((section) => (one: Known) => {
      const input = {...one, attributes: {}}
      return section.needs(input).length > 0 ? [] : section.content(input)
    }),
  // The order of work stands on the bench sheet.
  ({plan}: Known) => printedPlan(plan).work,
  ({plan, build}: Known) => templateSvg(plan, build),
  (one: Known) => allSections.find(({name}) => name === 'drawing')!.content({...one, attributes: {}}),
]

const bases = builds.map((text) => ({text, ...known(text), shown: [] as string[]}))

/** Say whether nothing is wrong with a text as a text: what cannot be read is told, and nothing else is seen of it. */
const isRead = ({problems}: Known) => !problems.some(({rule}) => rule in readerRules)

/** Say whether two builds differ in what is found, worded or drawn; what a base shows is kept. */
function looksOther(base: (typeof bases)[number], other: Known): boolean {
  return shown.some((show, at) => {
    base.shown[at] ??= JSON.stringify(show(base)) ?? ''
    return JSON.stringify(show(other)) !== base.shown[at]
  })
}

/** Hours come to money. */
const day = '\n## 2026-03-08 Neck (2 h)\n'
const files = {
  'builds/needle-box/index.md': `---\n${builds[0]}\n---\n${day}`,
  // Done with, so that no pictures of its steps are drawn each time.
  'builds/needle-box-one.md': readFileSync('builds/needle-box-one.md', 'utf8').replace(
    '\n---',
    '\nstatus: strung up\n---',
  ),
  'builds/journal.yaml': journal,
  'builds/rack.yaml': rack,
}
const photographs = ['front.jpg', 'back.jpg'].map((name) => `builds/needle-box/photos/${name}`)
const sounds = ['first-evening.mp3', 'second.mp3'].map((name) => `builds/needle-box/sounds/${name}`)

const made = new Map<string, Promise<unknown>>()
/** Make what a key stands for once: what another value of a key leaves as it was is not made again. */
function kept<T>(key: string, make: () => Promise<T>): Promise<T> {
  const there = made.get(key) ?? make()
  made.set(key, there)
  return there as Promise<T>
}

/** Every page of a journal that a browser shows, with its frame. */
async function pagesOf(changes: Partial<typeof files>): Promise<string> {
  const {root, write, remove} = tempJournal({...files, ...changes})
  for (const [at, name] of photographs.entries())
    write(name, at === 0 ? readFileSync(`${example}/photos/front.jpg`) : smallPicture)
  for (const name of sounds) write(name, readFileSync(`${example}/sounds/first-evening.mp3`))
  const planned = await planSite(
    root,
    {prefix: '/', isWriting: false, assets: {}},
    {
      value: kept,
      large: kept,
      bytes: kept,
      kept: async () => undefined,
      replace: async () => {},
      still: () => {},
      tidy: async () => {},
    },
  )
  const made = await makeSite(planned)
  const {around} = made.site
  const {pages} = await wholePages(made)
  remove()
  const layouts = {frame: frame(around), sheet: sheet(around), bare: () => ''}
  return pages
    .map(({address, layout, data, content}) =>
      layout === 'bare' ? '' : layouts[layout]({...data, address, content: content()}),
    )
    .join('\n')
}
const smallPicture = Buffer.from(
  'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==',
  'base64',
)
let pages: Promise<string> | undefined
const pagesAsTheyAre = () => (pages ??= pagesOf({}))

/** Keys that only the pages of a journal show. */
const ofPages: Readonly<Record<string, string>> = {
  'based-on': 'another',
  cover: 'photos/back.jpg',
  'for-sale': 'false',
  'measured.on': '2027-01-01',
  publish: 'false',
  'recordings.1.file': 'sounds/second.mp3',
  'recordings.1.says': 'Another',
  summary: 'Another',
  'tags.1': 'another',
}

test('nothing changes where no key does', async () => {
  for (const base of bases) expect(looksOther(base, known(base.text))).toBe(false)
  expect(await pagesOf({})).toBe(await pagesAsTheyAre())
})

describe('every key of a build changes something to see', () => {
  test.each(valuesOf(buildSchema).filter(([path]) => !(path in ofPages)))('%s', (path, kind) => {
    const saying = bases.filter(({build}) => {
      const value = valueAt(build.values, path)
      if (typeof value !== 'object' || !('place' in value!) || 'assumed' in value) return false
      return kind.is === 'leaf' || 'value' in value
    })
    expect(saying).not.toEqual([])
    const seen = saying.some((base) => {
      const value = valueAt(base.build.values, path) as {text: string}
      return others(kind, value)
        .filter((other) => other !== value.text)
        .some((other) => {
          const one = known(changed(base.text, {[path]: other}).trim())
          return valueAt(one.build.values, path) !== undefined && isRead(one) && looksOther(base, one)
        })
    })
    expect(seen).toBe(true)
  })

  const byHand: [path: string, one: string, other: string][] = [
    ['accept', '{string-slack: as it is}', '{string-slack: for the sound}'],
    ['tolerances', '{neck.thickness: 1/64}', '{neck.thickness: 1/2}'],
    ['played.1.scores.action', '4', '2'],
    ['measured', '{scale.length: 24}', '{scale.length: 24 1/8}'],
    ['measured', '{lines: {12: 12 5/32}}', '{lines: {12: 12 1/4}}'],
    ['measured', '{cents: {12: 4}}', '{cents: {12: 9}}'],
    ['measured', '{resonance: 205}', '{resonance: 220}'],
    ['measured', '{strings.A3.tension: 60 N}', '{strings.A3.tension: 70 N}'],
    [
      'measured',
      '[{on: 2026-03-15, scale.length: 24}, {on: 2026-06-01, scale.length: 24 1/8}]',
      '[{on: 2026-03-15, scale.length: 24 1/16}, {on: 2026-06-01, scale.length: 24 1/8}]',
    ],
    [
      'measured',
      '[{on: 2026-03-15, scale.length: 24}, {on: 2026-06-01, scale.length: 24 1/8}]',
      '[{on: 2026-07-15, scale.length: 24}, {on: 2026-06-01, scale.length: 24 1/8}]',
    ],
  ]
  test.each(byHand)('%s: %s or %s', (path, one, other) => {
    const [first, second] = [one, other].map((value) =>
      changed(builds.at(path === 'accept' ? 3 : 0)!, {[path]: value}),
    )
    expect(looksOther({text: first!, ...known(first!), shown: []}, known(second!))).toBe(true)
  })

  test.each(Object.entries(ofPages))('%s, on the pages of the journal', async (path, other) => {
    const text = `---\n${changed(builds[0]!, {[path]: other}).trim()}\n---\n${day}`
    expect(await pagesOf({'builds/needle-box/index.md': text})).not.toBe(await pagesAsTheyAre())
  })
})

describe('every key of the rack and the journal changes something on the pages', () => {
  const rackValues = valuesOf(rackSchema).map(([path, kind]) => {
    const ofPiece = path.replace('pieces.', '')
    return [ofPiece === '1.item' ? '2.item' : ofPiece, kind] as const
  })
  test.each(rackValues)('rack: %s', async (path, kind) => {
    const value = valueAt(readRack(rack).pieces, path) as {text: string}
    expect(value).toBeDefined()
    await seesOne(
      others(kind, value).filter((other) => other !== value.text),
      (other) => ({'builds/rack.yaml': changed(`pieces:\n${rack}`, {[`pieces.${path}`]: other})}),
    )
  })

  test.each(valuesOf(journalSchema))('journal: %s', async (path, kind) => {
    const value = valueAt(readJournal(journal).settings, path) as {text: string}
    expect(value).toBeDefined()
    const all = path === 'site' ? ['https://example.com'] : others(kind, value)
    await seesOne(
      all.filter((other) => other !== value.text),
      (other) => ({'builds/journal.yaml': changed(journal, {[path]: other})}),
    )
  })

  async function seesOne(written: string[], as: (other: string) => Partial<typeof files>) {
    for (const other of written) if ((await pagesOf(as(other))) !== (await pagesAsTheyAre())) return
    expect.unreachable()
  }
})
