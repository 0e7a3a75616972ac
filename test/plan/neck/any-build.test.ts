import {expect, test} from 'vitest'
import type {RuleName} from '../../../plugins/checks/all.ts'
import {findings} from '../../../plugins/checks/checks.ts'
import {printedPlan} from '../../../plugins/words/printed-plan.ts'
import {changed} from '../../support/changed.ts'
import {planOf} from '../../support/plan-of.ts'
import fc from '../../support/properties.ts'

/** Numbers of the neck's plan that may lie on either side of nought. */
const eitherSide =
  /^(stationMm|fromMm|toMm|spareMm|balanceMm|reliefMm|reliefAfterCreepMm|rangeMm|atLinesMm|bowMm|stringAngleDeg|angleDeg|gapMm|overMm|offMm|mm|leftMm|flatMm|largestMm|deepestMm|nutMm|bridgeMm|lastLineMm|neighbourNutMm|neighbourLastLineMm|fitMm|actionMm|bucklingMargin|octaveMm|creepMm|wallsN)$/

function wrong(value: unknown, path: string): string[] {
  if (typeof value === 'number') {
    const key = path.split('.').findLast((one) => !/^\d+$/.test(one))!
    const isWrong = !Number.isFinite(value) || (value < -1e-9 && !eitherSide.test(key))
    return isWrong ? [`${path}: ${value}`] : []
  }
  if (value === null || value === undefined) return [`${path}: ${value}`]
  if (typeof value !== 'object') return []
  return Object.entries(value).flatMap(([key, item]) => wrong(item, `${path}.${key}`))
}

const rulesOfTheNeck = new Set<RuleName>([
  'bow-too-large',
  'buttons-touch',
  'head-thicker-than-stick',
  'head-too-thick',
  'head-too-thin',
  'laminations-too-thick',
  'laminations-too-thin',
  'neck-inside-disagrees',
  'neck-thin-inside',
  'neck-too-short',
  'notch-deeper-than-neck',
  'round-over-too-large',
  'scarf-angle',
  'string-angle-flat',
  'string-angle-steep',
  'string-fouls-post',
  'string-near-edge',
  'strings-cross',
  'strings-too-close',
  'thin-under-nut',
  'tuner-holes-close',
  'tuner-near-edge',
])

const mark = (low: number, high: number) =>
  fc.integer({min: Math.round(low * 16), max: Math.round(high * 16)}).map((n) => `${n}/16`)
const signed = (low: number, high: number) =>
  fc
    .integer({min: Math.round(low * 16), max: Math.round(high * 16)})
    .map((n) => (n < 0 ? `-${-n}/16` : `${n}/16`))
const wood = fc.constantFrom(
  'hard maple',
  'white ash',
  'pine',
  'unknown',
  'birch plywood',
  'moon wood',
  'balsa',
)
const maybe = <T>(one: fc.Arbitrary<T>) => fc.option(one, {nil: undefined, freq: 3})

/** A build file at random: `wide` goes far past what anyone would make. */
function someBuild(wide: boolean): fc.Arbitrary<string> {
  const [thin, thick] = wide ? [0.25, 3.5] : [0.5, 1.25]
  const layer = fc.record(
    {wood, thickness: mark(wide ? 0.0625 : 0.125, 0.75), from: signed(-1, wide ? 20 : 1), to: signed(2, 40)},
    {requiredKeys: ['wood', 'thickness']},
  )
  return fc
    .integer({min: 1, max: wide ? 8 : 4})
    .chain((count) =>
      fc.record({
        count: fc.constant(count),
        scale: mark(wide ? 5 : 14, wide ? 60 : 30),
        fretted: fc.boolean(),
        play: fc.constantFrom('slide', 'fingers', 'both'),
        width: mark(wide ? 0.5 : 1.25, wide ? 6 : 2.5),
        tail: maybe(mark(wide ? 0.5 : 1.25, wide ? 6 : 2.5)),
        thickness: maybe(mark(thin, thick)),
        length: maybe(mark(wide ? 5 : 20, wide ? 90 : 45)),
        joins: fc.constantFrom('on top', 'through', 'end'),
        solid: maybe(wood),
        laminations: maybe(fc.array(layer, {minLength: 1, maxLength: 4})),
        round: maybe(mark(0.0625, wide ? 2 : 0.5)),
        headLength: maybe(mark(wide ? 1 : 4, wide ? 20 : 8)),
        headThickness: maybe(mark(wide ? 0.125 : 0.375, wide ? 2 : 0.75)),
        joint: fc.constantFrom('scarf', 'solid', 'straight'),
        angle: maybe(fc.integer({min: 0, max: wide ? 45 : 18})),
        ledge: maybe(mark(0, wide ? 4 : 0.5)),
        board: maybe(
          fc.record({wood, thickness: mark(0.125, wide ? 1 : 0.375), radius: mark(wide ? 2 : 8, 20)}),
        ),
        box: maybe(mark(wide ? 2 : 8, wide ? 50 : 14)),
        at: maybe(signed(wide ? -7 : 8, wide ? 80 : 20)),
        posts: maybe(
          fc.array(fc.tuple(signed(wide ? -19 : -6, wide ? 3 : -1), signed(-1, 1)), {
            minLength: count,
            maxLength: count,
          }),
        ),
        postHeight: maybe(mark(0, wide ? 2 : 0.5)),
        groove: maybe(mark(0, 0.5)),
        anchors: maybe(mark(wide ? 0 : 20, wide ? 100 : 34)),
      }),
    )
    .map(write)
}

type Drawn = Record<string, unknown> & {count: number}

function write(d: Drawn): string {
  const line = (key: string, value: unknown) => (value === undefined ? '' : `${key}: ${value}\n`)
  const fields = (all: Record<string, unknown>) =>
    `{${Object.entries(all)
      .filter(([, value]) => value !== undefined)
      .map(([key, value]) => `${key}: ${value}`)
      .join(', ')}}`
  const notes = ['D3 .030w', 'A3 .020w', 'D4 .013', 'F#4 .010', 'A4 .009', 'B4 .009', 'C5 .008', 'D5 .007']
  const laminations = (d.laminations as Record<string, string>[] | undefined)?.map(fields)
  const board = d.board as Record<string, string> | undefined
  const posts = d.posts as [string, string][] | undefined
  return [
    'title: x\nstatus: on the bench\n',
    line('play', d.play),
    `scale: {length: ${d.scale}, fretted: ${d.fretted}}\n`,
    `strings: [${notes.slice(0, d.count).join(', ')}]\n`,
    `neck: ${fields({
      width: d.tail ? `{nut: ${d.width}, tail: ${d.tail}}` : d.width,
      thickness: d.thickness,
      length: d.length,
      joins: d.joins,
      wood: d.laminations ? undefined : d.solid,
      laminations: laminations && `[${laminations.join(', ')}]`,
      'round-over': d.round && `{radius: ${d.round}, from: scarf, to: box}`,
    })}\n`,
    `head: ${fields({length: d.headLength, thickness: d.headThickness, joint: d.joint, angle: d.angle, ledge: d.ledge})}\n`,
    board ? `fingerboard: ${fields(board)}\n` : '',
    d.box ? `box: ${fields({length: d.box, width: 7, depth: 2, at: d.at})}\n` : '',
    posts
      ? `tuners: ${fields({
          'post-hole': '1/4',
          button: '3/4',
          'string-height': d.postHeight,
          at: `[${posts.map(([at]) => at).join(', ')}]`,
          off: `[${posts.map(([, off]) => off).join(', ')}]`,
        })}\n`
      : '',
    d.groove ? `nut: {kind: rod, groove: ${d.groove}}\n` : '',
    d.anchors ? `anchors: {kind: ferrule, at: ${d.anchors}, spacing: 1/2, body: 5/16}\n` : '',
  ].join('')
}

test.each([
  ['plausible', false, 100],
  ['implausible', true, 100],
] as const)('no number of a %s neck is not a number, without end or wrongly negative', (_, wide, numRuns) => {
  fc.assert(
    fc.property(someBuild(wide), (text) => {
      const {plan} = planOf(text)
      expect(wrong(printedPlan(plan).neck ?? {}, 'neck')).toEqual([])
    }),
    {numRuns},
  )
})

test('putting in the number that a finding proposes takes that finding away', () => {
  fc.assert(
    fc.property(someBuild(false), (text) => {
      const {build, plan} = planOf(text)
      for (const rule of rulesOfTheNeck) {
        const before = findings(rule, build, plan)
        for (const {at, expected, message} of before) {
          if (!expected) continue
          const mended = planOf(changed(text, {[at as string]: expected[0]!}))
          const left = findings(rule, mended.build, mended.plan)
          expect(left.length, `${message}\n${text}`).toBeLessThan(before.length)
        }
      }
    }),
    {numRuns: 80},
  )
})
