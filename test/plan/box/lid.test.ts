import {describe, expect, test} from 'vitest'
import {changed} from '../../support/changed.ts'
import {planOf} from '../../support/plan-of.ts'
import {gridPlate} from '../../support/plate-grid.ts'
import fc from '../../support/properties.ts'
import {soundBuilds} from '../../support/sound-builds.ts'

import '../../support/slow.ts'

/** A bridge on the top of a box 220 by 180 with walls of 10: all of it in millimetres, N and MPa, by hand below. */
const onTop = `
title: Slipway
units: mm
ruler: 0.5
scale: 600
strings: [{note: E3, mass: 2 g/m}, {note: A3, mass: 1 g/m}]
action: {nut: 3, octave: 5}
neck: {width: 40, thickness: 34, joins: through, above-top: 5, wood: sugar maple, length: 810}
head: {length: 140, joint: straight}
bridge: {kind: saddle, on: top, foot: 12, length: 60}
anchors: {kind: plain, at: 660, spacing: 10, string-hole: 2, height: -5}
box: {length: 220, width: 180, depth: 60, sides: 10, back: 3, wood: sugar maple, top: {thickness: 3}, at: 430, neck-gap: 4}
`

/*
 * By hand: heights 3 at the nut and 7 at the bridge; anchors 5 under the face, 60 behind the bridge; so the strings go
 * down 4 in 600 in front of it and 12 in 60 behind. The top is free from 440 to 640 and 160 wide; the foot, 12 by 60,
 * spreads to 15 by 63 in the middle of a top 3 thick, 160 from the head-side edge of what is free. Sugar maple sawn
 * flat: 12,600 MPa along the grain, 0.06 of it across, shear 0.07 of it, ν 0.4 along and 0.4·0.06 across.
 */
const tensionN = (grams: number, hertz: number) => (grams / 1000) * (2 * 0.6 * hertz) ** 2
const pullN = tensionN(1, 220) + tensionN(2, 440 / 2 ** (17 / 12))
const pushN = pullN * (Math.sin(Math.atan(4 / 600)) + Math.sin(Math.atan(12 / 60)))
const bends = (across: number, shear: number) => {
  const along = (12_600 * 3 ** 3) / 12 / (1 - 0.4 * 0.4 * across)
  return {dx: along, dy: across * along, h: 0.4 * across * along + (2 * shear * 12_600 * 3 ** 3) / 12}
}
const free = {a: 200, b: 160, foot: {at: 160, along: 15, across: 63}}
const grid = [40, 16] as const

describe('a top under a bridge, by hand and by a grid', () => {
  const {plan, problems} = planOf(onTop)
  const lid = plan.box!.lid!
  const [loose, held] = [false, true].map((isHeld) =>
    gridPlate({...free, ...bends(0.06, 0.07), isHeld, push: pushN}, ...grid),
  )

  test('is pressed by what the strings push the bridge', () => {
    expect(plan.tensionTotalN! / pullN).toBeCloseTo(1, 3)
    expect(lid.pushN / pushN).toBeCloseTo(1, 3)
    expect(problems).toEqual([])
  })

  test('sinks half way between a loose plate and a held one, at most as the loose one', () => {
    expect(Math.abs(lid.sinkMm / ((loose!.sinkMm + held!.sinkMm) / 2) - 1)).toBeLessThan(0.02)
    expect(Math.abs(lid.rangeMm[1]! / loose!.sinkMm - 1)).toBeLessThan(0.02)
    expect(lid.sinkAfterCreepMm).toBeCloseTo(2 * lid.sinkMm, 12)
  })

  test('at least as a held one sawn on the quarter', () => {
    const quarter = gridPlate({...free, ...bends(0.11, 0.09), isHeld: true, push: pushN}, ...grid)
    expect(Math.abs(lid.rangeMm[0]! / quarter.sinkMm - 1)).toBeLessThan(0.02)
  })

  test('with the grain the other way, sinks by what the other plate does', () => {
    const {dx, dy, h} = bends(0.06, 0.07)
    const [a, b] = [false, true].map((isHeld) =>
      gridPlate({...free, dx: dy, dy: dx, h, isHeld, push: pushN}, ...grid),
    )
    expect(Math.abs(lid.otherGrainMm! / ((a!.sinkMm + b!.sinkMm) / 2) - 1)).toBeLessThan(0.02)
  })

  // Drawn heights are those of the strung instrument: 7 at the bridge, less the neck's hollow, plus the top's sinking.
  test('is made up for in the bridge, and in time takes half its creep from the octave', () => {
    const {action, neck} = plan
    expect(action!.bridgeToBuildMm).toBeCloseTo(7 - 2 * neck!.bow!.octaveMm + lid.sinkMm, 9)
    expect(action!.octaveAfterCreepMm).toBeCloseTo(5 + neck!.bow!.creepMm - lid.sinkMm / 2, 9)
    expect(action!.atLinesMm![0]![11]).toBeCloseTo(5, 6)
  })
})

test('held at the bridge, the strings tip it instead: their pull times their height over the middle of the top', () => {
  const {plan} = planOf(changed(onTop, {'anchors.at': '604'}))
  const lid = plan.box!.lid!
  const slope = Math.atan(4 / 600)
  // 7 over the playing face, which lies 5 over a top 3 thick.
  const moment = pullN * Math.cos(slope) * (7 + 5 + 1.5)
  expect(lid.momentNmm! / -moment).toBeCloseTo(1, 3)
  expect(lid.pushN / (pullN * Math.sin(slope))).toBeCloseTo(1, 3)
  const both = [false, true].map((isHeld) =>
    gridPlate({...free, ...bends(0.06, 0.07), isHeld, push: lid.pushN, moment: -moment}, 90, 20),
  )
  const leanMm = (-(both[0]!.slope + both[1]!.slope) / 2) * 13.5
  expect(lid.leanMm).toBeGreaterThan(0)
  expect(Math.abs(lid.leanMm! / leanMm - 1)).toBeLessThan(0.08)
})

const grave = (text: string) =>
  planOf(text)
    .problems.filter(({severity}) => severity !== 'remark')
    .map(({rule}) => rule)

describe('bad input', () => {
  test('1 mm under 300 N breaks, and a thickness that would do is silent', () => {
    const text = changed(onTop, {
      'box.top.thickness': '1',
      strings: '[{note: A3, mass: 10 g/m}, {note: E3, mass: 10 g/m}]',
    })
    const {plan, problems} = planOf(text)
    expect(plan.box!.lid!.pushN).toBeGreaterThan(200)
    const found = problems.find(({rule}) => rule === 'top-too-weak')!
    expect(problems.map(({rule}) => rule)).toContain('top-sinks')
    // Theory of plates: small deflections, up to half the thickness; here it sinks by many times that.
    expect(plan.box!.lid!.isTaut).toBe(true)
    expect(planOf(onTop).plan.box!.lid!.isTaut).toBeUndefined()
    const rules = grave(changed(text, {'box.top.thickness': found.expected![0]!}))
    for (const rule of ['top-too-weak', 'top-sinks']) expect(rules).not.toContain(rule)
  })

  test('a bridge on a wall, or over both sides, presses no top', () => {
    const onWall = planOf(changed(onTop, {'box.at': '386'})).plan
    expect(onWall.box!.lid).toMatchObject({standsOn: 'tail wall', sinkMm: 0})
    expect(planOf(changed(onTop, {'box.at': '586'})).plan.box!.lid).toMatchObject({standsOn: 'head wall'})
    expect(planOf(changed(onTop, {'bridge.length': '170'})).plan.box!.lid).toMatchObject({
      standsOn: 'side walls',
    })
    expect(grave(changed(onTop, {'bridge.length': '190'}))).toContain('bridge-wider-than-box')
    expect(planOf(changed(onTop, {'box.at': '300'})).plan.box!.lid).toBeUndefined()
  })

  test('a tiny box, and one that its walls fill', () => {
    const tiny = {'box.length': '40', 'box.width': '40', 'box.at': '580', 'bridge.length': '15'}
    expect(planOf(changed(onTop, tiny)).plan.box!.lid!.sinkMm).toBeGreaterThan(0)
    expect(planOf(changed(onTop, {...tiny, 'box.sides': '20'})).plan.box!.lid).toBeUndefined()
  })

  test('a wood that nobody knows, or no anchors: nothing is said', () => {
    expect(planOf(changed(onTop, {'box.top': '{thickness: 3, wood: tin}'})).plan.box!.lid).toBeUndefined()
    expect(planOf(changed(onTop, {'anchors.height': ''})).plan.box!.lid).toBeUndefined()
  })
})

test('a block under the bridge spreads its push, and one at the end shortens what the walls hold', () => {
  const lidOf = (block: string) => planOf(changed(onTop, {'box.blocks': `[${block}]`})).plan.box!.lid!
  const bare = planOf(onTop).plan.box!.lid!
  const under = lidOf(
    '{wood: spruce, at: 600, off: 0, length: 40, width: 110, thickness: 4, glued: under the top}',
  )
  expect(under.sinkMm).toBeLessThan(0.9 * bare.sinkMm)
  expect(under.stressMpa!).toBeLessThan(0.7 * bare.stressMpa!)
  const atEnd = lidOf(
    '{wood: spruce, at: 460, off: 0, length: 40, width: 150, thickness: 30, glued: at the ends}',
  )
  expect(atEnd.rangeMm[0]!).toBeLessThan(bare.rangeMm[0]!)
  expect(atEnd.rangeMm[1]!).toBeCloseTo(bare.rangeMm[1]!, 9)
})

test('plywood and fibreboard are judged by their own tables', () => {
  const of = (wood: string) =>
    planOf(changed(onTop, {'box.top': `{thickness: 4, wood: ${wood}}`})).plan.box!.lid!
  // Birch plywood of 4 mm is 16,471 MPa along its face grain and 1,029 across it; fibreboard is the same both ways.
  expect(of('birch plywood').otherGrainMm).not.toBeCloseTo(of('birch plywood').sinkMm, 2)
  expect(of('mdf').otherGrainMm).toBeUndefined()
  const {sinkMm} = of('mdf')
  const d = (3590 * 64) / 12 / (1 - 0.09)
  const even = {...free, foot: {at: 160, along: 16, across: 64}, dx: d, dy: d, h: d, push: pushN}
  const [loose, held] = [false, true].map((isHeld) => gridPlate({...even, isHeld}, ...grid))
  expect(Math.abs(sinkMm / ((loose!.sinkMm + held!.sinkMm) / 2) - 1)).toBeLessThan(0.02)
})

test('over any top, place and strings: a thicker top sinks less, the likely lies in the range, and all is a number', () => {
  const cases = fc.record({
    halves: fc.integer({min: 2, max: 14}),
    at: fc.integer({min: 395, max: 575}),
    wood: fc.constantFrom('sugar maple', 'pine', 'plywood', 'birch plywood', 'hardboard', 'western redcedar'),
    grams: fc.integer({min: 2, max: 90}),
    size: fc.integer({min: 60, max: 500}),
  })
  fc.assert(
    fc.property(cases, ({halves, at, wood, grams, size}) => {
      const text = (thickness: number) =>
        changed(onTop, {
          'box.at': `${at}`,
          'box.width': `${size}`,
          'bridge.length': '30',
          'box.top': `{thickness: ${thickness}, wood: ${wood}}`,
          strings: `[{note: A3, mass: ${grams / 10} g/m}]`,
        })
      const [thin, thick] = [halves / 2, halves / 2 + 0.5].map((mm) => planOf(text(mm)).plan)
      expect(JSON.stringify(thin)).not.toContain('null')
      const [lid, other] = [thin!.box!.lid, thick!.box!.lid]
      if (!lid || lid.standsOn || !other) return
      expect(other.sinkMm).toBeLessThan(lid.sinkMm)
      expect(lid.rangeMm[0]).toBeLessThanOrEqual(lid.sinkMm)
      expect(lid.rangeMm[1]).toBeGreaterThanOrEqual(lid.sinkMm)
      expect(lid.stressMpa).toBeGreaterThan(0)
    }),
    {numRuns: 40},
  )
})

test('daylight less than the top sinks in time brings it down on the neck', () => {
  const thin = changed(soundBuilds.through, {'box.neck-gap': '1/32', 'box.top.thickness': '3/32'})
  expect(planOf(thin).plan.box!.lid!.needsGapMm).toBeGreaterThan(25.4 / 32)
  expect(grave(thin)).toContain('neck-touches-top')
})
