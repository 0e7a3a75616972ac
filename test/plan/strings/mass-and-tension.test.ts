import {expect, test} from 'vitest'
import {stretchMm} from '../../../plugins/plan/strings/string-facts.ts'
import {massOfPullKgM, plainKgM, roundWoundKgM, stringTensionN} from '../../../plugins/plan/strings/wire.ts'

const within = (value: number, wanted: number, part: number) =>
  expect(Math.abs(value / wanted - 1), `${value} for ${wanted}`).toBeLessThanOrEqual(part)

// OpenStax University Physics vol. 1, 16.3: speed of waves √(T/μ), which is 2Lf on a string.
test.each([
  {kgM: 3.09e-4, tensionN: 56.4, speed: 427.23},
  {kgM: 0.005, tensionN: 90, speed: 134.16},
  {kgM: 7.2e-3, tensionN: 160, speed: 149.07},
])('a string of $kgM kg/m carries waves at $speed m/s under $tensionN N', ({kgM, tensionN, speed}) => {
  within(stringTensionN(kgM, 1000, speed / 2), tensionN, 1e-4)
  within(massOfPullKgM(tensionN, 1000, speed / 2), kgM, 1e-4)
})

// OpenStax University Physics vol. 1, 16.6: 2.00 m of 0.006 kg/m under 2.00 kg sounds at 14.29 Hz, and 42.87 in thirds;
// 17.4: 2.00 m of 7.20 g/m under 160 N at 37.3 Hz; 17.5: the sixth mode of 1.50 m of 6.5 g/m at 2 kHz takes 6500 N.
test.each([
  {kgM: 0.006, lengthMm: 2000, hz: 14.29, tensionN: 2 * 9.8, part: 1e-3},
  {kgM: 0.006, lengthMm: 2000 / 3, hz: 42.87, tensionN: 2 * 9.8, part: 1e-3},
  {kgM: 7.2e-3, lengthMm: 2000, hz: 37.3, tensionN: 160, part: 2e-3},
  {kgM: 6.5e-3, lengthMm: 1500 / 6, hz: 2000, tensionN: 6500, part: 1e-9},
])('$lengthMm mm of $kgM kg/m at $hz Hz pull $tensionN N', ({kgM, lengthMm, hz, tensionN, part}) => {
  within(stringTensionN(kgM, lengthMm, hz), tensionN, part)
})

// OpenStax University Physics vol. 1, 16.3: copper of 8920 kg/m³, radius 1.20 mm, is 0.040 kg/m, and 15.75 m/s at 10 N.
test('a copper wire weighs what the textbook says', () => {
  within(plainKgM(2.4, 8920), 0.04035, 1e-3)
  expect(Math.sqrt(10 / plainKgM(2.4, 8920))).toBeCloseTo(15.742, 2)
})

// A university laboratory's sheet of steel sonometer wires, nominal gauges: up to 6 % lighter than their geometry.
test.each([
  [0.01, 0.39],
  [0.014, 0.78],
  [0.017, 1.12],
  [0.02, 1.5],
  [0.022, 1.84],
])('a steel wire of %f in weighs %f g/m within 7 %%', (inches, gramsM) => {
  within(plainKgM(inches * 25.4, 7850) * 1000, gramsM, 0.07)
})

// Worked from the geometry to five decimals: a core of 0.016 in (7850) weighs 1.01828 g/m, its wrap of 0.012 in (8860) 4.73893.
test('a wound string is its core and its turns', () => {
  expect(plainKgM(0.016 * 25.4, 7850) * 1000).toBeCloseTo(1.01828, 5)
  expect(roundWoundKgM(0.016 * 25.4, 7850, 0.012 * 25.4, 8860) * 1000).toBeCloseTo(5.75721, 5)
})

// OpenStax University Physics vol. 1, 12.3: a steel rod of 2.0 m and 3.0e-5 m² under 550 kg stretches 1.8 mm.
test('a rod stretches as the textbook says', () => {
  const sectionMm = Math.sqrt(30 / (Math.PI / 4))
  expect(stretchMm({stiffnessMpa: 2e5, sectionMm}, 550 * 9.8, 2000)).toBeCloseTo(1.797, 3)
})
