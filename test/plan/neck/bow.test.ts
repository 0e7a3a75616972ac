import {all, create} from 'mathjs'
import {describe, expect, test} from 'vitest'
import {bend, distinctPlaces} from '../../../plugins/plan/neck-shape/bend.ts'
import {crossSectionAt, cutNeck} from '../../../plugins/plan/neck-shape/cut.ts'
import {neckModel} from '../../../plugins/plan/neck-shape/model.ts'
import {settle} from '../../../plugins/plan/settle.ts'
import {printedPlan} from '../../../plugins/words/printed-plan.ts'
import {changed} from '../../support/changed.ts'
import {planOf} from '../../support/plan-of.ts'
import {soundBuilds} from '../../support/sound-builds.ts'
import {soundNecks} from '../../support/sound-necks.ts'

import '../../support/slow.ts'

// The library's own types leave it out.
const {solveODE: solveOde} = create(all!) as unknown as {solveODE: CallableFunction}

// Gere & Goodno, Mechanics of Materials, App. G, equal end couples on a simple span: M·L²/(8EI), from memory.
describe('a constant section under equal end couples', () => {
  test('bends by M·L²/(8EI)', () => {
    expect(bend(() => 1000 / (10_000 * 20_000), [0, 400]).reliefMm).toBeCloseTo(0.1, 12)
    const neck = bend(() => 3750 / (12_600 * ((38 * 19 ** 3) / 12)), [0, 430])
    expect(neck.reliefMm).toBeCloseTo(0.3167, 5)
    expect(neck.hollowAt(215)).toBeCloseTo(neck.reliefMm, 9)
    expect(neck.hollowAt(0)).toBeCloseTo(0, 12)
    expect(neck.hollowAt(430)).toBeCloseTo(0, 12)
  })

  // A parabola: at a quarter of the span three quarters of the deepest.
  test('is a parabola', () => {
    const neck = bend(() => 1e-6, [0, 400])
    expect(neck.hollowAt(100)).toBeCloseTo(0.75 * neck.reliefMm, 9)
    expect(neck.hollowAt(33)).toBeCloseTo((1e-6 * 33 * 367) / 2, 9)
  })

  // Two ends of layers one last bit apart are one place.
  test('two places one last bit apart are one', () => {
    const middle = 200.00000000000003
    expect(distinctPlaces([400, middle, 0, 200, 400])).toEqual([0, 200, 400])
    expect(bend(() => 1e-6, distinctPlaces([0, 200, middle, 400])).reliefMm).toBeCloseTo(0.02, 12)
  })

  // Held straight from a on, the hollow under the chord is (κa²/2)(b/L + a²/(4L²)), b being L − a: statics.
  test('held straight past the box’s edge', () => {
    const [a, l, kappa] = [380, 616, 1e-6]
    const held = bend((x) => (x < a ? kappa : 0), [0, a, l])
    expect(held.reliefMm).toBeCloseTo(((kappa * a * a) / 2) * ((l - a) / l + (a * a) / (4 * l * l)), 6)
  })
})

/** Integrate y″ = M/EI by the library's own adaptive Runge-Kutta, and measure the hollow under the chord. */
function hollowByLibrary(curvature: (x: number) => number, breaks: readonly number[]) {
  let state = [0, 0]
  const [xs, ys] = [[breaks[0]!], [0]]
  for (const [i, from] of breaks.slice(0, -1).entries()) {
    const to = breaks[i + 1]!
    const inside = (x: number) => Math.min(to - 1e-9, Math.max(from + 1e-9, x))
    const derivative = (x: number, [, slope]: number[]) => [slope!, curvature(inside(x))]
    const {t, y} = solveOde(derivative, [from, to], state, {
      tol: 1e-12,
      maxStep: (to - from) / 400,
    }) as {t: number[]; y: number[][]}
    xs.push(...t.slice(1))
    ys.push(...y.slice(1).map(([height]) => height!))
    state = y.at(-1)!
  }
  const end = xs.at(-1)!
  return Math.max(...xs.map((x, i) => (x / end) * ys.at(-1)! - ys[i]!))
}

test('along a tapered, rounded, fretted neck it agrees with a fine integration by a general library', () => {
  const {build, plan} = planOf(soundNecks['four strings on a narrow nut'])
  const {action, tensionTotalN, neck, box} = plan
  const ends = {place: {...box, atMm: box!.atMm!, placedBy: box!.placedBy!}, lengthMm: neck!.budget!.lengthMm}
  const cut = cutNeck(neckModel(settle(build, {}).values, ends)!)
  const scaleMm = plan.scale!.lengthMm!
  const nutMm = action!.nutMm + action!.crownMm!
  const curvature = (x: number) => {
    const {neutralAxisMm, eiNmm2} = crossSectionAt(x, cut)!
    const heightMm = nutMm + ((action!.bridgeHeightMm - nutMm) * x) / scaleMm
    return (tensionTotalN! * (neutralAxisMm! + heightMm)) / eiNmm2!
  }
  const {fromMm, toMm, runInMm} = neck!.roundOver!
  const breaks = [0, fromMm + runInMm, toMm - runInMm, toMm, 13.75 * 25.4, scaleMm]
  const fine = hollowByLibrary(curvature, breaks)
  expect(Math.abs(neck!.bow!.reliefMm / fine - 1)).toBeLessThan(1e-5)
})

describe('the bow of a whole build', () => {
  // Timoshenko & Gere, Theory of Elastic Stability, from memory: Euler's column, π²EI/L² = 14,608 N for this stick.
  const stick = `
title: Slipway
units: mm
scale: 430
strings: [{note: A3, mass: 1 g/m}]
neck: {width: 38, thickness: 19, wood: test stick, stiffness: 12.6 GPa, density: 600 kg/m3, length: 700}
action: {nut: 3, octave: 4}
`
  test('buckles at Euler’s load', () => {
    const {plan} = planOf(stick)
    expect(plan.neck!.bow!.bucklingMargin! * plan.tensionTotalN!).toBeCloseTo(14_608, -0.5)
  })

  test('is the pull times its height over the axis, times L²/(8EI), where that height is the same all along', () => {
    const {plan} = planOf(changed(stick, {'action.octave': '3'}))
    const moment = plan.tensionTotalN! * (9.5 + 3)
    const ei = 12_600 * ((38 * 19 ** 3) / 12)
    expect(plan.neck!.bow!.reliefMm).toBeCloseTo((moment * 430 ** 2) / (8 * ei), 9)
    // Wood Handbook, FPL-GTR-282, ch. 5: a load that stays doubles it in time.
    expect(plan.neck!.bow!.reliefAfterCreepMm).toBeCloseTo(2 * plan.neck!.bow!.reliefMm, 12)
  })

  test('lies between held at the box’s edge and free, and a loose wood widens that', () => {
    const known = planOf(soundBuilds['on top']).plan.neck!.bow!
    const loose = planOf(changed(soundBuilds['on top'], {'neck.wood': 'hardwood'})).plan.neck!.bow!
    expect(known.rangeMm[1]).toBe(known.reliefMm)
    expect(known.rangeMm[0]).toBeLessThan(known.reliefMm)
    expect(loose.rangeMm[0]).toBeLessThan(loose.reliefMm)
    expect(loose.rangeMm[1]).toBeGreaterThan(loose.reliefMm)
  })

  test.each(['on top', 'through', 'end'] as const)('says why, for a neck that joins %s', (joins) => {
    const {plan} = planOf(soundBuilds[joins])
    const bow = plan.neck!.bow!
    expect(printedPlan(plan).neck?.bow?.why).toBeTruthy()
    expect(bow.toMm).toBeCloseTo(joins === 'end' ? 16 * 25.4 : 24.25 * 25.4, 9)
  })
})
