import {describe, expect, test} from 'vitest'
import {screwSize} from '../../../plugins/plan/fasteners/screw-size.ts'
import {changed} from '../../support/changed.ts'
import {planOf} from '../../support/plan-of.ts'
import {soundBuilds} from '../../support/sound-builds.ts'

const inch = 25.4
const topScrews = (frontMatter: string) =>
  (planOf(frontMatter).plan.fasteners ?? []).filter(({holdsTop}) => holdsTop)

describe('a top that is screwed, of which the file says no more', () => {
  const {plan, build, problems} = planOf(soundBuilds['on top'])
  const screws = (plan.fasteners ?? []).filter(({holdsTop}) => holdsTop)

  test('gets screws in pairs along both sides, no further apart than 6 in, and nothing is wrong with them', () => {
    expect(problems).toEqual([])
    expect(screws.every(({proposed, into, through}) => proposed && into === 'block' && through[0] === 'top'))
    const left = screws.filter(({offMm}) => offMm < 0).map(({stationMm}) => stationMm)
    expect(screws).toHaveLength(2 * left.length)
    expect(left.length).toBeGreaterThanOrEqual(2)
    for (const [i, at] of left.slice(1).entries()) expect(at - left[i]!).toBeLessThanOrEqual(6 * inch)
  })

  // The commentary to the National Design Specification, from memory: five shanks from an end, two and a half from an edge.
  test('in a block each, that leaves five shanks to its ends and two and a half to its edges', () => {
    const {shankMm} = screwSize(screws[0]!.size)
    for (const {stationMm, offMm} of screws) {
      const own = plan.box!.blocks!.filter(
        (block) =>
          Math.abs(block.stationMm - stationMm) < block.lengthMm / 2 &&
          Math.abs(block.offMm - offMm) < block.widthMm / 2,
      )
      expect(own).toHaveLength(1)
      const [{lengthMm, widthMm, stationMm: at, offMm: off}] = own as [(typeof own)[number]]
      expect(lengthMm / 2 - Math.abs(stationMm - at)).toBeGreaterThanOrEqual(5 * shankMm - 1e-6)
      expect(widthMm / 2 - Math.abs(offMm - off)).toBeGreaterThanOrEqual(2.5 * shankMm - 1e-6)
    }
  })

  test('is in the list, the drilling, the bill and the order of the work', () => {
    const count = screws.length
    const row = `screws.${build.values.screws!.length}`
    expect(plan.holes!.filter(({of}) => of === row)).toHaveLength(2 * count)
    expect(plan.holes!.filter(({of}) => of === row).every(({face}) => face === 'top')).toBe(true)
    expect(plan.bill!.find(({from}) => from === row)).toMatchObject({count})
    expect(plan.cuts!.parts.filter(({of}) => of.startsWith('box.blocks.'))).toHaveLength(2 + count)
    const close = plan.work!.find(({id}) => id === 'fasten-top')!
    expect(close.facts).toMatchObject({held: 'screwed', setting: {screws: {count, size: '4'}}})
    expect(plan.work!.find(({id}) => id === 'fasten')!.facts).toMatchObject({setting: {screws: {count: 2}}})
  })
})

test('a wall thick enough for its edge distances takes the screws without blocks', () => {
  // Five shanks of number 4, 0.112 in each, are 0.56 in.
  const thick = changed(soundBuilds['on top'], {'box.sides': '5/8', 'box.blocks': '', screws: '', pickup: ''})
  const screws = topScrews(thick)
  expect(screws.length).toBeGreaterThanOrEqual(4)
  for (const {into, offMm} of screws) {
    expect(into).toBe('side')
    expect(Math.abs(offMm)).toBeCloseTo(((7 - 5 / 8) * inch) / 2, 1)
  }
})

test('screws into the edge of a thin wall are too near its faces', () => {
  const own =
    '{size: 4, length: 5/8, along: [1, 9], off: [-3 13/32, 3 13/32], through: [top], into: side, head: round}'
  const {problems} = planOf(changed(soundBuilds.end, {'screws.2': own, 'box.width': '7'}))
  expect(problems.map(({rule}) => rule)).toContain('screw-near-edge')
})

// Nothing is proposed for what exists; what the file says of no screws stands.
test.each([
  ['a top that is glued', {'box.top.held': 'glued'}],
  ['an instrument that is strung up', {status: 'strung up'}],
])('%s gets none', (_, changes) => {
  expect(topScrews(changed(soundBuilds['on top'], changes))).toEqual([])
})

test('a screw of the top under the neck is told, and where it would be free', () => {
  const own =
    '{size: 4, length: 1/2, along: [5 1/2], off: [1/2, 3], through: [top], into: block, head: round}'
  const block = '{wood: beech, along: 5 1/2, off: 0, length: 1 1/8, width: 6 1/2, thickness: 1/2}'
  const {problems} = planOf(
    changed(soundBuilds['on top'], {'screws.2': own, 'box.blocks.3': block, 'box.holes': ''}),
  )
  const [covered] = problems.filter(({rule}) => rule === 'top-screw-covered')
  // Half the neck and a shank of number 4: 13/16 + 0.112 in, to the next 1/32 in.
  expect(covered?.expected).toEqual(['15/16 in'])
})

/*
 * The neck lies on the top and the bridge stands on it, the strings are anchored to the box: the neck is pulled along by
 * T·cos a and up by T·sin a at the nut, a the strings' slope. About the middle of the top's screws, by hand: lift and
 * moment, shared among three pairs at −d, 0 and d by their distance: the front pair bears F/6 + M·d/(4d²).
 */
test('what a neck on top lifts, the top’s screws bear, by the sum of forces and moments', () => {
  const {plan} = planOf(
    changed(soundBuilds['on top'], {
      'bridge.on': 'top',
      'bridge.kind': 'saddle',
      'bridge.height': '1 3/16',
      'action.octave': '',
      'neck.length': '31',
      anchors: '{kind: tailpiece, at: 26 1/8, spacing: 1/2, height: -13/16}',
      'screws.2':
        '{size: 4, length: 5/8, along: [1, 5, 9], off: [-3, 3], through: [top], into: block, head: round}',
      'box.blocks':
        '[{wood: beech, along: 1, off: 0, length: 1 1/4, width: 6 1/2, thickness: 5/8}, {wood: beech, along: 5, off: 0, length: 1 1/4, width: 6 1/2, thickness: 5/8}, {wood: beech, along: 9, off: 0, length: 1 1/4, width: 6 1/2, thickness: 5/8}]',
      'box.holes': '',
    }),
  )
  const {action, tensionTotalN: pullN = Number.NaN} = plan
  const scaleMm = 24.25 * inch
  const slope = Math.atan((action!.bridgeHeightMm - action!.nutMm) / scaleMm)
  const [upN, tailwardN] = [pullN * Math.sin(slope), pullN * Math.cos(slope)]
  const middleMm = (16 + 5) * inch
  const aboutMiddle = upN * (middleMm - 0) + tailwardN * (action!.nutMm + (13 / 16) * inch)
  const d = 4 * inch
  const byHand = (side: -1 | 0 | 1) => Math.max(0, upN / 6 - (side * aboutMiddle * d) / (4 * d ** 2))
  const screws = plan.fasteners!.filter(({holdsTop}) => holdsTop)
  expect(screws).toHaveLength(6)
  const sides = screws.map(({stationMm}) => Math.round((stationMm - middleMm) / d))
  expect(byHand(-1)).toBeGreaterThan(20)
  for (const [i, {loadN}] of screws.entries()) expect(loadN).toBeCloseTo(byHand(sides[i] as -1 | 0 | 1), 6)
})
