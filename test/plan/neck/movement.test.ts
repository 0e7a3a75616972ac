import {describe, expect, test} from 'vitest'
import {equilibriumMoisture} from '../../../plugins/plan/neck/movement.ts'
import {changed} from '../../support/changed.ts'
import {planOf} from '../../support/plan-of.ts'
import {soundNecks} from '../../support/sound-necks.ts'

// Wood Handbook, FPL-GTR-282, Table 4-2 as printed for 70 °F (21.1 °C): 40 % gives 7.7, 65 % gives 12.0; the other
// values by its Eq. 4-5.
test.each([
  [40, 7.7],
  [65, 12.0],
  [30, 6.2],
  [50, 9.2],
  [60, 11.0],
  [80, 16.0],
])('air of %d %% brings wood to %d %%', (humidity, moisture) => {
  expect(Math.abs(equilibriumMoisture(humidity, 21.1) - moisture)).toBeLessThanOrEqual(0.05)
})

test('moisture rises with humidity, from nothing', () => {
  expect(equilibriumMoisture(0, 20)).toBe(0)
  for (let h = 1; h <= 100; h++)
    expect(equilibriumMoisture(h, 20)).toBeGreaterThan(equilibriumMoisture(h - 1, 20))
})

describe('how the neck moves across', () => {
  const width = (changes: Record<string, string>) =>
    planOf(changed(soundNecks.plain, changes)).plan.neck!.movement!

  // Wood Handbook Table 13-5, ΔD = D·C·ΔM: a sugar maple blank 63.5 mm wide from 8 to 11 %: 0.672 mm flat-sawn,
  // 0.314 mm quarter-sawn.
  test('sugar maple by its coefficients', () => {
    const {perPercent} = width({'neck.width': '63.5 mm', 'neck.wood': 'sugar maple'})
    expect(3 * perPercent.flatMm).toBeCloseTo(0.672, 3)
    expect(3 * perPercent.quarterMm).toBeCloseTo(0.314, 3)
  })

  // Published worked example: red alder, 8 in, 6 points, coefficient .0026 as rounded there: 0.1248 in.
  test('red alder as in a worked example', () => {
    const {perPercent} = width({'neck.width': '7.87 in', 'neck.wood': 'red alder'})
    expect(Math.abs((6 * perPercent.flatMm * 8) / 7.87 / 25.4 - 0.1248)).toBeLessThan(0.002)
  })

  test('between the driest and the dampest air', () => {
    const {season, perPercent} = width({humidity: '[40, 65]'})
    expect(season!.fromPercent).toBeCloseTo(7.7, 0)
    expect(season!.toPercent).toBeCloseTo(12, 0)
    expect(season!.flatMm).toBeCloseTo(perPercent.flatMm * (season!.toPercent - season!.fromPercent), 9)
  })

  test('at a glue line by the difference of the two woods', () => {
    const {perPercent, widthMm} = planOf(soundNecks.laminated).plan.neck!.movement!
    // Printed in Table 13-5: cherry .00248, white ash and walnut .00274.
    expect(perPercent.glueLineMm).toBeCloseTo(widthMm * (0.00274 - 0.00248), 9)
  })
})
