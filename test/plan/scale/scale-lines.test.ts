import {Decimal} from 'decimal.js'
import Fraction from 'fraction.js'
import {describe, expect, test} from 'vitest'
import {centsAbove, type Line, layLines, linePattern, lineStation} from '../../../plugins/plan/scale/lines.ts'
import {planOf} from '../../support/plan-of.ts'
import fc from '../../support/properties.ts'

const Precise = Decimal.clone({precision: 40})
const scales = fc.double({min: 100, max: 2000, noNaN: true})
const chromatic = (lengthMm: number, count = 24): Line[] =>
  layLines(linePattern('chromatic', count)!, {lengthMm, units: 'mm', rulerMm: 0.5})

describe('the law of the string', () => {
  // d_n = L(1 − 2^(−n/12)): G. Byers, American Lutherie 47 (1996); decimal.js 10.6 with 40 digits.
  test('lines lie where forty digits put them, to 1e-12', () => {
    for (const lengthMm of [100, 323.85, 609.6, 615.95, 640, 650, 1066.8, 2000]) {
      for (const line of chromatic(lengthMm, 60)) {
        const exact = new Precise(lengthMm).mul(
          new Precise(1).sub(new Precise(2).pow(new Precise(-line.n).div(12))),
        )
        expect(Math.abs(exact.sub(line.fromNutMm).div(exact).toNumber())).toBeLessThan(1e-12)
      }
    }
  })

  test('the octave halves the string and the second leaves a quarter, exactly', () => {
    fc.assert(
      fc.property(scales, (lengthMm) => {
        expect(lineStation(lengthMm, 1200)).toBe(lengthMm / 2)
        expect(lineStation(lengthMm, 2400)).toBe(lengthMm * 0.75)
      }),
    )
    expect(chromatic(640)[11]!.fromNutMm).toBe(320)
  })

  test('each line an octave up lies half as far again from the bridge, and steps shrink by the twelfth root of 2', () => {
    fc.assert(
      fc.property(scales, (lengthMm) => {
        const lines = chromatic(lengthMm, 36)
        for (const {n, fromNutMm} of lines.slice(0, 24)) {
          expect(lines[n + 11]!.fromNutMm).toBeCloseTo(lengthMm / 2 + fromNutMm / 2, 9)
          const left = (lengthMm - lines[n]!.fromNutMm) / (lengthMm - fromNutMm)
          expect(left).toBeCloseTo(2 ** (-1 / 12), 12)
        }
        const sum = lines.reduce((total, line) => total + line.fromPreviousMm, 0)
        expect(sum).toBeCloseTo(lines.at(-1)!.fromNutMm, 9)
      }),
    )
  })

  // The first step divides the length by 17.817…: Byers gives "17.817"; 1/(1 − 2^(−1/12)) = 17.81715374510576755.
  test('17.817 puts the twelfth line 0.011 cents sharp, and 18 puts it 12.545 cents flat', () => {
    const byRule = (divisor: number) => (1 - (1 - 1 / divisor) ** 12) * 650
    const [exact] = [chromatic(650)[11]!.fromNutMm]
    expect(650 / chromatic(650)[0]!.fromNutMm).toBeCloseTo(17.81715374510577, 12)
    expect(byRule(17.817) / 650).toBeCloseTo(0.50000308, 8)
    expect(1200 * Math.log2((650 - exact) / (650 - byRule(17.817)))).toBeCloseTo(0.011, 3)
    // The rule of 18 (Vincenzo Galilei's 17:18): fret 12 at 0.496364 of the length.
    expect(byRule(18) / 650).toBeCloseTo(0.496364, 6)
    expect(1200 * Math.log2((650 - exact) / (650 - byRule(18)))).toBeCloseTo(-12.545, 3)
  })

  // Stråhle 1743 and Barbour's generalisation: J. M. Barbour, Amer. Math. Monthly 64 (1957); rational
  // constructions, so they owe nothing to a logarithm. Deviations in cents worked out from their formulas.
  const strahle = [0, 1.691, 2.505, 2.624, 2.221, 1.463, 0.515, -0.461, -1.303, -1.847, -1.926, -1.369, 0]
  const barbour = [0, 1.53, 2.215, 2.235, 1.762, 0.962, 0, -0.962, -1.762, -2.235, -2.215, -1.53, 0]
  test.each(strahle.map((cents, n) => [n, cents, barbour[n]!] as const))(
    'line %d is off from Stråhle by %d and from Barbour by %d cents',
    (n, fromStrahle, fromBarbour) => {
      const m = n / 12
      const lengthMm = 1000
      const speaking = n === 0 ? lengthMm : lengthMm - chromatic(lengthMm)[n - 1]!.fromNutMm
      const cents = (ratio: number) => 1200 * Math.log2((ratio * speaking) / lengthMm)
      expect(cents((24 + 10 * m) / (24 - 7 * m))).toBeCloseTo(fromStrahle, 3)
      expect(cents((2 * m + Math.SQRT2 * (1 - m)) / (m + Math.SQRT2 * (1 - m)))).toBeCloseTo(fromBarbour, 3)
    },
  )

  // Worked out by the law above in 40-digit decimals; no published full table.
  test.each([
    [
      650,
      [
        36.4817, 70.9158, 103.4173, 134.0947, 163.0502, 190.3806, 216.177, 240.5257, 263.5077, 285.1998,
        305.6745, 325,
      ],
    ],
    [
      609.6,
      [
        34.2142, 66.5081, 96.9895, 125.7602, 152.916, 178.5477, 202.7408, 225.5761, 247.1297, 267.4736,
        286.6756, 304.8,
      ],
    ],
  ])('lines of a %d mm string', (lengthMm, table) => {
    for (const [i, fromNutMm] of table.entries())
      expect(chromatic(lengthMm)[i]!.fromNutMm).toBeCloseTo(fromNutMm, 4)
  })

  // Anderson & Beausoleil, J. Acoust. Soc. Am. 156, 683 (2024): fret 1 of a 650 mm scale is about 614 mm from the saddle.
  test('the first line of 650 mm leaves about 614 mm', () => {
    expect(650 - chromatic(650)[0]!.fromNutMm).toBeCloseTo(613.518, 3)
  })
})

describe('patterns', () => {
  // Table of semitones: common practice, no source. The tonic of the Ionian at 3, that of the Aeolian at 1 and the
  // octave at 7 agree with reference works on the Appalachian dulcimer.
  const table = [2, 4, 5, 7, 9, 10, 12, 14, 16, 17, 19, 21, 22, 24]
  test('a diatonic fingerboard', () => {
    const lines = linePattern('diatonic', 14)!
    expect(lines.map((line) => line.semitones)).toEqual(table)
    expect(lines.map((line) => line.label)).toEqual(table.map((_, i) => `${i + 1}`))
  })

  // Half frets 1 1/2, 6 1/2, 8 1/2, 13 1/2 = 3, 11, 15, 23 semitones: common practice, no source.
  test('half frets are named between their neighbours', () => {
    const lines = linePattern([2, 3, 4, 5, 7, 9, 10, 11, 12], 18)!
    expect(lines.filter((line) => line.label.includes('1/2'))).toEqual([
      {label: '1 1/2', semitones: 3},
      {label: '6 1/2', semitones: 11},
      {label: '8 1/2', semitones: 15},
      {label: '13 1/2', semitones: 23},
    ])
    expect(lines.at(-1)).toEqual({label: '14', semitones: 24})
  })

  test('a line below the first fret is half a fret from the nut', () => {
    expect(linePattern([1, 2, 4, 5, 7, 9, 10, 12], 8)!.map((line) => line.label)).toEqual([
      '1/2',
      '1',
      '2',
      '3',
      '4',
      '5',
      '6',
      '7',
    ])
  })

  test('a diatonic list may go past the octave without repeating', () => {
    const labels = linePattern([2, 4, 5, 7, 9, 10, 11, 12, 14, 16], 10)!.map((line) => line.label)
    expect(labels).toEqual(['1', '2', '3', '4', '5', '6', '6 1/2', '7', '8', '9'])
  })

  test('a chromatic list is numbered by semitones', () => {
    const octave = Array.from({length: 12}, (_, i) => i + 1)
    expect(linePattern(octave, 24)).toEqual(linePattern('chromatic', 24))
  })

  test('another list is counted from the nut and repeats where it stops at the octave', () => {
    expect(linePattern([3, 5, 7, 10, 12], 7)).toEqual([
      {label: '1', semitones: 3},
      {label: '2', semitones: 5},
      {label: '3', semitones: 7},
      {label: '4', semitones: 10},
      {label: '5', semitones: 12},
      {label: '6', semitones: 15},
      {label: '7', semitones: 17},
    ])
    expect(linePattern([3, 5, 7], 7)).toHaveLength(3)
  })

  test.each([[[2, 2]], [[4, 2]], [[0, 2]], [[]]])('%j does not rise', (list) => {
    expect(linePattern(list, 4)).toBeUndefined()
  })
})

describe('temperaments', () => {
  // Five-limit ratios, exact by fraction.js 5.3; cents printed in tables of just intervals.
  const just = ['16/15', '9/8', '6/5', '5/4', '4/3', '45/32', '3/2', '8/5', '5/3', '9/5', '15/8', '2/1']
  const cents = [
    111.731, 203.91, 315.641, 386.314, 498.045, 590.224, 701.955, 813.686, 884.359, 1017.596, 1088.269, 1200,
  ]
  const {plan} = planOf(`
title: Just
units: mm
scale: {length: 600, lines: 24, temperament: [${just.join(', ')}]}`)
  test.each(just.map((ratio, i) => [i + 1, ratio, cents[i]!] as const))(
    'line %d of a just build is %s',
    (n, ratio, printed) => {
      const line = plan.scale!.lines![n - 1]!
      expect(line.cents).toBeCloseTo(printed, 3)
      const exact = new Fraction(1).sub(new Fraction(1).div(ratio)).mul(600)
      expect(line.fromNutMm).toBeCloseTo(exact.valueOf(), 11)
      const octaveUp = exact.add(600).div(2)
      expect(plan.scale!.lines![n + 11]!.fromNutMm).toBeCloseTo(octaveUp.valueOf(), 11)
    },
  )

  test('twelve equal steps given as cents are the equal temperament', () => {
    const steps = Array.from({length: 12}, (_, i) => 100 * (i + 1))
    fc.assert(
      fc.property(fc.integer({min: 0, max: 120}), (halves) => {
        expect(centsAbove(halves / 2, steps)).toBe(centsAbove(halves / 2))
      }),
    )
  })
})

describe('marks', () => {
  test('a mark lies on the ruler, within half a mark, and is sharp where it lies nearer the bridge', () => {
    const rulers = fc.constantFrom(25.4 / 16, 25.4 / 32, 25.4 / 64, 0.5, 1)
    fc.assert(
      fc.property(scales, rulers, (lengthMm, rulerMm) => {
        for (const line of layLines(linePattern('chromatic', 24)!, {lengthMm, units: 'in', rulerMm})) {
          expect(Math.abs(line.markErrorMm)).toBeLessThanOrEqual(rulerMm / 2 + 1e-9)
          expect(line.markMm / rulerMm).toBeCloseTo(Math.round(line.markMm / rulerMm), 6)
          expect(line.markErrorMm).toBeCloseTo(line.markMm - line.fromNutMm, 12)
          expect(Math.sign(line.markErrorCents)).toBe(Math.sign(line.markErrorMm) + 0)
          // Δcents = 1200/ln 2 · Δf/f for small errors; 1731.234 per unit.
          const small = (1731.234 * line.markErrorMm) / (lengthMm - line.fromNutMm)
          expect(Math.abs(line.markErrorCents - small)).toBeLessThan(Math.abs(small) * 0.05 + 1e-6)
        }
      }),
    )
  })

  test('a coarse ruler never marks a line on the bridge', () => {
    for (const line of layLines(linePattern('chromatic', 60)!, {lengthMm: 100, units: 'mm', rulerMm: 25})) {
      expect(line.markMm).toBeLessThan(100)
      expect(Number.isFinite(line.markErrorCents)).toBe(true)
    }
  })
})

describe('across the neck', () => {
  const text = (more: string) => `
title: Two strings
units: mm
scale: {length: 640, lines: 12}
neck: {length: 1000, width: {nut: 40, tail: 50}}
head: {length: 150}
spacing: {nut: 30, bridge: 40}
${more}`

  test('the neck widens straight from nut to tail, and strings spread straight from nut to bridge', () => {
    const {plan} = planOf(text('strings: [D3 0.8 mm w, D4 0.3 mm]'))
    const octave = plan.scale!.lines![11]!
    expect(octave.fromNutMm).toBe(320)
    expect(octave.widthMm).toBeCloseTo(40 + (10 * 320) / 850, 12)
    expect(octave.stringOffMm).toEqual([-17.5, 17.5])
    expect(plan.scale!.nutOffMm).toEqual([-15, 15])
    expect(plan.scale!.bridgeOffMm).toEqual([-20, 20])
  })

  test('equal gaps leave the same wood between strings of any gauge, and first and last where they are', () => {
    const gauge = fc.integer({min: 10, max: 300}).map((hundredths) => hundredths / 100)
    fc.assert(
      fc.property(fc.array(gauge, {minLength: 2, maxLength: 6}), (gauges) => {
        const strings = gauges.map((mm) => `{gauge: ${mm} mm}`).join(', ')
        const {plan} = planOf(text(`strings: [${strings}]`).replace('bridge: 40', 'bridge: 40, slots: gaps'))
        const off = plan.scale!.nutOffMm!
        const gaps = off.slice(1).map((mm, i) => mm - off[i]! - (gauges[i]! + gauges[i + 1]!) / 2)
        for (const gap of gaps) expect(gap).toBeCloseTo(gaps[0]!, 9)
        expect([off[0], off.at(-1)]).toEqual([-15, 15])
      }),
      {numRuns: 30},
    )
  })

  test('equal gaps need every gauge', () => {
    const {plan} = planOf(text('strings: [D3 0.8 mm w, D4]').replace('bridge: 40', 'bridge: 40, slots: gaps'))
    expect(plan.scale!.nutOffMm).toBeUndefined()
    expect(plan.scale!.lines![0]!.stringOffMm).toBeUndefined()
  })

  test('one string runs along the centre line', () => {
    const {plan} = planOf('title: One\nscale: 24\nstrings: [D3 .017]\nneck: {width: 1 1/2}')
    expect(plan.scale!.lines!.map((line) => line.stringOffMm)).toEqual(plan.scale!.lines!.map(() => [0]))
  })

  test('lines over the box say so', () => {
    const {plan} = planOf('title: Box\nscale: 24 1/4\nbox: {length: 10 1/8, width: 7, depth: 2, at: 16}')
    const over = plan.scale!.lines!.filter((line) => line.overBox).map((line) => line.label)
    // 16 in is 406.4 mm; line 18 of 615.95 mm lies at 398.2 mm, line 19 at 410.4 mm.
    expect(over).toEqual(['19'])
  })
})

describe('dots', () => {
  const dots = (scale: string) =>
    planOf(`title: Dots\nunits: mm\nscale: {length: 640, ${scale}}`).plan.scale!.dots

  test('on the line of a fretless neck, midway before the fret of a fretted one; two at the octaves', () => {
    expect(dots('dots: [7, 12]')).toEqual([
      {label: '7', stationMm: lineStation(640, 700), count: 1, side: 'bass'},
      {label: '12', stationMm: 320, count: 2, side: 'bass'},
    ])
    const [, octave] = dots('fretted: true, dots: [7, 12]')!
    expect(octave!.stationMm).toBeCloseTo((lineStation(640, 1100) + 320) / 2, 12)
  })

  test('before a half fret it is midway from the fret before', () => {
    const [half] = dots('fretted: true, pattern: [2, 4, 5, 7, 9, 10, 11, 12], dots: [6 1/2]')!
    expect(half!.label).toBe('6 1/2')
    expect(half!.stationMm).toBeCloseTo((lineStation(640, 1000) + lineStation(640, 1100)) / 2, 12)
  })

  test('on a diatonic build the octave is 7', () => {
    expect(dots('pattern: diatonic, dots: [3, 7, 14]')!.map((dot) => dot.count)).toEqual([1, 2, 2])
  })
})

test('a build without a length has no lines, and one with a slip in its pattern neither', () => {
  expect(planOf('title: Open\nscale: {fretted: true}').plan.scale).toEqual({fretted: true})
  expect(planOf('title: Slip\nscale: {length: 24, pattern: [2, 1]}').plan.scale!.lines).toBeUndefined()
  expect(planOf('title: None\nscale: {length: 24, lines: 0}').plan.scale!.lines).toEqual([])
})
