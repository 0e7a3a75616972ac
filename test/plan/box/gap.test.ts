import {expect, test} from 'vitest'
import {gapBetween, gapToRectangle, gapToSides, rectangle} from '../../../plugins/plan/box/gap.ts'
import fc from '../../support/properties.ts'

const length = fc.double({min: 1, max: 200, noNaN: true})
const place = fc.double({min: -300, max: 300, noNaN: true})

test('the gap to a rectangle is that to the nearest of its points', () => {
  fc.assert(
    fc.property(place, place, length, length, length, (stationMm, offMm, diameterMm, long, wide) => {
      const area = rectangle(0, 0, long, wide)
      const gap = gapToRectangle({stationMm, offMm, diameterMm}, area)
      const isInside = Math.abs(stationMm) <= long / 2 && Math.abs(offMm) <= wide / 2
      if (isInside) {
        expect(gap).toBeLessThanOrEqual(0)
        return
      }
      let least = Number.POSITIVE_INFINITY
      for (let part = 0; part <= 1; part += 1 / 256) {
        const [x, y] = [(part - 0.5) * long, (part - 0.5) * wide]
        for (const [atX, atY] of [
          [x, -wide / 2],
          [x, wide / 2],
          [-long / 2, y],
          [long / 2, y],
        ] as const)
          least = Math.min(least, Math.hypot(stationMm - atX, offMm - atY))
      }
      expect(Math.abs(gap - (least - diameterMm / 2))).toBeLessThan(Math.max(long, wide) / 256)
    }),
  )
})

test('a hole in the middle of a square keeps half its side from each', () => {
  expect(gapToSides({stationMm: 10, offMm: 0, diameterMm: 4}, rectangle(10, 0, 20, 20))).toBe(8)
  expect(gapToSides({stationMm: 18, offMm: 0, diameterMm: 4}, rectangle(10, 0, 20, 20))).toBe(0)
})

test('rims of two holes, apart and into each other', () => {
  const hole = (stationMm: number, diameterMm: number) => ({stationMm, offMm: 0, diameterMm})
  expect(gapBetween(hole(0, 10), hole(20, 10))).toBe(10)
  expect(gapBetween(hole(0, 10), hole(6, 10))).toBe(-4)
})
