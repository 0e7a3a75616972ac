import {describe, expect, test} from 'vitest'
import {readLeaf} from '../../../plugins/build-file/quantities/read-leaf.ts'
import type {Limits} from '../../../plugins/build-file/schema/kinds.ts'
import type {LeafName} from '../../../plugins/build-file/schema/values.ts'

const read = (
  leaf: LeafName,
  raw: string | number | boolean,
  units: 'in' | 'mm' = 'in',
  limits: Limits = {},
) => readLeaf(leaf, raw, {units, limits})
const value = (
  leaf: LeafName,
  raw: string | number | boolean,
  units: 'in' | 'mm' = 'in',
  limits: Limits = {},
) => {
  const found = read(leaf, raw, units, limits)
  return found.ok ? found.value : found.message
}

// International inch: exactly 25.4 mm (international yard and pound agreement, 1959).
describe('lengths are read in every spelling', () => {
  test.each<[string | number, number]>([
    [24, 609.6],
    ['24', 609.6],
    [0.75, 19.05],
    ['.75', 19.05],
    ['3/4', 19.05],
    ['3⁄4', 19.05],
    ['1 1/2', 38.1],
    ['1-1/2', 38.1],
    ['¾', 19.05],
    ['1½', 38.1],
    ['1 ½', 38.1],
    ['1-½', 38.1],
    ['24 in', 609.6],
    ['24in', 609.6],
    ['24 IN', 609.6],
    ['24 inches', 609.6],
    ['1 inch', 25.4],
    ['24"', 609.6],
    ['24″', 609.6],
    ['24”', 609.6],
    ['2 ft 9 in', 838.2],
    ['2 feet 9 inches', 838.2],
    ['1 foot', 304.8],
    ['2\' 9 1/2"', 850.9],
    ['2′ 9½″', 850.9],
    ['2’9½”', 850.9],
    ['2\'-9 1/2"', 850.9],
    ['2 ft 9', 838.2],
    ['38 mm', 38],
    ['3.8 cm', 38],
    ['0.58 m', 580],
    ['0.57 m', 570],
    ['1 1/2 mm', 1.5],
    ['24 1/4', 615.95],
    ['0', 0],
    ['-0', 0],
  ])('%s in a build in inches is %d mm', (text, mm) => {
    expect(value('length', text)).toEqual({mm})
  })

  test.each<[string | number, number]>([
    [640, 640],
    ['640', 640],
    ['25 1/2 in', 647.7],
    ['3/4', 0.75],
    ['1 m', 1000],
  ])('%s in a build in millimetres is %d mm', (text, mm) => {
    expect(value('length', text, 'mm')).toEqual({mm})
  })

  test.each<[string | number, number]>([
    ['-2 1/4', -57.15],
    ['−2 1/4', -57.15],
    ['-1-1/2', -38.1],
    ['-½', -12.7],
    ['- 1/2', -12.7],
    [-2.5, -63.5],
    ['-2\' 6"', -762],
    ['+2', 50.8],
  ])('the sign of %s covers the whole', (text, mm) => {
    expect(value('length', text, 'in', {signed: true})).toEqual({mm})
  })
})

describe('what is no length is named, with what would do', () => {
  test.each<[string | number | boolean, string[] | undefined]>([
    ['24 inn', ['24 in']],
    ['24 mmm', ['24 mm']],
    ['3/0', undefined],
    ['1 3/0', undefined],
    ['1/2/3', ['1/2']],
    ['1/2 in 3', ['1/2 in']],
    ['1/2 1/4', ['1/2']],
    ['24 in 3 in', ['24 in']],
    ['1,5', ['1.5']],
    ['NaN', undefined],
    [Number.NaN, undefined],
    ['1e999', undefined],
    [Number.POSITIVE_INFINITY, undefined],
    ['9'.repeat(400), undefined],
    ['', undefined],
    ['in', undefined],
    ['--4', undefined],
    ['½0', ['1/2']],
    ['2 ft 9 mm', undefined],
    [true, undefined],
  ])('%s', (text, expected) => {
    const found = read('length', text, 'in', {signed: true})
    expect(found).toMatchObject({ok: false, rule: 'unreadable-length'})
    expect(!found.ok && found.expected).toEqual(expected)
  })

  test.each<[string | number, string]>([
    ['-4', '4'],
    [-4, '4'],
    ['-1-1/2', '1-1/2'],
    ['−¾ in', '3/4 in'],
  ])('%s where a length cannot be below zero', (text, mended) => {
    expect(read('length', text)).toMatchObject({ok: false, rule: 'negative-length', expected: [mended]})
  })

  test('a scale of 24 m was meant in inches or centimetres', () => {
    expect(read('length', '24 m', 'in', {min: 100, max: 2000})).toEqual({
      ok: false,
      rule: 'out-of-range',
      message: '"24 m" is more than this can be, which is 78 11/16 in at most; 24 in or 24 cm would do',
      expected: ['24 in', '24 cm'],
    })
  })

  test('a scale of zero has no likely spelling', () => {
    const found = read('length', 0, 'in', {min: 100, max: 2000})
    expect(found).toMatchObject({ok: false, rule: 'out-of-range'})
    expect(!found.ok && found.expected).toBeUndefined()
  })

  test('both ends of a range belong to it', () => {
    expect(value('length', '100 mm', 'in', {min: 100, max: 2000})).toEqual({mm: 100})
    expect(value('length', '2 m', 'in', {min: 100, max: 2000})).toEqual({mm: 2000})
  })
})

describe('pitches', () => {
  // MIDI 1.0: key 60 is middle C, 69 the A above it.
  test.each([
    ['G2', 'G2', 43],
    ['F#3', 'F#3', 54],
    ['F♯3', 'F#3', 54],
    ['Bb2', 'Bb2', 46],
    ['B♭2', 'Bb2', 46],
    ['A4', 'A4', 69],
    ['C4', 'C4', 60],
    ['Cb4', 'Cb4', 59],
    ['B#3', 'B#3', 60],
  ])('%s', (text, name, midi) => {
    expect(value('pitch', text)).toEqual({name, midi})
  })

  test.each([
    ['G', ['G2', 'G3', 'G4']],
    ['Bb', ['Bb2', 'Bb3', 'Bb4']],
    ['H2', ['B2']],
    ['G#b3', ['G#3', 'G3', 'Gb3']],
    ['F #3', ['F#3']],
    ['d3', ['D3']],
    ['G 2', ['G2']],
    ['D33', ['D3']],
    ['S3', undefined],
    ['3', undefined],
    ['', undefined],
  ])('%s is no pitch', (text, expected) => {
    const found = read('pitch', text)
    expect(found).toMatchObject({ok: false, rule: 'unreadable-pitch'})
    expect(!found.ok && found.expected).toEqual(expected)
  })
})

describe('gauges', () => {
  test.each<[string | number, 'in' | 'mm', {mm: number; wound: boolean}]>([
    [0.017, 'in', {mm: 0.4318, wound: false}],
    ['.017', 'in', {mm: 0.4318, wound: false}],
    ['.032w', 'in', {mm: 0.8128, wound: true}],
    ['.032 W', 'in', {mm: 0.8128, wound: true}],
    ['0.43 mm', 'in', {mm: 0.43, wound: false}],
    ['0.8 mm w', 'in', {mm: 0.8, wound: true}],
    ['.017 in', 'mm', {mm: 0.4318, wound: false}],
    [0.43, 'mm', {mm: 0.43, wound: false}],
    ['0.1', 'mm', {mm: 0.1, wound: false}],
    ['3', 'mm', {mm: 3, wound: false}],
  ])('%s in %s', (text, units, gauge) => {
    expect(value('gauge', text, units, {min: 0.1, max: 3})).toEqual(gauge)
  })

  test.each<[string | number, 'in' | 'mm', string[]]>([
    [0.017, 'mm', ['0.017 in']],
    ['.017', 'mm', ['.017 in']],
    ['.032w', 'mm', ['.032 in w']],
    [0.43, 'in', ['0.43 mm']],
    ['0.8w', 'in', ['0.8 mm w']],
    [17, 'in', ['.017 in']],
    ['3.1 mm', 'in', []],
  ])('%s in %s lacks its unit', (text, units, expected) => {
    const found = read('gauge', text, units, {min: 0.1, max: 3})
    expect(found).toMatchObject({ok: false, rule: 'out-of-range'})
    expect((!found.ok && found.expected) || []).toEqual(expected)
  })

  test('what has no figure is no gauge', () => {
    expect(read('gauge', 'thin')).toMatchObject({ok: false, rule: 'unreadable-gauge'})
    expect(read('gauge', '.032w in')).toMatchObject({rule: 'unreadable-gauge', expected: ['.032 in w']})
  })
})

// Pound-force 4.4482216152605 N, kilogram-force 9.80665 N, pound 0.45359237 kg: NIST SP 811, appendix B.
describe('quantities with a unit of their own', () => {
  test.each<[LeafName, string | number | boolean, object]>([
    ['angle', 13, {deg: 13}],
    ['angle', '13°', {deg: 13}],
    ['angle', '12 1/2 deg', {deg: 12.5}],
    ['date', '2026-03-07', {iso: '2026-03-07'}],
    ['date', '2024-02-29', {iso: '2024-02-29'}],
    ['duration', '1 h 30 min', {minutes: 90}],
    ['duration', '90 min', {minutes: 90}],
    ['duration', '1.5 h', {minutes: 90}],
    ['duration', '1 1/2 hours', {minutes: 90}],
    ['money', 2.1, {amount: 2.1}],
    ['money', '2.10', {amount: 2.1}],
    ['force', '60 N', {n: 60}],
    ['force', '13 lbf', {n: 13 * 4.4482216152605}],
    ['force', '6 kgf', {n: 58.8399}],
    ['massPerLength', '5.8 g/m', {kgM: 0.0058}],
    ['stiffness', '12.6 GPa', {mpa: 12600}],
    ['density', '672 kg/m3', {kgM3: 672}],
    ['density', '672 kg/m³', {kgM3: 672}],
    ['capacitance', '20 nF', {nf: 20}],
    ['capacitance', '0.02 µF', {nf: 20}],
    ['step', 702, {cents: 702}],
    ['step', '2/1', {cents: 1200}],
    ['step', '2:1', {cents: 1200}],
    ['number', 440, {value: 440}],
    ['flag', true, {value: true}],
    ['flag', 'yes', {value: true}],
    ['flag', 'no', {value: false}],
    ['label', 12, {label: '12'}],
    ['label', '12', {label: '12'}],
    ['label', 6.5, {label: '6 1/2'}],
    ['label', '6 1/2', {label: '6 1/2'}],
    ['label', '6½', {label: '6 1/2'}],
    ['label', '6-1/2', {label: '6 1/2'}],
    ['text', ' Lantern pier ', {value: 'Lantern pier'}],
    ['wood', 'white ash', {value: 'white ash'}],
  ])('%s %s', (leaf, text, expected) => {
    expect(value(leaf, text)).toEqual(expected)
  })

  // Conversion factors of NIST SP 811, appendix B.8, to their printed digits.
  test.each<[LeafName, string, string, number]>([
    ['massPerLength', '1 lb/in', 'kgM', 17.85797],
    ['stiffness', '1 Mpsi', 'mpa', 6894.757],
    ['density', '1 lb/ft3', 'kgM3', 16.01846],
    ['density', '1 g/cm3', 'kgM3', 1000],
  ])('%s of %s', (leaf, text, unit, factor) => {
    const found = value(leaf, text) as Record<string, number>
    expect(Math.abs(found[unit]! / factor - 1)).toBeLessThan(5e-7)
  })

  test.each<[LeafName, string | number | boolean, string, string[] | undefined]>([
    ['angle', 'steep', 'unreadable-angle', undefined],
    ['date', '2026-02-30', 'unreadable-date', ['2026-02-28']],
    ['date', '2025-02-29', 'unreadable-date', ['2025-02-28']],
    ['date', '2026-13-01', 'unreadable-date', ['2026-01-13']],
    ['date', '2026-3-7', 'unreadable-date', ['2026-03-07']],
    ['date', '2026/03/07', 'unreadable-date', ['2026-03-07']],
    ['date', 20260307, 'unreadable-date', ['2026-03-07']],
    ['date', '7.3.2026', 'unreadable-date', ['2026-03-07', '2026-07-03']],
    ['duration', '90', 'unreadable-duration', ['90 min', '90 h']],
    ['duration', '1:30', 'unreadable-duration', ['1 h 30 min']],
    ['duration', '30 min 1 h', 'unreadable-duration', undefined],
    ['duration', '', 'unreadable-duration', undefined],
    ['money', '$2.10', 'unreadable-money', ['2.10']],
    ['money', 'free', 'unreadable-money', undefined],
    ['force', '13', 'unreadable-force', ['13 N', '13 lbf', '13 kgf']],
    ['force', '13 lb', 'unreadable-force', ['13 lbf']],
    ['massPerLength', '5.8', 'unreadable-mass-per-length', ['5.8 g/m', '5.8 kg/m', '5.8 lb/in']],
    ['stiffness', '12.6', 'unreadable-stiffness', ['12.6 GPa', '12.6 MPa', '12.6 Mpsi']],
    ['step', '3/0', 'unreadable-step', undefined],
    ['step', 'fifth', 'unreadable-step', undefined],
    ['number', 'many', 'unreadable-number', undefined],
    ['flag', 'maybe', 'unreadable-flag', ['true', 'false']],
    ['label', '6.3', 'unreadable-line-label', undefined],
    ['label', '-3', 'unreadable-line-label', undefined],
  ])('%s %s cannot be read', (leaf, text, rule, expected) => {
    const found = read(leaf, text)
    expect(found).toMatchObject({ok: false, rule})
    expect(!found.ok && found.expected).toEqual(expected)
  })

  test('numbers keep to their limits', () => {
    expect(read('number', 61, 'in', {min: 0, max: 60, whole: true})).toMatchObject({rule: 'out-of-range'})
    expect(read('number', 3.5, 'in', {whole: true})).toMatchObject({rule: 'out-of-range'})
    expect(read('number', 60, 'in', {min: 0, max: 60, whole: true})).toMatchObject({ok: true})
    expect(read('angle', 46, 'in', {min: 0, max: 45})).toMatchObject({rule: 'out-of-range'})
  })
})
