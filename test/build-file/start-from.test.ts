import {describe, expect, test} from 'vitest'
import {readBuild} from '../../plugins/build-file/read.ts'
import {leavesOf, valueAt} from '../../plugins/build-file/schema/path.ts'
import type {Written} from '../../plugins/build-file/schema/values.ts'
import {startFrom} from '../../plugins/build-file/start-from.ts'
import {changesFrom} from '../../plugins/plan/changes.ts'
import fc from '../support/properties.ts'

const fenced = (lines: readonly string[]) => `---\n${lines.join('\n')}\n---\n`
const read = (text: string) => readBuild(text, {slug: 'again'})
const errorsOf = (text: string) => read(text).problems.filter(({severity}) => severity === 'error')
const mm = (value: unknown) => (value as {mm?: number} | undefined)?.mm

/** The same things said in every way that a build file may say them. */
const ways = {
  title: ['title: Slipway', '"title ": Slipway', 'title: &name Slipway', '!!str title: >\n  Slipway'],
  box: [
    'box: 10 x 7 x 2',
    'box: "10 x 7 x 2"',
    'box: {length: 10, width: 7, depth: 2, at: 16}',
    'box: {length: 10, width: 7, depth: 2, top: 1/8, notch: none}',
    'box:\n  length: 10\n  width: &seven 7\n  depth: 2\n  top:\n  notch: 1 5/8 x 1',
    'box: >-\n  10 x 7\n  x 2',
    'box:',
    '# no box yet',
  ],
  scale: [
    'scale: 24 1/4',
    'scale: {length: 24 1/4, lines: 12}',
    'scale: {length: &long 24 1/4, dots: [3, 5]}',
    '',
  ],
  bridge: ['bridge: {from-tail: 2}', 'bridge: {kind: rod, height: 1/2}', 'bridge:', ''],
  strings: [
    'strings: 3',
    'strings: D3 .030w',
    'strings: [D3 .030w, A3, D4 .013]',
    'strings: [{note: D3}, {}]',
    '',
  ],
  neck: [
    'neck: 1 5/8 x 13/16',
    'neck: {width: {nut: 1 1/2, tail: 1 7/8}, thickness: 1}',
    'neck: {width: 1 1/2}',
  ],
  tuners: ['tuners: {at: [-2, -3, -4]}', 'tuners: {at: -2}', 'tuners:', ''],
  pickup: ['pickup: piezo', 'pickup: none', 'pickup: {kind: piezo}', ''],
  units: ['units: mm', 'units: in', ''],
  rest: ['summary: *name', 'extras: &all [lamp, feet]\ncautions: *all', 'screws: {size: 6, at: 17}', ''],
}
const metric = 'box: 250 x 180 x 50\nscale: 620\nneck: {width: 40, thickness: 20}\nbridge: {from-tail: 50}'

const paths = [
  'box.length',
  'box.at',
  'box.top.thickness',
  'box.notch.depth',
  'box.holes.1.diameter',
  'scale.length',
  'scale.pattern.2',
  'bridge.from-tail',
  'bridge.height',
  'action.octave',
  'action.nut',
  'strings.1.gauge',
  'strings.3.gauge',
  'strings.D3.core',
  'neck.width',
  'neck.width.tail',
  'neck.round-over.from',
  'tuners.at.1',
  'tuners.at.2',
  'pickup.diameter',
  'screws.1.at.1',
  'humidity.1',
]
const shortly: Record<string, string> = {'neck.width.nut': 'neck.width', 'scale.length': 'scale'}
const measured = fc
  .uniqueArray(fc.constantFrom(...paths), {maxLength: 6})
  .map(
    (own) =>
      `measured: {${own.map((path) => `${path}: ${/gauge|core/.test(path) ? '.4 mm' : '12 mm'}`).join(', ')}}`,
  )
const large = fc.constantFrom(
  'measured: {scale.length: 24 9/32}',
  'measured: {scale: 24 9/32, box.length: 10 1/8}',
)
const lines = fc
  .tuple(...Object.values(ways).map((each) => fc.constantFrom(...each)), fc.oneof(measured, large))
  .map((each) => fenced(each.filter((line) => line !== '')))
const builds = fc.oneof(
  lines,
  fc.oneof(measured, large).map((own) => fenced(['title: A', 'units: mm', metric, own])),
)
const options = fc.record(
  {units: fc.constantFrom('in' as const, 'mm' as const), scale: fc.constant('610 mm')},
  {requiredKeys: []},
)

describe('every build without an error can be started from', () => {
  test('and what starts from it is without one', () => {
    let tried = 0
    fc.assert(
      fc.property(builds, options, (text, asked) => {
        fc.pre(errorsOf(text).length === 0)
        tried++
        expect(errorsOf(startFrom(text, 'slipway', asked)!)).toEqual([])
      }),
      {numRuns: 600},
    )
    expect(tried).toBeGreaterThan(200)
  })

  test('and has its sizes, in any units', () =>
    fc.assert(
      fc.property(builds, fc.constantFrom('in' as const, 'mm' as const), (text, units) => {
        fc.pre(errorsOf(text).length === 0)
        const {values} = read(text).build
        const started = read(startFrom(text, 'slipway', {units})!).build.values
        const own = new Map(values.measured?.days[0]?.paths.map(({path, value}) => [path, value]))
        for (const [path, value] of leavesOf(started)) {
          const before = (own.get(path) ?? own.get(shortly[path] ?? '') ?? valueAt(values, path)) as
            | Written
            | undefined
          if (before && mm(before) !== undefined && !path.startsWith('measured'))
            expect([path, mm(value)]).toEqual([path, expect.closeTo(mm(before)!, 6)])
        }
      }),
      {numRuns: 300},
    ))
})

describe('what was measured takes the place of what was drawn', () => {
  const startedFrom = (...front: string[]) =>
    read(startFrom(fenced(['title: A', ...front]), 'a')!).build.values
  test('beside a box in its short form', () => {
    const front = ['box: 10 x 7 x 2', 'bridge: {from-tail: 2}', 'measured: {scale.length: 24 1/8}']
    expect(startedFrom('scale: 24', ...front)).toMatchObject({
      scale: {length: {text: '24 1/8'}},
      box: {length: {text: '10'}},
      bridge: {'from-tail': {text: '2'}},
    })
  })
  test('but not by a bridge that is set back behind its line under frets', () => {
    const front = [
      'scale: {length: 24, fretted: true}',
      'measured: {scale.length: 24 3/16, neck.width: 1 9/16}',
    ]
    expect(startedFrom(...front)).toMatchObject({
      scale: {length: {text: '24'}},
      neck: {width: {nut: {text: '1 9/16'}}},
    })
  })
  test('where the bridge is left out', () =>
    expect(startedFrom('box: 10 x 7 x 2', 'measured: {box.at: 16}').box?.at?.text).toBe('16'))
  test('where a key has no value yet', () =>
    expect(startedFrom('bridge:', 'measured: {bridge.height: 1/2}').bridge?.height?.text).toBe('1/2'))
  test('in strings that are only counted', () =>
    expect(startedFrom('strings: 3', 'measured: {strings.2.gauge: .017}').strings).toMatchObject([
      {},
      {gauge: {text: '0.017'}},
      {},
    ]))
  test('and what an alias stands for stays where its anchor goes', () =>
    expect(startedFrom('stock: [{id: &wood ash}]', 'neck: {wood: *wood}').neck?.wood?.text).toBe('ash'))
})

test('a build that cannot be read is not started from', () => {
  for (const text of [
    '',
    '# Slipway\n',
    fenced(['box: {length: 1']),
    fenced(['- a']),
    fenced(['a: &a [*a]']),
    fenced(['tags: [*wood]']),
  ])
    expect(startFrom(text, 'slipway')).toBeUndefined()
})

describe('what was carried says where it came from', () => {
  const past = fenced([
    'title: Slipway',
    'scale: {length: 24 1/4, lines: 12}',
    'neck:',
    '  width: 1 5/8 # as wide as the jig',
    '  thickness: 13/16',
    'box: 10 x 7 x 2',
    'measured:',
    '  - {on: 2026-03-15, neck.thickness: 51/64, box.depth: 2 1/16}',
    '  - {on: 2026-09-01, neck.width.nut: 1 9/16, neck.thickness: 25/32}',
  ])
  test('each measure with its day, beside the remarks that are there', () => {
    const text = startFrom(past, 'slipway')!
    expect(text).toContain('# Dimensions of slipway: what was measured says so, all else is as planned.')
    expect(text).toContain('  width: 1 9/16 # as wide as the jig; nut measured 2026-09-01')
    expect(text).toContain('  thickness: 25/32 # measured 2026-09-01')
    expect(text).toContain('# depth measured 2026-03-15')
    expect(errorsOf(text)).toEqual([])
  })
  test('at another scale no written value says that it was measured', () => {
    const past = fenced(['scale: 24', 'measured: {on: 2026-05-01, scale.length: 24 9/32}'])
    expect(startFrom(past, 'slipway', {scale: '22'})).toContain(
      'scale: 22 # length 24 9/32 on slipway, measured 2026-05-01',
    )
  })

  test('one that was never measured is as planned', () => {
    expect(startFrom(fenced(['title: A', 'box: 10 x 7 x 2']), 'a')).toContain(
      '# Dimensions of a: as planned.',
    )
  })
})

describe('what was measured only to be set right', () => {
  const past = fenced([
    'title: Slipway',
    'scale: 24 1/4',
    'action: {nut: 1/8, octave: 7/32}',
    'measured: {on: 2026-03-15, action.nut: 11/64, neck.thickness: 51/64}',
    'neck: {width: 1 5/8, thickness: 13/16}',
  ])
  test('is carried as planned, and says so', () => {
    const text = startFrom(past, 'slipway', {mended: ['action.nut']})!
    expect(read(text).build.values).toMatchObject({
      action: {nut: {text: '1/8'}},
      neck: {thickness: {text: '51/64'}},
    })
    expect(text).toContain('# nut as planned, measured 11/64 on 2026-03-15 and to be set right')
    expect(errorsOf(text)).toEqual([])
  })
  test('is no change of the copy', () => {
    const copy = read(startFrom(past, 'slipway', {mended: ['action.nut']})!).build
    expect(changesFrom(read(past).build, copy, ['action.nut'])).toEqual([])
    expect(changesFrom(read(past).build, copy).map(({path}) => path)).toEqual(['action.nut'])
  })
})

test('a board that ended at a box before the octave still does at another scale', () => {
  const past = fenced([
    'title: Slipway',
    'scale: 24',
    'box: {length: 14 1/2, width: 7, depth: 2, at: 11 1/2}',
    'bridge: {from-tail: 2}',
    'fingerboard: {wood: maple, thickness: 1/4, to: 11 1/2}',
  ])
  // By hand: 3 in less to the bridge, and to all that is built round it.
  expect(read(startFrom(past, 'slipway', {scale: '21'})!).build.values).toMatchObject({
    box: {at: {text: '8 1/2'}},
    bridge: {'from-tail': {text: '2'}},
    fingerboard: {to: {text: '8 1/2'}},
  })
})
