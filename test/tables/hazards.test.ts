import {describe, expect, test} from 'vitest'
import {
  dustLimits,
  type HazardRow,
  hazards,
  hearingCareDba,
  noiseLimits,
} from '../../plugins/tables/hazards.ts'
import {woodHazards} from '../../plugins/tables/wood-hazards.ts'
import {woods} from '../../plugins/tables/woods.ts'

const rows: [string, HazardRow][] = Object.entries(hazards)

describe('hazards', () => {
  test.each(rows)('%s has an action, a published source or says common practice, and a step', (_, row) => {
    expect(row.hazard).toMatch(/\.$/)
    expect(row.does).toMatch(/\.$/)
    expect(row.source).toMatch(
      /CFR|Code Regs|OSHA|NIOSH|HSE|EPA|IARC|ILO|WHO|CITES|Journal|common practice, no source/,
    )
    expect(row.steps.length).toBeGreaterThan(0)
  })

  test('what kills stands before what stings', () => {
    const order = rows.map(([id]) => id)
    expect(order[0]).toBe('mains-power')
    expect(order.indexOf('saw-kickback')).toBeLessThan(order.indexOf('drill-clamp'))
    expect(order.indexOf('oil-rags')).toBeLessThan(order.indexOf('fret-ends'))
  })
})

describe('limits', () => {
  // 29 CFR 1910.95, Table G-16.
  test('noise by value', () => {
    expect(noiseLimits.map(({dBA, permittedH}) => [dBA, permittedH])).toEqual([
      [90, 8],
      [92, 6],
      [95, 4],
      [97, 3],
      [100, 2],
      [102, 1.5],
      [105, 1],
      [110, 0.5],
      [115, 0.25],
    ])
    // 29 CFR 1910.95(c)(1).
    expect(hearingCareDba).toBe(85)
  })

  // 29 CFR 1910.95, Appendix A: T = 8 / 2^((L − 90)/5); the table rounds to quarters and halves.
  test.each(noiseLimits)('$dBA dBA for $permittedH h follows the halving by 5 dB', ({dBA, permittedH}) => {
    expect(Math.abs(permittedH - 8 / 2 ** ((dBA - 90) / 5))).toBeLessThan(0.1 + 0.05 * permittedH)
  })

  // NIOSH 98-126, Table 1-1, from memory: 85 dBA for 8 hours, halved by each 3 dB; 100 dBA for 15 minutes.
  test.each(noiseLimits)(
    '$dBA dBA for $recommendedMin min follows the halving by 3 dB',
    ({dBA, recommendedMin}) => {
      const minutes = 480 / 2 ** ((dBA - 85) / 3)
      expect(recommendedMin).toBeLessThanOrEqual(minutes)
      expect(recommendedMin).toBeGreaterThan(minutes - 1)
      if (dBA === 100) expect(recommendedMin).toBe(15)
    },
  )

  // OSHA, Wood Dust (evaluating exposure); NIOSH Pocket Guide npgd0667.
  test('dust by value', () => {
    expect(dustLimits.map(({mgM3}) => mgM3)).toEqual([15, 5, 1, 0.5])
    expect(dustLimits.at(-1)?.what).toBe('western redcedar')
  })
})

describe('woods that harm', () => {
  const table: Readonly<Record<string, unknown>> = woods

  test.each(Object.keys(woodHazards))('%s is a wood of the table', (name) => {
    expect(table[name]).toBeDefined()
  })

  // ACGIH groups by way of OSHA, Wood Dust: oak and beech A1; birch, mahogany, teak and walnut A2.
  test('groups by value', () => {
    const of = (group: string) =>
      Object.keys(woodHazards).filter((name) => woodHazards[name]?.cancer === group)
    expect(of('known').every((name) => /oak|beech/.test(name))).toBe(true)
    expect(of('suspected').every((name) => /birch|mahogany|teak|walnut/.test(name))).toBe(true)
    expect(of('known')).toHaveLength(5)
    expect(of('suspected')).toHaveLength(7)
  })
})
