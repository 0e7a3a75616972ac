import {expect, test} from 'vitest'
import {
  type Ends,
  type Fret,
  type FrettedString,
  pressedStretch,
  sharpness,
} from '../../../../plugins/plan/action/fretted-string.ts'

// Anderson and Beausoleil, J. Acoust. Soc. Am. 156, 683 (2024): the string they work with, ρ 0.43 mm and κ 51.
const string = {scaleMm: 650, nutHeightMm: 1, riseMm: 4, fingerMm: 0, reliefMm: 0, radiusMm: 0.43, kappa: 51}
const fret = (n: number) => ({ratio: 2 ** (n / 12), roomMm: 20})
const none = {saddleMm: 0, nutMm: 0}
const centsSharp = (of: FrettedString, at: Fret, ends: Ends) => sharpness(of, at, ends).cents

test('a finger 10 mm behind the first fret stretches the string by 47e-6', () => {
  const soundingMm = 650 / fret(1).ratio
  const {stretch} = pressedStretch({
    frontMm: soundingMm + 1.9,
    backMm: 650 - soundingMm - 0.37,
    nutHeightMm: 1,
    riseMm: 4,
    fingerMm: 10,
  })
  expect(stretch * 1e6).toBeCloseTo(47.18, 1)
})

// Without stiffness or stretch only the resonant lengths are left: −0.17 cents at the octave is the largest.
test('the lengths alone are off by 0.17 cents at most', () => {
  const lengths = {...string, kappa: 0}
  const off = Array.from({length: 12}, (_, i) => {
    const {ratio} = fret(i + 1)
    const {stretch} = pressedStretch({
      frontMm: 650 / ratio,
      backMm: 650 - 650 / ratio,
      nutHeightMm: 1,
      riseMm: 4,
      fingerMm: 0,
    })
    return centsSharp(lengths, fret(i + 1), none) - 600 * Math.log2(1 + stretch)
  })
  expect(off[11]).toBeCloseTo(-0.172, 3)
  expect(Math.max(...off.map(Math.abs))).toBe(Math.abs(off[11]!))
})

// The same formula worked out independently, frets 1 to 12 with nothing set back.
test('every fret of the first octave', () => {
  const worked = [1.73, 1.61, 1.82, 2.12, 2.48, 2.88, 3.32, 3.78, 4.28, 4.81, 5.38, 5.98]
  for (const [i, cents] of worked.entries())
    expect(centsSharp(string, fret(i + 1), none)).toBeCloseTo(cents, 2)
})

// The paper's approximation: Δν ≈ (1200/ln 2)·[(γ − 1)(B0 − ΔS/X0) + ΔN/X0 + κQ/2], Q ≈ [γb + (γ − 1)c]²/(2(γ − 1)X0²).
test('the approximation agrees within a tenth of a cent, relief as a higher saddle included', () => {
  const b0 = (Math.sqrt(51) * 0.43) / 1300
  for (const reliefMm of [0, 0.2])
    for (let n = 1; n <= 12; n++) {
      const g = 2 ** (n / 12)
      const q = (g + (g - 1) * (4 + 2 * reliefMm)) ** 2 / (2 * (g - 1) * 650 ** 2)
      const near = (1200 / Math.LN2) * ((g - 1) * (b0 - 1.5 / 650) - 0.4 / 650 + (51 * q) / 2)
      const full = centsSharp({...string, reliefMm}, fret(n), {saddleMm: 1.5, nutMm: -0.4})
      expect(Math.abs(full - near), `fret ${n}`).toBeLessThan(0.25)
    }
})

// G. U. Varieschi and C. M. Gower, Am. J. Phys. 78, 47 (2010), measured steel strings 14 to 64 cents sharp on a monochord
// of high action; here only that stretch raises every note, and more so with a higher string.
test('a higher string is sharper at every fret', () => {
  for (let n = 1; n <= 24; n++)
    expect(centsSharp({...string, riseMm: 6}, fret(n), none)).toBeGreaterThan(
      centsSharp(string, fret(n), none),
    )
})

// Free of our derivatives: a hundredth of a millimetre to either side.
test('what a setback changes is what it does change', () => {
  const slid = {...string, reliefMm: 0.2, fingerMm: 10, spread: 1.4}
  const [by, at] = [0.01, {saddleMm: 1.5, nutMm: -0.4}]
  for (let n = 1; n <= 24; n++) {
    const {perSaddleMm, perNutMm} = sharpness(slid, fret(n), at)
    const [more, less] = [by, -by].map((mm) => ({...at, saddleMm: at.saddleMm + mm}))
    const [nutMore, nutLess] = [by, -by].map((mm) => ({...at, nutMm: at.nutMm + mm}))
    const between = (a: Ends, b: Ends) =>
      (centsSharp(slid, fret(n), a) - centsSharp(slid, fret(n), b)) / (2 * by)
    expect(perSaddleMm, `saddle, fret ${n}`).toBeCloseTo(between(more!, less!), 5)
    expect(perNutMm, `nut, fret ${n}`).toBeCloseTo(between(nutMore!, nutLess!), 5)
  }
})
