import {expect, test} from 'vitest'
import {inharmonicityOf} from '../../../plugins/plan/strings/string-facts.ts'
import {plainKgM, stringTensionN} from '../../../plugins/plan/strings/wire.ts'

const hz = 329.6275569
const diameterMm = 0.254
const kgM = plainKgM(diameterMm, 7850)
const tensionN = stringTensionN(kgM, 650, hz)
const steel = {stiffnessMpa: 203_400, sectionMm: diameterMm}
const b = inharmonicityOf(steel, tensionN, 650)
const sharpCents = (n: number) => 600 * Math.log2(1 + b * n ** 2)

// H. Fletcher, J. Acoust. Soc. Am. 36, 203 (1964), worked out for steel of 0.010 in at E4 on 650 mm.
test('Fletcher: B of a thin steel string', () => {
  expect(tensionN).toBeCloseTo(73.04, 2)
  expect(b * 1e5).toBeCloseTo(1.3291, 3)
})

// R. W. Young, J. Acoust. Soc. Am. 24, 267 (1952): cents = 3.4e13·n²·d²/(f0²·l⁴), d and l in cm, with E/ρ of 25.5e10 (cm/s)².
test('Young: the same within what his E/ρ differs', () => {
  for (const n of [1, 2, 5, 10]) {
    const young = (3.4e13 * n ** 2 * (diameterMm / 10) ** 2) / (hz ** 2 * 65 ** 4)
    const his = 25.5e10 / ((203.4e9 * 10) / 7.85)
    expect(Math.abs(young / his / sharpCents(n) - 1)).toBeLessThan(0.005)
  }
})

// R. P. Feynman, letter of 1961, Physics Today 62(12), 46 (2009): the true first partial is f·(1 + (π/2)·E·A²·μ·f²/T²).
test('Feynman: the first partial is raised by B/2', () => {
  const areaM2 = (Math.PI / 4) * (diameterMm / 1000) ** 2
  const raised = ((Math.PI / 2) * 203.4e9 * areaM2 ** 2 * kgM * hz ** 2) / tensionN ** 2
  expect(raised / (b / 2)).toBeCloseTo(1, 6)
})

// Anderson and Beausoleil (2024) write stiffness as B = √(πρ⁴E/(4TL²)), and 3.11e-3 for 5 GPa, 60 N, ρ 0.5 mm, 650 mm: π²·B² is Fletcher's.
test('Anderson and Beausoleil: π²B² is Fletcher’s B', () => {
  const nylon = inharmonicityOf({stiffnessMpa: 5000, sectionMm: 1}, 60, 650)
  expect(Math.sqrt(nylon) / Math.PI).toBeCloseTo(3.11e-3, 5)
})
