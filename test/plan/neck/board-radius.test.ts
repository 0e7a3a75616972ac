import {describe, expect, test} from 'vitest'
import {templates} from '../../../plugins/drawings/templates/sheets.ts'
import {sagittaMm} from '../../../plugins/plan/action/round-face.ts'
import {changed} from '../../support/changed.ts'
import {planOf} from '../../support/plan-of.ts'
import fc from '../../support/properties.ts'
import {soundNecks} from '../../support/sound-necks.ts'

const inch = 25.4
const round = soundNecks['four strings on a narrow nut']
const {plan, problems} = planOf(round)

// Worked by hand: a 12 in radius over 1 1/4 in is 12 − √(12² − 0.625²) = 0.01629 in lower at the edges.
test('a 12 in radius is lower by 0.0163 in at the edges of 1 1/4 in', () => {
  expect(problems).toEqual([])
  expect(plan.neck!.boardRadius!.checks[0]!.sagittaMm / inch).toBeCloseTo(0.01629, 5)
  expect(sagittaMm(10, 10)).toBe(10)
  expect(sagittaMm(10, 10.1)).toBeUndefined()
})

// A chord and its sagitta lie on the circle again: R = (x² + s²)/(2s).
test('a law: middle and edges lie on one circle', () => {
  fc.assert(
    fc.property(
      fc.double({min: 50, max: 5000, noNaN: true}),
      fc.double({min: 1, max: 49, noNaN: true}),
      (r, x) => {
        const s = sagittaMm(r, x)!
        expect((x * x + s * s) / (2 * s) / r).toBeCloseTo(1, 6)
      },
    ),
  )
})

test('every string stands over its own part of the board as drawn, at nut and octave', () => {
  const {neck, scale, action} = plan
  const radius = 12 * inch
  // The circle's own ordinate there, by Pythagoras; heights over the top of the board's middle.
  const faceAt = (off: number) => Math.sqrt(radius ** 2 - off ** 2) - radius
  for (const [i, {nutMm, bridgeMm}] of neck!.boardRadius!.strings!.entries()) {
    const [atNut, atBridge] = [scale!.nutOffMm![i]!, scale!.bridgeOffMm![i]!]
    const bridge = bridgeMm + action!.bridgeStandsMm!
    expect(nutMm - faceAt(atNut)).toBeCloseTo(action!.nutMm + action!.crownMm, 9)
    const octave = (nutMm + bridge) / 2
    expect(octave - faceAt((atNut + atBridge) / 2)).toBeCloseTo(action!.octaveMm + action!.crownMm, 9)
    expect(bridge).toBeLessThan(action!.bridgeHeightMm + 1e-9)
  }
  expect(neck!.boardRadius!.bridgeRadiusMm).toBeGreaterThan(0)
})

test('it is sanded, checked, drawn, and its frets are longer by the curve', () => {
  const step = plan.work!.find(({id}) => id === 'sand-board')!
  expect(step.facts).toMatchObject({setting: {radiusMm: expect.closeTo(12 * inch, 9)}, isSlotted: true})
  const order = plan.work!.map(({id}) => id)
  expect(order.indexOf('sand-board')).toBeGreaterThan(order.indexOf('glue-up-board'))
  expect(order.indexOf('sand-board')).toBeLessThan(order.indexOf('fret'))
  const flat = planOf(changed(round, {'fingerboard.radius': ''})).plan
  expect(plan.neck!.fretting!.wireMm).toBeGreaterThan(flat.neck!.fretting!.wireMm!)
})

test.each(['0.5', '0.62', '0.7'])('a radius of %s in leaves nothing of a board 1 1/2 in wide', (radius) => {
  const found = planOf(changed(round, {'fingerboard.radius': radius})).problems
  const problem = found.find(({rule}) => rule === 'board-radius-too-small')
  expect(problem).toMatchObject({severity: 'fault'})
  const mended = planOf(changed(round, {'fingerboard.radius': problem!.expected![0]!})).problems
  expect(mended.map(({rule}) => rule)).not.toContain('board-radius-too-small')
})

describe('each string over its own part of the board', () => {
  const radius = 12 * inch
  // The circle's own ordinate, by Pythagoras, and the string's straight line, both from the middle of the board's face.
  const faceAt = (off: number) => Math.sqrt(radius ** 2 - off ** 2) - radius
  const heightBy = (one: typeof plan, at: number, line: number) => {
    const {scale, action, neck} = one
    const [n, b] = [scale!.nutOffMm![at]!, scale!.bridgeOffMm![at]!]
    const {nutMm, bridgeMm} = neck!.boardRadius!.strings![at]!
    const part = scale!.lines![line]!.fromNutMm / scale!.lengthMm!
    const hollow = neck!.bow?.atLinesMm?.[line] ?? 0
    // Drawn heights are those of the strung, hollow neck: the bridge lies lower by twice the hollow at the octave.
    const bridge = bridgeMm + action!.bridgeStandsMm! - 2 * action!.reliefMm
    return nutMm + (bridge - nutMm) * part + hollow - faceAt(n + (b - n) * part) - action!.crownMm
  }

  test.each([
    ['nut and bridge shaped to it', {}],
    ['a straight rod for a nut', {nut: '{kind: rod, diameter: 1/8}'}],
  ])('at every line, by hand: %s', (_, changes) => {
    const one = planOf(changed(round, changes)).plan
    for (const [at, heights] of one.action!.atLinesMm!.entries())
      for (const [line, mm] of heights.entries()) expect(mm).toBeCloseTo(heightBy(one, at, line), 6)
  })

  test('over a straight rod the outer strings stand higher at the first fret, and as drawn at the octave', () => {
    const {action} = planOf(changed(round, {nut: '{kind: rod, diameter: 1/8}'})).plan
    const [outer, inner] = [action!.atLinesMm![0]!, action!.atLinesMm![1]!]
    expect(outer[0]!).toBeGreaterThan(inner[0]! + 0.1)
    expect(outer[11]!).toBeCloseTo(action!.octaveMm, 6)
    expect(inner[11]!).toBeCloseTo(action!.octaveMm, 6)
  })

  test('a very large radius is a flat board, in heights and in cents', () => {
    const wide = planOf(changed(round, {'fingerboard.radius': '190'})).plan
    const flat = planOf(changed(round, {'fingerboard.radius': ''})).plan
    for (const [at, {compensatedCents}] of wide.intonation!.entries())
      for (const [line, cents] of compensatedCents.entries())
        expect(cents).toBeCloseTo(flat.intonation![at]!.compensatedCents[line]!, 1)
  })

  test('a straight rod makes the outer strings sharper at the first fret', () => {
    const sharp = (changes: Record<string, string>) =>
      planOf(changed(round, changes)).plan.intonation![0]!.plainCents[0]!
    expect(sharp({nut: '{kind: rod, diameter: 1/8}'})).toBeGreaterThan(sharp({}) + 1)
  })
})

// A gauge's corners and the middle of its arc lie on one circle of the board's radius: R = (x² + s²)/(2s).
test('the gauge to check it by is among the templates, true to scale', () => {
  const gauge = templates(plan).find(({name}) => name === 'radius gauge')!
  const arcs = gauge.shapes.filter((shape) => shape.is === 'arc')
  expect(arcs).toHaveLength(1)
  const [{radiusMm, centre}] = arcs as [(typeof arcs)[number]]
  expect(radiusMm).toBeCloseTo(12 * inch, 9)
  const [outline] = gauge.shapes.flatMap((shape) =>
    shape.is === 'path' && shape.ink === 'cut' ? [shape.points] : [],
  )
  const [x, y] = outline![0]!
  const sag = y - (centre[1] - radiusMm)
  expect((x * x + sag * sag) / (2 * sag)).toBeCloseTo(12 * inch, 6)
  expect(Math.abs(x)).toBeGreaterThan(plan.neck!.boardRadius!.checks[1]!.widthMm / 2)
  expect(
    templates(planOf(changed(round, {'fingerboard.radius': ''})).plan).map(({name}) => name),
  ).not.toContain('radius gauge')
})
