import {expect, test} from 'vitest'
import {planOf} from '../../../support/plan-of.ts'
import fc from '../../../support/properties.ts'

// The model of Anderson and Beausoleil (2024) written down a second time, from its formulas, and its least mean square
// found by a plain search that knows no slopes; the plan must agree on string sets, scales and frettings at random.

interface Case {
  x0: number
  b: number
  c: number
  d: number
  t0: number
  rho: number
  e: number
}

function deviation({x0, b, c, d, t0, rho, e}: Case, g: number, dS: number, dN: number): number {
  const kappa = (Math.PI * rho ** 2 * e) / t0
  const xn = x0 / g
  const l0 = Math.sqrt((x0 + dS + dN) ** 2 + c ** 2)
  const ln = Math.sqrt((xn + dS) ** 2 + (b + c) ** 2)
  const lp = (ln * d) / (xn + dS) + Math.sqrt((x0 - xn + dN - d) ** 2 + (b + (d * (b + c)) / (xn + dS)) ** 2)
  const q = (ln + lp - l0) / l0
  const b0 = (Math.sqrt(kappa) * rho) / (2 * x0)
  const bn = (b0 * (l0 / ln)) / Math.sqrt(1 + kappa * q)
  const bend = (one: number) => 1 + one + (1 + Math.PI ** 2 / 2) * one ** 2
  return (
    1200 * Math.log2(l0 / (g * ln)) +
    600 * Math.log2(1 + q) +
    600 * Math.log2(1 + kappa * q) +
    1200 * Math.log2(bend(bn) / bend(b0))
  )
}

/** The lowest place of a valley, by thirds. */
function lowest(height: (at: number) => number, low: number, high: number): number {
  let [a, z] = [low, high]
  while (z - a > 1e-7) {
    const [p, r] = [a + (z - a) / 3, z - (z - a) / 3]
    if (height(p) < height(r)) z = r
    else a = p
  }
  return (a + z) / 2
}

const string = fc.record({
  midi: fc.integer({min: 40, max: 67}),
  pullN: fc.double({min: 20, max: 150, noNaN: true}),
  gaugeMm: fc.double({min: 0.25, max: 1.3, noNaN: true}),
  gpa: fc.double({min: 2, max: 12, noNaN: true}),
})
const build = fc.record({
  scaleMm: fc.integer({min: 350, max: 700}),
  nut: fc.double({min: 0.3, max: 1.5, noNaN: true}),
  octave: fc.double({min: 1.8, max: 4, noNaN: true}),
  finger: fc.constantFrom(0, 0, 3, 6),
  lines: fc.constantFrom(5, 12, 19, 24),
  fretting: fc.constantFrom('chromatic', 'diatonic', '[2, 4, 5, 7, 9, 10, 11, 12]'),
  strings: fc.array(string, {minLength: 1, maxLength: 4}),
})
const letters = ['C', 'C#', 'D', 'D#', 'E', 'F', 'F#', 'G', 'G#', 'A', 'A#', 'B']
const patterns: Record<string, number[]> = {
  chromatic: [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12],
  diatonic: [2, 4, 5, 7, 9, 10, 12, 14, 16, 17, 19, 21],
  '[2, 4, 5, 7, 9, 10, 11, 12]': [2, 4, 5, 7, 9, 10, 11, 12, 14, 16, 17, 19],
}

test('setbacks and cents of sets that nobody has seen', () => {
  fc.assert(
    fc.property(build, ({scaleMm, nut, octave, finger, lines, fretting, strings: drawn}) => {
      const strings = drawn.map((one) => {
        const hz = 440 * 2 ** ((one.midi - 69) / 12)
        return {...one, grams: (one.pullN / ((2 * scaleMm * hz) / 1000) ** 2) * 1000}
      })
      const {plan} = planOf(`
title: Unseen
units: mm
scale: {length: ${scaleMm}, fretted: true, lines: ${lines}, pattern: ${fretting}}
action: {nut: ${nut.toFixed(3)}, octave: ${octave.toFixed(3)}, finger: ${finger}}
strings:
${strings.map(({midi, grams, gaugeMm, gpa}) => `  - {note: ${letters[midi % 12]}${Math.floor(midi / 12) - 1}, gauge: ${gaugeMm.toFixed(3)}, mass: ${grams.toFixed(4)} g/m, stiffness: ${gpa.toFixed(3)} GPa}`).join('\n')}
`)
      const ratios = patterns[fretting]!.slice(0, lines).map((n) => 2 ** (n / 12))
      for (const [i, {midi, grams, gaugeMm, gpa}] of strings.entries()) {
        const b = Number(nut.toFixed(3))
        const one: Case = {
          x0: scaleMm,
          b,
          c: 2 * (Number(octave.toFixed(3)) - b),
          d: finger,
          t0: Number(grams.toFixed(4)) * 1e-3 * ((2 * scaleMm * 440 * 2 ** ((midi - 69) / 12)) / 1000) ** 2,
          rho: Number(gaugeMm.toFixed(3)) / 2,
          e: Number(gpa.toFixed(3)) * 1000,
        }
        const sum = (dS: number, dN: number) => ratios.reduce((s, g) => s + deviation(one, g, dS, dN) ** 2, 0)
        const alone = lowest((dS) => sum(dS, 0), -10, 100)
        const nutOf = (dS: number) => lowest((dN) => sum(dS, dN), -10, 10)
        const dS = lowest((at) => sum(at, nutOf(at)), -10, 100)
        const setback = plan.bridge!.setbacks![i]!
        expect(plan.strings![i]!.tensionN).toBeCloseTo(one.t0, 6)
        expect(setback.setbackMm).toBeCloseTo(alone, 4)
        expect(setback.rmsCents).toBeCloseTo(Math.sqrt(sum(alone, 0) / ratios.length), 5)
        // A search in a search is the coarser of the two, and its valley is flat: the plan may be better, never worse.
        expect(Math.abs(setback.together.saddleMm - dS)).toBeLessThan(0.03)
        expect(Math.abs(setback.together.nutMm - nutOf(dS))).toBeLessThan(0.01)
        const searched = Math.sqrt(sum(dS, nutOf(dS)) / ratios.length)
        expect(setback.together.rmsCents).toBeLessThan(searched + 1e-6)
        expect(setback.together.rmsCents).toBeCloseTo(searched, 2)
        for (const [k, g] of ratios.entries()) {
          expect(plan.intonation![i]!.plainCents[k]).toBeCloseTo(deviation(one, g, 0, 0), 6)
          expect(plan.intonation![i]!.compensatedCents[k]).toBeCloseTo(
            deviation(one, g, setback.setbackMm, 0),
            6,
          )
        }
      }
    }),
    {numRuns: 30},
  )
})
