import {describe, expect, test} from 'vitest'
import {parseDocument} from 'yaml'
import {readBuild} from '../../../plugins/build-file/read.ts'
import {writeLines} from '../../../plugins/build-file/writing/set-values.ts'
import {checks} from '../../../plugins/checks/checks.ts'
import {draw} from '../../../plugins/drawings/draw.ts'
import {templates} from '../../../plugins/drawings/templates/sheets.ts'
import type {Settled} from '../../../plugins/plan/kit/settled.ts'
import {type Plan, planBuild} from '../../../plugins/plan/plan.ts'
import {assume, settle} from '../../../plugins/plan/settle.ts'
import fc from '../../support/properties.ts'

const context = {journal: {}, pieces: []}
const read = (frontMatter: string) =>
  readBuild(`---\n${frontMatter.trim()}\n---\n`, {slug: 'needle-box'}).build
const settled = (frontMatter: string): Settled => settle(read(frontMatter))
const planned = (frontMatter: string): Plan => planBuild(settled(frontMatter), context)

/** What is wrong with a build, by rule and place: without proposals, and with them. */
function problemsOf(frontMatter: string): {before: string[]; after: string[]} {
  const build = read(frontMatter)
  // A neck that is too thin is that by either rule: which one says it hangs on where the strings go down to.
  const tooThin = ['neck-thin-inside', 'bow-too-large']
  const say = (one: Settled) =>
    checks(one, planBuild(one, context)).map(({rule, severity, line}) =>
      tooThin.includes(rule) ? 'neck too thin' : `${severity} ${rule}, line ${line}`,
    )
  return {before: say(assume(build)), after: say(settle(build))}
}

/** Put the lines that the page shows into the file, each in the place of the line with its key. */
function pasted(frontMatter: string): string {
  const build = settled(frontMatter)
  const keys = [...new Set(build.proposals.flatMap((one) => ('texts' in one ? Object.keys(one.texts) : [])))]
  const doc = parseDocument(frontMatter)
  for (const key of keys) doc.delete(key)
  return [doc.toString({lineWidth: 0}).trim(), ...writeLines(build, keys)].join('\n')
}

/** A plan as its JSON, less what tells proposals from the file. */
function bare(plan: Plan): unknown {
  const {assumptions, ...rest} = plan
  const json = JSON.stringify({...rest, assumptions: assumptions.filter(({proposed}) => !proposed)})
  return JSON.parse(json, (key, value) => (key === 'proposed' ? undefined : value))
}

const eighths = (low: number, high: number) =>
  fc.integer({min: low * 8, max: high * 8}).map((n) => `${Math.floor(n / 8)} ${n % 8}/8`.replace(' 0/8', ''))
const strings = fc.subarray(
  ['G2 .042w', 'C3 .036w', 'D3 .030w', 'G3 .022w', 'A3 .018', 'D4 .013', 'E4 .012', 'G4 .010'],
  {minLength: 1},
)

/** A box, a scale and strings such as somebody would build, and now and then more. */
const someBuild = fc
  .record({
    length: eighths(5, 14),
    width: eighths(3, 10),
    depth: eighths(1, 4),
    scale: eighths(13, 28),
    strings,
    fretted: fc.boolean(),
    play: fc.constantFrom('slide', 'fingers'),
    ruler: fc.constantFrom('1/32', '1/16', '1/64', '0.5 mm'),
    joins: fc.constantFrom('on top', 'on top', 'through', 'end'),
    wood: fc.constantFrom('sugar maple', 'black cherry', 'western redcedar', 'unknown'),
    neckWidth: fc.constantFrom('1 1/4', '1 1/2', '1 3/4', '2 1/4'),
    thickness: fc.constantFrom('5/8', '3/4', '7/8', '1', '1 1/4'),
    joint: fc.constantFrom('scarf', 'straight', 'solid'),
    boxWood: fc.constantFrom('basswood', 'western redcedar', 'plywood', 'unknown'),
    hand: fc.constantFrom('left', 'right'),
  })
  .map(
    (d) => `title: Any box
ruler: ${d.ruler}
handed: ${d.hand}
play: ${d.play}
box: {length: ${d.length}, width: ${d.width}, depth: ${d.depth}, wood: ${d.boxWood}}
scale: {length: ${d.scale}, fretted: ${d.fretted}}
strings: [${d.strings.join(', ')}]
neck: {width: ${d.neckWidth}, thickness: ${d.thickness}, joins: ${d.joins}, wood: ${d.wood}${d.joins === 'on top' ? '' : ', above-top: 1/4'}}
head: {joint: ${d.joint}${d.joint === 'solid' ? ', angle: 13' : ''}}`,
  )

describe('what is proposed', () => {
  test('passes every check: no fault, warning or remark comes of it', () => {
    fc.assert(
      fc.property(someBuild, (text) => {
        const {before, after} = problemsOf(text)
        expect(after.filter((one) => !before.includes(one))).toEqual([])
      }),
      {numRuns: 80},
    )
  })

  test('of a top that is screwed passes every check too, and stays the same once pasted', () => {
    fc.assert(
      fc.property(someBuild, (text) => {
        const screwed = text.replace('box: {', 'box: {top: {held: screwed}, ')
        const {before, after} = problemsOf(screwed)
        expect(after.filter((one) => !before.includes(one))).toEqual([])
        expect(bare(planned(pasted(screwed)))).toEqual(bare(planned(screwed)))
      }),
      {numRuns: 40},
    )
  })

  test('pasted into the file is the maker’s, and gives the same plan to the last digit', () => {
    fc.assert(
      fc.property(someBuild, (text) => {
        const own = planned(pasted(text))
        expect(own.assumptions.filter(({proposed}) => proposed)).toEqual([])
        expect(bare(own)).toEqual(bare(planned(text)))
      }),
      {numRuns: 50},
    )
  })
})

const four = 'title: Needle box\nbox: 10 1/8 x 7 x 2\nscale: 24 1/4\nstrings: [D3 .030w, A3 .020w, D4 .013]'
const textsOf = (frontMatter: string) =>
  settled(frontMatter).proposals.map((one) => ('texts' in one ? one.texts : one.open))

describe('the four-line build', () => {
  test('gets a nut, anchors, blocks, screws, a sound hole and posts, each marked where it appears', () => {
    const plan = planned(four)
    for (const list of [
      plan.tuners,
      plan.anchors,
      plan.screws,
      plan.fasteners,
      plan.box!.blocks,
      plan.box!.soundHoles,
      plan.holes,
    ]) {
      expect(list!.length).toBeGreaterThan(0)
      expect(list!.every(({proposed}) => proposed)).toBe(true)
    }
    const marked = (plan.bill ?? []).filter(({proposed}) => proposed).map(({from}) => from)
    expect(marked).toEqual(expect.arrayContaining(['tuners', 'anchors', 'screws.1', 'nut']))
    expect(plan.cuts!.parts.filter(({proposed}) => proposed)).toHaveLength(2)
    expect(plan.layout!.filter(({proposed}) => proposed).map(({what}) => what.kind)).toEqual(
      expect.arrayContaining(['tuner', 'anchor', 'screw', 'sound hole']),
    )
    const proposed = plan.assumptions.filter((one) => one.proposed)
    expect(proposed.map(({path}) => path)).toEqual(
      expect.arrayContaining([
        'tuners.at',
        'anchors.at',
        'screws.1.size',
        'box.holes.1.diameter',
        'nut.groove',
      ]),
    )
  })

  test('a value of the file always wins, and what it says is none stays none', () => {
    const plan = planned(`${four}\nscrews: []\nanchors: {kind: plain, string-hole: 1/8}`)
    expect(plan.screws).toBeUndefined()
    expect(plan.holes!.filter(({of}) => of === 'anchors').map(({diameterMm}) => diameterMm)).toEqual([
      3.175, 3.175, 3.175,
    ])
    const holes = planned(
      'title: A\nbox: {length: 10, width: 7, depth: 2, holes: []}\nscale: 24\nstrings: [D3 .030w]',
    )
    expect(holes.box!.soundHoles).toBeUndefined()
  })

  test('an instrument that exists gets nothing', () => {
    expect(settled(`${four}\nstatus: strung up`).proposals).toEqual([])
  })

  test('what does not fit is not proposed, and it is said why', () => {
    const tiny = 'title: A\nscale: 24\nstrings: [D3 .030w, A3 .020w, D4 .013]\nbox: 6 x 2 x 5/8'
    expect(textsOf(tiny)).toContain('no room for a hole')
    expect(textsOf(`${four}\nneck: 3/4 x 3/4`)).toContain('no room for posts')
    expect(textsOf('title: A\nscale: 24\nstrings: 3\nbox: 10 x 7 x 2')).toContain('no notes')
  })
})

describe('two boxes, one after the other', () => {
  test('get the same only where they are the same', () => {
    const other = four.replace('10 1/8 x 7 x 2', '12 x 8 x 3').replace('24 1/4', '26')
    const [first, second, again] = [textsOf(four), textsOf(other), textsOf(four)]
    expect(again).toEqual(first)
    const parts = ['anchors', 'box', 'screws'] as const
    for (const part of parts) {
      const of = (all: typeof first) => all.filter((one) => typeof one === 'object' && part in one)
      expect(of(second)).not.toEqual(of(first))
    }
  })

  // Helmholtz: the frequency goes with the root of hole over volume, so twice the air asks for a wider hole.
  test('a deeper box has a wider hole, a higher tuning too', () => {
    const diameter = (text: string) => planned(text).box!.soundHoles![0]!.diameterMm
    expect(diameter(four.replace('x 2', 'x 3'))).toBeGreaterThan(diameter(four))
    expect(diameter(four.replace('D3 .030w', 'F3 .026w'))).toBeGreaterThan(diameter(four))
  })
})

describe('statics by hand', () => {
  // A free body: the neck, cut at the box's end. The strings pull T at a height over the top's edge; two screws at a
  // depth d under it balance T·h = 2·F·d. Each holds 108.25·G²·D·L in side grain (Wood Handbook, Eq. 8-10), three
  // quarters of that in end grain, and bears a third of it.
  test('the screws through the end hold three times what the strings ask', () => {
    const text = `${four}\nneck: {joins: end, thickness: 1, wood: sugar maple, above-top: 1/4}`
    const {fasteners, tensionTotalN, action, box} = planned(text)
    const [screw] = fasteners!
    const heightMm =
      action!.nutMm + (action!.bridgeHeightMm - action!.nutMm) * (box!.atMm! / (24.25 * 25.4)) + 6.35
    const perScrewN = (tensionTotalN! * heightMm) / (2 * screw!.downMm!)
    const shankMm = 25.4 * (0.06 + 0.013 * screw!.size)
    const inNeckMm = screw!.lengthMm - screw!.underHeadMm
    const biteMm = Math.min(inNeckMm, (screw!.lengthMm * 2) / 3)
    const holdsN = 0.75 * 108.25 * 0.63 ** 2 * shankMm * biteMm
    expect(fasteners).toHaveLength(2)
    expect(screw!.loadN! / perScrewN).toBeCloseTo(1, 1)
    expect(holdsN).toBeGreaterThan(3 * perScrewN * 0.98)
  })
})

test('what is proposed stands in brackets on drawings and templates, and not what the file gives', () => {
  const figures = (text: string) => {
    const plan = planned(text)
    const drawn = [...draw(plan, ['top', 'head', 'inside']), ...templates(plan)]
    return drawn.flatMap(({shapes}) => shapes).flatMap((shape) => ('text' in shape ? shape.text : []))
  }
  const inBrackets = (all: string[]) => all.filter((one) => /^\(.*\)$/.test(one))
  expect(inBrackets(figures(four))).toEqual(expect.arrayContaining(['(−3 1/4)', '(26 5/8)', '(1 1/8)']))
  expect(inBrackets(figures(pasted(four)))).toEqual([])
})
