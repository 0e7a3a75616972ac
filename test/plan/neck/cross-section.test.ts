import {describe, expect, test} from 'vitest'
import {
  type CrossSectionLayer,
  crossSection,
  type Outline,
} from '../../../plugins/plan/neck-shape/cross-section.ts'
import {layerWood} from '../../../plugins/plan/neck-shape/layers.ts'
import fc from '../../support/properties.ts'
import {polygonSection} from './polygon-section.ts'

const stack = (...layers: [thicknessMm: number, eMpa: number][]): CrossSectionLayer[] => {
  let fromFaceMm = 0
  return layers.map(([thicknessMm, eMpa]) => {
    const layer = {fromFaceMm, thicknessMm, eMpa, densityKgM3: 600}
    fromFaceMm += thicknessMm
    return layer
  })
}
const square = (widthMm: number, heightMm: number): Outline => ({widthMm, heightMm, roundMm: 0})

// Transformed-section method, Gere & Goodno, Mechanics of Materials, ch. 6; figures by hand from it.
describe('laminated sections by hand', () => {
  test('maple, walnut, maple stacked', () => {
    const {neutralAxisMm, eiNmm2} = crossSection(
      square(38, 19.05),
      stack([6.35, 12_600], [6.35, 11_600], [6.35, 12_600]),
    )
    expect(neutralAxisMm).toBeCloseTo(9.525, 9)
    expect(Math.abs(eiNmm2! / 2.750296e8 - 1)).toBeLessThan(1e-6)
  })

  test('poplar under maple', () => {
    const {neutralAxisMm, eiNmm2} = crossSection(square(40, 19), stack([7, 12_600], [12, 10_900]))
    expect(19 - neutralAxisMm!).toBeCloseTo(9.82603, 5)
    expect(Math.abs(eiNmm2! / 2.673589e8 - 1)).toBeLessThan(1e-6)
  })

  test('maple, walnut and maple strips side by side', () => {
    const word = (value: string) => ({
      value,
      text: value,
      place: {line: 1, column: 1, endLine: 1, endColumn: 1},
    })
    const {eMpa} = layerWood({woods: ['sugar maple', 'black walnut', 'sugar maple'].map(word)})
    const {eiNmm2, neutralAxisMm} = crossSection(square(38.1, 19.05), stack([19.05, eMpa!]))
    expect(Math.abs(eiNmm2! / 2.692497e8 - 1)).toBeLessThan(1e-6)
    expect(neutralAxisMm).toBeCloseTo(9.525, 9)
  })

  test('a solid stick', () => {
    const {eiNmm2, areaMm2, massPerLengthKgM} = crossSection(square(38.1, 19.05), stack([19.05, 1]))
    expect(eiNmm2).toBeCloseTo(21_949.7, 1)
    expect(areaMm2).toBeCloseTo(38.1 * 19.05, 9)
    expect(massPerLengthKgM).toBeCloseTo(38.1 * 19.05 * 600e-6, 9)
  })
})

// Quarter-circular spandrel: area (1 − π/4)r², centroid (10 − 3π)r/(3(4 − π)) from its straight edges, own moment
// 0.0075451 r⁴. Gere & Goodno, App. D, from memory; the first two re-derived by integration.
test('two rounded corners take away two spandrels', () => {
  const [b, h, r] = [38, 20, 8]
  const area = 0.2146018366 * r ** 2
  const depth = h - 0.2233679 * r
  const whole = {area: b * h, first: (b * h * h) / 2, second: (b * h ** 3) / 3}
  const left = {
    area: whole.area - 2 * area,
    first: whole.first - 2 * area * depth,
    second: whole.second - 2 * (0.0075451 * r ** 4 + area * depth ** 2),
  }
  const {areaMm2, neutralAxisMm, eiNmm2} = crossSection({widthMm: b, heightMm: h, roundMm: r}, stack([h, 1]))
  expect(areaMm2).toBeCloseTo(left.area, 6)
  expect(neutralAxisMm).toBeCloseTo(left.first / left.area, 5)
  expect(Math.abs(eiNmm2! / (left.second - left.first ** 2 / left.area) - 1)).toBeLessThan(1e-6)
})

test('a polygon of many corners, integrated along its edges, gives the same', () => {
  const layers = fc.array(
    fc.tuple(fc.double({min: 0.5, max: 12, noNaN: true}), fc.integer({min: 3000, max: 22_000})),
    {
      minLength: 1,
      maxLength: 5,
    },
  )
  fc.assert(
    fc.property(
      layers,
      fc.double({min: 15, max: 80, noNaN: true}),
      fc.double({min: 0, max: 1, noNaN: true}),
      fc.option(fc.double({min: 100, max: 800, noNaN: true}), {nil: undefined}),
      (made, widthMm, part, faceRadiusMm) => {
        const stacked = stack(...made)
        const heightMm = made.reduce((sum, [mm]) => sum + mm, 0)
        const crownMm = faceRadiusMm ? faceRadiusMm - Math.sqrt(faceRadiusMm ** 2 - widthMm ** 2 / 4) : 0
        const roundMm = part * Math.min(widthMm / 2, Math.max(heightMm - crownMm, 0))
        const outline = {widthMm, heightMm, roundMm, ...(faceRadiusMm && {faceRadiusMm})}
        fc.pre(heightMm > crownMm)
        const own = crossSection(outline, stacked)
        const other = polygonSection(outline, stacked)
        expect(Math.abs(own.areaMm2 / other.areaMm2 - 1)).toBeLessThan(2e-5)
        expect(Math.abs(own.neutralAxisMm! / other.neutralAxisMm - 1)).toBeLessThan(2e-5)
        expect(Math.abs(own.eiNmm2! / other.eiNmm2 - 1)).toBeLessThan(2e-4)
      },
    ),
    {numRuns: 150},
  )
})

test('layers of unknown wood leave stiffness and axis open, and one alone only its stiffness', () => {
  const bare = {fromFaceMm: 0, thicknessMm: 10}
  expect(crossSection(square(30, 10), [bare])).toEqual({areaMm2: 300, neutralAxisMm: 5})
  expect(crossSection(square(30, 20), [bare, {...bare, fromFaceMm: 10, eMpa: 9000}])).toEqual({areaMm2: 600})
})
