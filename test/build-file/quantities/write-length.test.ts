import {describe, expect, test} from 'vitest'
import {readLength} from '../../../plugins/build-file/quantities/read-length.ts'
import {nearestMark, type Rounding, writeLength} from '../../../plugins/build-file/quantities/write-length.ts'
import fc from '../../support/properties.ts'

const thirtySecond = 25.4 / 32

describe('inches are fractions of the ruler', () => {
  test.each<[number, number, Rounding, string]>([
    [19.05, 32, 'nearest', '3/4 in'],
    [38.1, 32, 'nearest', '1 1/2 in'],
    [615.95, 32, 'nearest', '24 1/4 in'],
    [-57.15, 32, 'nearest', '-2 1/4 in'],
    [-12.7, 32, 'nearest', '-1/2 in'],
    [0, 32, 'nearest', '0 in'],
    [-0.1, 32, 'nearest', '0 in'],
    [0.1, 32, 'nearest', '0 in'],
    [0.1, 32, 'up', '1/32 in'],
    [-0.1, 32, 'up', '0 in'],
    [-0.1, 32, 'down', '-1/32 in'],
    [25, 32, 'down', '31/32 in'],
    [25, 32, 'up', '1 in'],
    [25.4, 32, 'down', '1 in'],
    [25.4, 32, 'up', '1 in'],
    [12.7, 1, 'down', '0 in'],
    [10, 64, 'nearest', '25/64 in'],
  ])('%d mm to 1/%d in, %s', (mm, parts, rounding, text) => {
    expect(writeLength(mm, {units: 'in', rulerMm: 25.4 / parts}, rounding)).toBe(text)
  })
})

test.each<[number, 'in' | 'mm', number, Rounding, string]>([
  [12.5, 'mm', 0.5, 'nearest', '12.5 mm'],
  [12.7, 'mm', 0.5, 'nearest', '12.5 mm'],
  [12.7, 'mm', 0.5, 'up', '13 mm'],
  [640, 'mm', 0.5, 'nearest', '640 mm'],
  [-3.26, 'mm', 0.1, 'nearest', '-3.3 mm'],
  [-0.01, 'mm', 1, 'nearest', '0 mm'],
  [0.3, 'mm', 0.1, 'down', '0.3 mm'],
  [12.7, 'mm', thirtySecond, 'nearest', '12.7 mm'],
  [12.7, 'in', 0.254, 'nearest', '0.5 in'],
  [12.9, 'in', 0.254, 'nearest', '0.51 in'],
  [0.508, 'in', 0.0254, 'nearest', '0.02 in'],
  [12.7, 'in', 0.5, 'nearest', '0.5 in'],
])('%d mm in %s to %d mm, %s', (mm, units, rulerMm, rounding, text) => {
  expect(writeLength(mm, {units, rulerMm}, rounding)).toBe(text)
})

test.each<[number, 'in' | 'mm', number, number, string]>([
  [308.8, 'in', thirtySecond, 308.76875, '12 5/32 in'],
  [36.4817, 'mm', 0.5, 36.5, '36.5 mm'],
  [36.4817, 'mm', 1, 36, '36 mm'],
  [36.4817, 'mm', thirtySecond, 36.5125, '1 7/16 in'],
  [36.4817, 'in', 0.5, 36.5, '36.5 mm'],
  [36.4817, 'in', 0.254, 36.576, '1.44 in'],
  [0, 'in', thirtySecond, 0, '0 in'],
])('%d mm in a build in %s with a ruler of %d mm', (mm, units, rulerMm, markMm, text) => {
  const mark = nearestMark(mm, {units, rulerMm})
  expect(mark.text).toBe(text)
  expect(mark.mm).toBeCloseTo(markMm, 9)
})

const ruler = fc.constantFrom(
  ...[1, 2, 4, 8, 16, 32, 64].map((parts) => ({units: 'in' as const, rulerMm: 25.4 / parts})),
  ...[0.1, 0.2, 0.25, 0.5, 1, 2].map((rulerMm) => ({units: 'mm' as const, rulerMm})),
  {units: 'in' as const, rulerMm: 0.254},
)
const lengths = fc.double({min: -3000, max: 3000, noNaN: true})
const back = (text: string) => {
  const found = readLength(text, 'mm')
  return found.ok ? found.value.mm : Number.NaN
}

test('what is written is read back within half a mark', () => {
  fc.assert(
    fc.property(lengths, ruler, (mm, how) => {
      expect(Math.abs(back(writeLength(mm, how)) - mm)).toBeLessThanOrEqual(how.rulerMm / 2 + 1e-9)
    }),
  )
})

test('down is never more, up never less, and they are one mark apart at most', () => {
  fc.assert(
    fc.property(lengths, ruler, (mm, how) => {
      const [down, up] = [back(writeLength(mm, how, 'down')), back(writeLength(mm, how, 'up'))]
      expect(down).toBeLessThanOrEqual(mm + 2e-6 * how.rulerMm + 1e-9)
      expect(up).toBeGreaterThanOrEqual(mm - 2e-6 * how.rulerMm - 1e-9)
      expect(up - down).toBeLessThanOrEqual(how.rulerMm + 1e-9)
    }),
  )
})

test('a length on a mark keeps its spelling', () => {
  fc.assert(
    fc.property(fc.integer({min: -50_000, max: 50_000}), ruler, (marks, how) => {
      const text = writeLength(marks * how.rulerMm, how)
      for (const rounding of ['nearest', 'down', 'up'] as const)
        expect(writeLength(back(text), how, rounding)).toBe(text)
    }),
  )
})

test('spellings of one length are one length', () => {
  const parts = fc.record({
    whole: fc.nat(120),
    over: fc.integer({min: 1, max: 63}),
    under: fc.constantFrom(2, 4, 8, 16, 32, 64, 3, 10),
    minus: fc.boolean(),
  })
  fc.assert(
    fc.property(parts, ({whole, over, under, minus}) => {
      const sign = minus ? '-' : ''
      const mm = back(`${sign}${whole} ${over}/${under} in`)
      const spellings = [
        `${sign}${whole}-${over}/${under}"`,
        `${minus ? '−' : ''}${whole} ${over}⁄${under} inches`,
        `${sign}${whole}  ${over} / ${under}″`,
        `${sign}${whole * under + over}/${under} in`,
        `${sign}0 ft ${whole} ${over}/${under} in`,
        `${sign}0' ${whole} ${over}/${under}"`,
      ]
      for (const spelling of spellings) expect(back(spelling)).toBe(mm)
      expect(back(`${whole} ${over}/${under} in`)).toBe(Math.abs(mm))
      expect(mm).toBeCloseTo((minus ? -1 : 1) * (whole + over / under) * 25.4, 9)
    }),
  )
})

test('a decimal is as near in millimetres, centimetres and metres as numbers go', () => {
  fc.assert(
    fc.property(fc.integer({min: 0, max: 9_999_999}), (tenthousandths) => {
      const mm = tenthousandths / 10_000
      expect(back(`${(tenthousandths / 10_000).toFixed(4)} mm`)).toBe(mm)
      expect(back(`${(tenthousandths / 100_000).toFixed(5)} cm`)).toBe(mm)
      expect(back(`${(tenthousandths / 10_000_000).toFixed(7)} m`)).toBe(mm)
    }),
  )
})

test('nothing that is typed makes a reading throw or give no number', () => {
  fc.assert(
    fc.property(fc.string({unit: fc.constantFrom(...'0123456789 ./-\'"¾½inftmce−⁄,w')}), (text) => {
      const found = readLength(text, 'in')
      if (found.ok) expect(Number.isFinite(found.value.mm)).toBe(true)
      else expect(found.message).not.toBe('')
    }),
    {numRuns: 2000},
  )
})
