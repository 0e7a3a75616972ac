import {expect, test} from 'vitest'
import {buildSchema} from '../../plugins/build-file/schema/schema.ts'
import {rulerMarks} from '../../plugins/tables/hearing.ts'
import {justIntervals, tunings} from '../../plugins/tables/intervals.ts'
import {
  plainGaugesIn,
  type StringMaterialRow,
  stringMaterials,
  stringPulls,
  stringWraps,
  usualCores,
  woundGaugesIn,
} from '../../plugins/tables/strings.ts'

const rises = (values: readonly number[]) => values.every((value, i) => i === 0 || value > values[i - 1]!)

test('gauges rise, and lie where a build file may have them', () => {
  for (const gauges of [...Object.values(plainGaugesIn), woundGaugesIn]) {
    expect(rises(gauges)).toBe(true)
    for (const gaugeIn of gauges) {
      expect(gaugeIn * 25.4).toBeGreaterThanOrEqual(0.1)
      expect(gaugeIn * 25.4).toBeLessThanOrEqual(3)
    }
  }
})

test('the build file may name every material and wrap of the tables, and no other', () => {
  const {material, wrap} = buildSchema.fields.strings.item.fields
  expect([...material.of].sort()).toEqual(Object.keys(stringMaterials).sort())
  expect([...wrap.of].sort()).toEqual(Object.keys(stringWraps).sort())
})

// Ranges of metals' densities as tables of metals give them: steels 7.7 to 8.0, copper alloys 8.4 to 8.95, nickel 8.8 to 8.91 g/cm³.
test('densities lie where their materials’ do, and each has its source', () => {
  for (const {densityKgM3, source} of Object.values(stringWraps)) {
    expect(densityKgM3).toBeGreaterThanOrEqual(7700)
    expect(densityKgM3).toBeLessThanOrEqual(8950)
    expect(source).not.toBe('')
  }
  for (const row of Object.values<StringMaterialRow>(stringMaterials)) {
    expect(row.densitySource).not.toBe('')
    expect(row.stiffnessMpa === undefined).toBe(row.stiffnessSource === undefined)
  }
})

test('limits of pull rise, cores thin out with the gauge, rulers run from coarse to fine', () => {
  for (const {slackN, slackUnderSlideN, easyN, firmN} of Object.values(stringPulls)) {
    expect(rises([slackN, easyN, firmN])).toBe(true)
    expect(slackUnderSlideN).toBeLessThan(easyN)
  }
  expect(rises(usualCores.map(({gaugeIn}) => gaugeIn))).toBe(true)
  expect(rises(usualCores.map(({coreFraction}) => -coreFraction))).toBe(true)
  for (const marks of Object.values(rulerMarks)) expect(rises(marks.map(({mm}) => -mm))).toBe(true)
})

test('tunings start at their lowest string, rise, and are there once', () => {
  for (const {semitones} of tunings) {
    expect(semitones[0]).toBe(0)
    expect(semitones.every((one, i) => i === 0 || one >= semitones[i - 1]!)).toBe(true)
  }
  expect(new Set(tunings.map(({semitones}) => semitones.join())).size).toBe(tunings.length)
})

test('pure intervals rise to the octave', () => {
  expect(rises(justIntervals.map(({over, under}) => over / under))).toBe(true)
  expect(justIntervals.at(-1)).toMatchObject({over: 2, under: 1})
})
