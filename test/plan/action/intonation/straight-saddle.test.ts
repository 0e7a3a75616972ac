import {expect, test} from 'vitest'
import {planOf} from '../../../support/plan-of.ts'

const build = (strings: string, more = '') =>
  planOf(`title: S\nscale: {length: 25, fretted: true}\n${more}\nstrings: [${strings}]`).plan

// Two numbers fit two strings: the slanted saddle then is each string's own best.
test('under two strings a slanted saddle leaves nothing over but what each leaves by itself', () => {
  const {bridge} = build('D3 .026w, D4 .013')
  const {slantedSaddle, setbacks} = bridge!
  expect(slantedSaddle!.firstMm).toBeCloseTo(setbacks![0]!.setbackMm, 4)
  expect(slantedSaddle!.lastMm).toBeCloseTo(setbacks![1]!.setbackMm, 4)
  expect(slantedSaddle!.strings.map(({rmsCents}) => rmsCents)).toEqual(
    setbacks!.map(({rmsCents}) => expect.closeTo(rmsCents, 6)),
  )
})

test('strings that are alike want no slant', () => {
  const {bridge} = build('D4 .013, D4 .013, D4 .013')
  expect(bridge!.slantedSaddle!.angleDeg).toBeCloseTo(0, 5)
  expect(bridge!.squareSaddle!.firstMm).toBeCloseTo(bridge!.setbacks![1]!.setbackMm, 4)
})

test('more freedom leaves less over: square, slanted, each string by itself', () => {
  for (const strings of [
    'G2 .042w, D3 .026w, G3 .017',
    'G2 .042w, D3 .026w, A3 .016, E4 .011',
    'A2 .036w, E3 .024w, A3 .018',
  ]) {
    const {squareSaddle, slantedSaddle, setbacks} = build(strings).bridge!
    const own = Math.sqrt(setbacks!.reduce((sum, {rmsCents}) => sum + rmsCents ** 2, 0) / setbacks!.length)
    expect(squareSaddle!.rmsCents).toBeGreaterThanOrEqual(slantedSaddle!.rmsCents - 1e-9)
    expect(slantedSaddle!.rmsCents).toBeGreaterThanOrEqual(own - 1e-9)
  }
})

test('it runs straight through the strings where the bridge spaces them', () => {
  const {slantedSaddle} = build('G2 .042w, D3 .026w, G3 .017', 'spacing: {nut: 1, bridge: 2, slots: gaps}')
    .bridge!
  const {scale} = build('G2 .042w, D3 .026w, G3 .017', 'spacing: {nut: 1, bridge: 2, slots: gaps}')
  const [a, b, c] = scale!.bridgeOffMm as [number, number, number]
  const [first, middle, last] = slantedSaddle!.strings.map(({setbackMm}) => setbackMm) as [
    number,
    number,
    number,
  ]
  expect((middle - first) / (last - first)).toBeCloseTo((b - a) / (c - a), 9)
  expect(Math.tan((slantedSaddle!.angleDeg * Math.PI) / 180)).toBeCloseTo((first - last) / (c - a), 9)
})

test('fretless builds and builds of one string have no straight saddle', () => {
  expect(build('D4 .013').bridge!.slantedSaddle).toBeUndefined()
  const fretless = planOf('title: F\nscale: 25\nstrings: [D3 .026w, D4 .013]').plan
  expect(fretless.bridge!.setbacks).toBeUndefined()
  expect(fretless.intonation).toBeUndefined()
})
