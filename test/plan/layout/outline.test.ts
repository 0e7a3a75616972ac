import {describe, expect, test} from 'vitest'
import {planOf} from '../../support/plan-of.ts'

const inch = 25.4

const outlineOf = (more: string) =>
  planOf(`title: A\nbox: 10 x 7 x 2\nscale: 24\nstrings: [D3 .030w, A3 .020w, D4 .013]\n${more}`).plan
    .outline!

describe('the outline that drawings are drawn from', () => {
  test('has the neck end where neck.length less head.length puts it', () => {
    const {neck} = outlineOf('neck: {length: 33 1/2}\nhead: {length: 6 1/4}')
    expect(neck!.tailMm).toBeCloseTo((33.5 - 6.25) * inch, 9)
    expect(neck!.isOpen).toBe(false)
  })

  test('widens from nut to tail, and gives the head the width of the nut', () => {
    const {neck, head} = outlineOf('neck: {length: 33 1/2, width: {nut: 1 5/8, tail: 1 7/8}}')
    expect([neck!.nutWidthMm, neck!.tailWidthMm]).toEqual([1.625 * inch, 1.875 * inch])
    expect(head!.widthMm).toBe(1.625 * inch)
  })

  test('stops a fingerboard where it is assumed to end', () => {
    const {neck} = outlineOf(
      'neck: {length: 33, joins: through}\nhead: {length: 6}\nfingerboard: {wood: walnut, thickness: 1/4}',
    )
    expect(neck!.fingerboard).toEqual({
      fromMm: 0,
      // At the box: past it the neck is cut down, and a board that went on would be sawn off with it.
      toMm: expect.closeTo(16 * inch, 9),
      thicknessMm: 0.25 * inch,
    })
  })

  test('counts every layer into the thickness', () => {
    const {neck} = outlineOf(
      'neck: {laminations: [{wood: black cherry, thickness: 3/16}, {wood: white ash, thickness: 5/8}]}',
    )
    expect(neck!.thicknessMm).toBeCloseTo((3 / 16 + 5 / 8) * inch, 9)
  })

  test('has a straight head step down where it is cut down', () => {
    const {head} = outlineOf('head: {joint: straight, drop: 1/4, thickness: 1/2, ledge: 1/4}')
    expect(head).toMatchObject({
      angleDeg: 0,
      stepMm: 0.25 * inch,
      steps: [{alongMm: 0.25 * inch, downMm: 0.25 * inch}],
    })
  })

  test('leaves sizes that nobody gave at nothing, so that they are drawn as lines', () => {
    const {nut, bridge} = outlineOf('nut: {kind: rod}\nbridge: {kind: saddle}')
    expect(nut).toEqual({kind: 'rod', alongMm: 0, grooveMm: 0})
    expect(bridge!.footMm).toBe(0)
  })
})
