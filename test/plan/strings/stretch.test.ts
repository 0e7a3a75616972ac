import {expect, test} from 'vitest'
import {planOf} from '../../support/plan-of.ts'

/** A fretted string of 0.43 mm steel over 650 mm, 100 mm from nut to post and 50 mm from bridge to anchor. */
const build = `
title: Slipway
units: mm
ruler: 0.5
scale: {length: 650, fretted: true, lines: 12}
frets: {crown: 1}
strings: [{note: D4, gauge: 0.43 mm, material: steel}]
action: {nut: 0.6, octave: 2.2, relief: 0}
neck: {width: 40, thickness: 20, joins: on top}
box: {length: 250, width: 180, depth: 60}
bridge: {on: neck, from-tail: 60}
tuners: {at: [-100], off: [0], post-hole: 6}
anchors: {kind: plain, at: 700, height: 0}
`
const whole = 100 + 650 + 50

// Hooke's law, by hand: T = μ(2Lf)² of steel, 7,850 kg/m³; E 203.4 GPa (Shigley, Table 10-5).
test('a string stretches over its scale where it sticks, and over all of it where it slides', () => {
  const [string] = planOf(build).plan.strings!
  const section = (Math.PI / 4) * 0.43 ** 2
  const pull = 7.85e-6 * section * (2 * 0.65 * 293.6648) ** 2 * 1000
  const strain = pull / (203_400 * section)
  expect(string!.wholeMm).toBe(whole)
  expect(string!.stretchMm! / (strain * 650)).toBeCloseTo(1, 2)
  expect(string!.stretchWholeMm! / (strain * whole)).toBeCloseTo(1, 2)
})

/*
 * Anderson and Beausoleil (2024), approximation for small setbacks: cents ∝ (γ − 1)(B0 − ΔS/X0) + κQ/2, with
 * Q = [γb + (γ − 1)c]²/(2(γ − 1)X0²). With the nut where it is, the least square over twelve frets is at
 * ΔS = X0·(B0 + Σ(γ − 1)κQ/2 / Σ(γ − 1)²). Sliding, the stretch is shared by the whole string: κ counts 650/800.
 */
test('a string that slides over nut and saddle is set back as its shared stretch asks', () => {
  const {plan} = planOf(build)
  const [string] = plan.strings!
  const [setback] = plan.bridge!.setbacks!
  const [b, c] = [0.6, 2 * (2.2 - 0.6)]
  const kappa = (Math.PI * 0.215 ** 2 * string!.stiffnessMpa!) / string!.tensionN!
  const published = (shared: number) => {
    let [over, under] = [0, 0]
    for (let n = 1; n <= 12; n++) {
      const gamma = 2 ** (n / 12)
      const q = (gamma * b + (gamma - 1) * c) ** 2 / (2 * (gamma - 1) * 650 ** 2)
      over += ((gamma - 1) * kappa * shared * q) / 2
      under += (gamma - 1) ** 2
    }
    return 650 * ((Math.sqrt(kappa) * 0.215) / (2 * 650) + over / under)
  }
  expect(setback!.setbackMm / published(1)).toBeCloseTo(1, 1)
  expect(setback!.slidingMm! / published(650 / whole)).toBeCloseTo(1, 1)
  expect(setback!.slidingMm!).toBeLessThan(setback!.setbackMm)
})

test('nothing is said of sliding where post or anchor is not placed', () => {
  const {plan} = planOf(build.replace('at: [-100], ', ''))
  expect(plan.strings![0]!.stretchWholeMm).toBeUndefined()
  expect(plan.bridge!.setbacks![0]!.slidingMm).toBeUndefined()
})
