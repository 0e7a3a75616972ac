import {expect, test} from 'vitest'
import {sagittaMm} from '../../../plugins/plan/neck/board-radius.ts'
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
