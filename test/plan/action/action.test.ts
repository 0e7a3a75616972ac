import {describe, expect, test} from 'vitest'
import {planOf} from '../../support/plan-of.ts'

const action = (heights: string, more = '') =>
  planOf(
    `title: A\nscale: {length: 24${more.includes('fretted') ? ', fretted: true' : ''}}\nbox: 10 x 7 x 2\nneck: 1 5/8 x 3/4\n${more.replace('fretted', '')}\n${heights}\nstrings: [D3 .030w, D4 .013]`,
  ).plan

const inches = (mm: number | undefined) => mm! / 25.4

describe('two heights give the third, from the playing face', () => {
  test.each([
    ['action: {nut: 1/8, octave: 7/32}', 1 / 8, 7 / 32, 5 / 16],
    ['action: {nut: 1/8}\nbridge: {height: 5/16}', 1 / 8, 7 / 32, 5 / 16],
    ['action: {octave: 7/32}\nbridge: {height: 5/16}', 1 / 8, 7 / 32, 5 / 16],
    ['bridge: {height: 3/8}', 1 / 8, 1 / 4, 3 / 8],
  ])('%s', (heights, nut, octave, bridge) => {
    const plan = action(heights)
    expect(inches(plan.action!.nutMm)).toBeCloseTo(nut, 9)
    expect(inches(plan.action!.octaveMm)).toBeCloseTo(octave, 9)
    expect(inches(plan.action!.bridgeHeightMm)).toBeCloseTo(bridge, 9)
    expect(plan.assumptions.some(({path}) => path === 'action.octave')).toBe(false)
  })

  test('fretted, nut and octave are above the crowns', () => {
    const plan = action(
      'action: {nut: 0.02, octave: 3/32}',
      'fretted\nframed'.replace('framed', 'frets: {crown: 0.04}'),
    )
    expect(inches(plan.action!.bridgeHeightMm)).toBeCloseTo(0.04 + 3 / 16 - 0.02, 9)
  })

  test('a bridge on the top stands below the playing face by what the neck stands over the top', () => {
    const plan = action('action: {nut: 1/8}\nbridge: {on: top, height: 1 1/16}')
    expect(inches(plan.action!.bridgeHeightMm)).toBeCloseTo(5 / 16, 9)
    expect(inches(plan.bridge!.heightMm)).toBeCloseTo(17 / 16, 9)
    const third = action('action: {nut: 1/8, octave: 7/32}\nbridge: {on: top}')
    expect(inches(third.bridge!.heightMm)).toBeCloseTo(17 / 16, 9)
  })
})

test('every line lies on the string’s straight line; over a hollow neck the octave stays as drawn', () => {
  const plan = action('action: {nut: 1/8, octave: 7/32}')
  const [first, second] = plan.action!.atLinesMm!
  expect(first).toEqual(second)
  expect(first).toHaveLength(19)
  for (const [i, {fromNutMm}] of plan.scale!.lines!.entries())
    expect(first![i]).toBeCloseTo(3.175 + (4.7625 * fromNutMm) / 609.6, 9)
  expect(first![11]).toBeCloseTo(5.55625, 9)
  const hollow = action('action: {nut: 1/8, octave: 7/32, relief: 1/64}')
  // Drawn heights are those of the strung instrument: its bridge is lower by twice the hollow at the octave.
  expect(hollow.action!.atLinesMm![0]![11]).toBeCloseTo(5.55625, 9)
  expect(hollow.action!.bridgeToBuildMm).toBeCloseTo(7.9375 - (2 * 25.4) / 64, 9)
  expect(hollow.action).toMatchObject({reliefFrom: 'file', reliefMm: 25.4 / 64})
})

test('assumed by how it is played', () => {
  expect(inches(action('').action!.octaveMm)).toBeCloseTo(7 / 32, 9)
  expect(inches(action('play: fingers').action!.octaveMm)).toBeCloseTo(1 / 8, 9)
  expect(inches(action('', 'fretted').action!.octaveMm)).toBeCloseTo(3 / 32, 9)
})
