import {describe, expect, test} from 'vitest'
import {heldPlate} from '../../../plugins/plan/box/held-plate.ts'
import {loosePlate, type Plate, type PlateLoad} from '../../../plugins/plan/box/plate.ts'
import {type GridPlate, gridPlate} from '../../support/plate-grid.ts'
import fc from '../../support/properties.ts'

import '../../support/slow.ts'

/** An isotropic plate of stiffness D = 1, ν = 0.3, side 100 across and so many times as long. */
const even = (times: number): Plate => ({
  lengthMm: 100 * times,
  widthMm: 100,
  alongNmm: 1,
  acrossNmm: 1,
  twistNmm: 1,
  sharedNmm: 0.3,
})
const inMiddle = (times: number, foot = 1e-3, across = foot): PlateLoad => ({
  atMm: 50 * times,
  footMm: foot,
  acrossMm: across,
  pushN: 1,
  momentNmm: 0,
})

// Timoshenko and Woinowsky-Krieger, Theory of Plates and Shells, 2nd ed., Tables 23 and 37, from memory: a load in the
// middle of a plate loose on its edges and of one held fast; w = α·P·a²/D with a the shorter side, ν 0.3; the moment
// in the middle of the longer edge of the held one.
describe('plates pressed in their middle sink by the published coefficients', () => {
  test.each([
    [1, 0.0116, 0.0056, 0.1257],
    [1.2, 0.01353, 0.00647, 0.149],
    [1.4, 0.01484, 0.00691, 0.1604],
    [1.6, 0.0157, 0.00712, 0.1651],
    [1.8, 0.0162, 0.0072, 0.1667],
    [2, 0.01651, 0.00722, 0.1674],
  ])('%f times as long as wide', (times, loose, held, edge) => {
    expect(loosePlate(even(times), inMiddle(times)).sinkMm / 1e4 / loose).toBeCloseTo(1, 2)
    const fast = heldPlate(even(times), inMiddle(times))
    expect(Math.abs(fast.sinkMm / 1e4 / held - 1)).toBeLessThan(0.02)
    // A point's moment wants many more shapes than a foot's.
    expect(Math.abs(fast.momentAcrossN / edge - 1)).toBeLessThan(0.17)
  })

  // The same book, Table 20 (square, ν 0.3), from memory: M = β·P under a load spread over u along and v across.
  test.each([
    [0.1, 0.1, 0.284],
    [0.2, 0.2, 0.214],
    [0.5, 0.1, 0.15],
    [1, 0.1, 0.088],
    [0.2, 0.1, 0.232],
  ])('spread over %f by %f of a square, it is bent by %f of the load along', (u, v, published) => {
    const {momentAlongN} = loosePlate(even(1), inMiddle(1, 100 * u, 100 * v))
    expect(Math.abs(momentAlongN / published - 1)).toBeLessThan(0.02)
  })
})

const spruceLike: Omit<GridPlate, 'isHeld' | 'foot' | 'push'> = {
  a: 230,
  b: 170,
  dx: 30_000,
  dy: 2500,
  h: 5200,
}
const foot = {at: 165, along: 16, across: 60}
const asPlate = ({a, b, dx, dy, h}: typeof spruceLike): Plate => ({
  lengthMm: a,
  widthMm: b,
  alongNmm: dx,
  acrossNmm: dy,
  twistNmm: h,
  sharedNmm: 0.4 * Math.min(dx, dy),
})
const asLoad = (pushN: number, momentNmm: number): PlateLoad => ({
  atMm: foot.at,
  footMm: foot.along,
  acrossMm: foot.across,
  pushN,
  momentNmm,
})

describe('differences on a grid, solved by a general library, sink alike', () => {
  test.each([
    ['loose', false, spruceLike],
    ['held', true, spruceLike],
    ['loose, the grain across', false, {...spruceLike, dx: 2500, dy: 30_000}],
    ['held, the grain across', true, {...spruceLike, dx: 2500, dy: 30_000}],
    ['loose, alike both ways', false, {...spruceLike, dx: 20_000, dy: 20_000, h: 20_000}],
    ['held, alike both ways', true, {...spruceLike, dx: 20_000, dy: 20_000, h: 20_000}],
  ])('%s', (_, isHeld, plate) => {
    const press = isHeld ? heldPlate : loosePlate
    const pushed = gridPlate({...plate, isHeld, foot, push: 50}, 46, 17)
    expect(Math.abs(press(asPlate(plate), asLoad(50, 0)).sinkMm / pushed.sinkMm - 1)).toBeLessThan(0.02)
    const longer = {...foot, along: 32}
    const tipped = gridPlate({...plate, isHeld, foot: longer, push: 0, moment: -3000}, 46, 17)
    const leaning = press(asPlate(plate), {...asLoad(0, -3000), footMm: longer.along})
    expect(Math.abs(leaning.slope / tipped.slope - 1)).toBeLessThan(0.05)
  })
})

// Castigliano's and Maxwell's laws: what a push leans, a moment sinks; the work of a load is never negative.
test('a push leans a plate as much as a moment of the same number sinks it, and a thicker plate less', () => {
  const cases = fc.record({
    times: fc.double({min: 0.5, max: 3, noNaN: true}),
    at: fc.double({min: 0.15, max: 0.85, noNaN: true}),
    across: fc.double({min: 0.02, max: 1, noNaN: true}),
    ratio: fc.double({min: 0.05, max: 1, noNaN: true}),
  })
  fc.assert(
    fc.property(cases, ({times, at, across, ratio}) => {
      const plate = {...even(times), acrossNmm: ratio, twistNmm: Math.sqrt(ratio)}
      const on = {atMm: 100 * times * at, footMm: 5, acrossMm: 100 * across}
      const [loose, held] = [loosePlate, heldPlate].map((press) => {
        const pushed = press(plate, {...on, pushN: 1, momentNmm: 0})
        const tipped = press(plate, {...on, pushN: 0, momentNmm: 1})
        expect(pushed.slope).toBeCloseTo(tipped.sinkMm, 6)
        expect(pushed.sinkMm).toBeGreaterThan(0)
        expect(tipped.slope).toBeGreaterThan(0)
        return pushed.sinkMm
      })
      expect(held!).toBeLessThan(loose!)
    }),
  )
})
