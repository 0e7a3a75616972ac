import {describe, expect, test} from 'vitest'
import {readBuild} from '../../../plugins/build-file/read.ts'
import {
  kindAt,
  leafAt,
  leavesOf,
  placeOf,
  quantityPaths,
  stringNames,
  textAt,
  valueAt,
  withValueAt,
} from '../../../plugins/build-file/schema/path.ts'
import {startFrom} from '../../../plugins/build-file/start-from.ts'

const source = `---
title: Needle box
scale: 24
strings: [D3 .030w, A3 .020w, D4 .013, D4 .012]
neck: {width: 1 1/2, laminations: [{wood: ash, thickness: 1/4}, {wood: maple, thickness: 1/2}]}
---
`
const {build} = readBuild(source, {slug: 'needle-box'})
const {values} = build

describe('a path finds', () => {
  test.each([
    ['title', 'Needle box'],
    ['scale.length', '24'],
    ['neck.width.nut', '1 1/2'],
    ['neck.laminations.2.wood', 'maple'],
    ['strings.1.gauge', '.030w'],
    ['strings.A3.gauge', '.020w'],
    ['strings.D4.gauge', '.013'],
    ['strings.D4-2.gauge', '.012'],
  ])('%s', (path, text) => {
    expect(textAt(values, path)).toBe(text)
  })

  test.each([
    'box.length',
    'neck.laminations.3.wood',
    'neck.laminations.0.wood',
    'strings.E4.gauge',
    'title.text.length.more',
    'constructor.name',
    'neck.laminations.length',
  ])('nothing at %s', (path) => {
    expect(valueAt(values, path)).toBeUndefined()
  })
})

test('a value is set in a copy, which shares the rest', () => {
  const set = withValueAt(values, 'neck.laminations.2.wood', {text: 'walnut'})
  expect(textAt(set, 'neck.laminations.2.wood')).toBe('walnut')
  expect(textAt(values, 'neck.laminations.2.wood')).toBe('maple')
  expect(set.neck!.laminations![0]).toBe(values.neck!.laminations![0])
  expect(set.strings).toBe(values.strings)
  expect(textAt(withValueAt(values, 'box.top.thickness', {text: '1/8'}), 'box.top.thickness')).toBe('1/8')
  expect(textAt(withValueAt(values, 'strings.D4-2.core', {text: '.01'}), 'strings.4.core')).toBe('.01')
})

test('every value that was read is listed under the path that finds it, with a place of its own', () => {
  const leaves = leavesOf(values)
  expect(leaves.map(([path]) => path)).toContain('neck.laminations.1.thickness')
  for (const [path, value] of leaves) {
    expect(valueAt(values, path)).toBe(value)
    expect(placeOf(build, path)).toEqual(value.place)
  }
})

test('a value that is not there has the place of the nearest key around it', () => {
  expect(placeOf(build, 'neck.laminations.1.glued')).toMatchObject({line: 5, column: 36})
  expect(placeOf(build, 'neck.angle')).toMatchObject({line: 5, column: 1})
  expect(placeOf(build, 'box.length')).toMatchObject({line: 2, column: 1})
})

test('strings are named by their notes, and by their number where they have none', () => {
  expect(stringNames(values.strings)).toEqual(['D3', 'A3', 'D4', 'D4-2'])
  expect(stringNames([{}, {note: {name: 'G4'}}])).toEqual(['1', 'G4'])
})

describe('the schema', () => {
  test('knows a kind at a path, and what one value of a record stands for', () => {
    expect(leafAt('neck.width')?.leaf).toBe('length')
    expect(leafAt('strings.D4.gauge')?.leaf).toBe('gauge')
    expect(leafAt('scale.temperament.3')?.leaf).toBe('step')
    expect(kindAt('neck')?.is).toBe('record')
    expect(kindAt('neck.colour')).toBeUndefined()
    expect(kindAt('constructor')).toBeUndefined()
  })

  test('has a leaf for every path of a quantity', () => {
    for (const path of quantityPaths()) expect(leafAt(path), path).toBeDefined()
  })
})

test('a measure of a string that is not there changes no string', () => {
  const measured = source.replace(
    '\n---\n',
    '\nmeasured: {strings.E5.gauge: .009, strings.D4-2.gauge: .011}\n---\n',
  )
  const started = readBuild(startFrom(measured, 'needle-box')!, {slug: 'again'}).build.values
  expect(started.strings!.map(({gauge}) => gauge!.text)).toEqual(['.030w', '.020w', '.013', '0.011'])
})
