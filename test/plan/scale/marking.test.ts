import {expect, test} from 'vitest'
import {planOf} from '../../support/plan-of.ts'

const scaleOf = (scale: string, more = '') => planOf(`title: M\nscale: ${scale}\n${more}`).plan.scale!

test('the worst mark is named by its line', () => {
  const {lines, worstMarkErrorCents, worstMarkLabel} = scaleOf('24 1/4')
  const worst = lines!.find(({label}) => label === worstMarkLabel)!
  expect(Math.abs(worst.markErrorCents)).toBe(worstMarkErrorCents)
  for (const {markErrorCents} of lines!)
    expect(Math.abs(markErrorCents)).toBeLessThanOrEqual(worstMarkErrorCents!)
})

// Five cents are the least that is noticed: HyperPhysics, Cents; Hobbie and Roth; OpenStax College Physics 17.6 (5.2).
test('the ruler that is needed keeps every line within five cents, and no coarser one does', () => {
  for (const length of ['24 1/4', '25 1/2', '17', '13 3/4', '34']) {
    const {rulers, rulerNeeded, lengthMm, lines} = scaleOf(length)
    for (const {mm, worstCents} of rulers!) {
      const errors = lines!.map(({fromNutMm}) =>
        Math.abs(1200 * Math.log2((lengthMm! - fromNutMm) / (lengthMm! - Math.round(fromNutMm / mm) * mm))),
      )
      expect(worstCents).toBeCloseTo(Math.max(...errors), 6)
    }
    const at = rulers!.findIndex(({mm}) => mm === rulerNeeded!.mm)
    expect(rulers![at]!.worstCents).toBeLessThanOrEqual(5)
    for (const coarser of rulers!.slice(0, at)) expect(coarser.worstCents).toBeGreaterThan(5)
  }
})

test('a ruler of its own agrees with the one tried', () => {
  const {rulers} = scaleOf('24 1/4')
  const own = scaleOf('24 1/4', 'ruler: 1/64')
  expect(own.worstMarkErrorCents).toBeCloseTo(rulers!.find(({text}) => text === '1/64 in')!.worstCents, 9)
})

// Just ratios in cents as any list of them gives: 203.910, 315.641, 386.314, 498.045, 701.955, 884.359, 968.826, 1017.596, 1088.269.
test('pure intervals on a fretless neck', () => {
  const {justMarks} = scaleOf('{length: 600 mm}')
  expect(justMarks!.map(({cents}) => Number(cents.toFixed(3)))).toEqual([
    203.91, 315.641, 386.314, 498.045, 701.955, 884.359, 968.826, 1017.596, 1088.269, 1200,
  ])
  expect(justMarks!.find(({name}) => name === 'fifth')!.fromNutMm).toBeCloseTo(200, 9)
  expect(scaleOf('{length: 600 mm, fretted: true}').justMarks).toBeUndefined()
})

test('lines of a temperament are set against equal semitones', () => {
  const {lines} = scaleOf(
    '{length: 600 mm, temperament: [100, 203.91, 300, 386.31, 498.04, 600, 701.96, 800, 884.36, 1000, 1088.27, 1200]}',
  )
  expect(lines!.slice(0, 5).map(({offEqualCents}) => Number(offEqualCents!.toFixed(2)))).toEqual([
    0, 3.91, 0, -13.69, -1.96,
  ])
})
