import {readdirSync, readFileSync} from 'node:fs'
import {Ajv2020} from 'ajv/dist/2020.js'
import {describe, expect, test} from 'vitest'
import {parse} from 'yaml'
import {jsonSchema} from '../../plugins/build-file/json-schema.ts'

// Ajv is the judge: a general validator of JSON Schema, draft 2020-12.
const accepts = new Ajv2020({strictTypes: false, strictNumbers: true, allErrors: true}).compile(jsonSchema())
const says = (frontMatter: string) => {
  const good = accepts(parse(frontMatter))
  return good ? 'accepted' : 'refused'
}
const frontMatterOf = (text: string) => text.split(/^---[ \t]*\r?$/m)[1] ?? ''

describe('accepts every spelling of the contract', () => {
  test.each([
    'scale: 24',
    'scale: 0.75',
    'scale: 3/4',
    'scale: 1 1/2',
    'scale: 1-1/2',
    'scale: ¾',
    'scale: 1½',
    'scale: 24 in',
    "scale: '24\"'",
    'scale: 24″',
    'scale: 2 ft 9 in',
    'scale: "2\' 9 1/2\\""',
    'scale: 38 mm',
    'scale: 3.8 cm',
    'scale: 0.58 m',
    'tuners: {at: [-2, -4 1/2, -3 1/4], off: [-7/16, 7/16, 0]}',
    'tuners: {at: -2 1/4}',
    'action: {relief: -0.01}',
    'strings: [D3 .030w]',
    'strings: 3',
    'strings: [{note: F#3, gauge: .017}, {note: B♭2, gauge: 0.8 mm w}]',
    'head: {angle: 13}',
    'head: {angle: 13°}',
    'started: 2026-03-07',
    'cost: [{item: tuners, count: 3, each: 2.10}]',
    'strings: [{tension: {pull: 13 lbf, scale: 25, note: D3}, mass: 5.8 g/m, stiffness: 1.83 Mpsi}]',
    'strings: [{mass: 0.00032 lb/in, stiffness: 12.6 GPa}]',
    'neck: {wood: driftwood, density: 42 lb/ft3, stiffness: 9 GPa}',
    'pickup: {kind: piezo, capacitance: 20 nF}',
    'pickup: piezo',
    'scale: {pattern: [2, 4, 5], temperament: equal}',
    'scale: {pattern: diatonic, temperament: [16/15, 9/8, 6/5, 5/4, 4/3, 45/32, 3/2, 8/5, 5/3, 9/5, 15/8, 2/1]}',
    'fingerboard: none',
    'box: 10 1/8 x 7 x 2',
    'box: {top: 1/8}',
    'neck: {width: 1 5/8, round-over: {radius: 3/8, from: scarf, to: -1}}',
    'measured: {on: 2026-03-15, lines: {12: 12 5/32}, cents: {12: 4}, scale.length: 24 9/32}',
    'measured: [{on: 2026-03-15, scale.length: 24}, {on: 2026-06-01, lines: {12: 12}}]',
    'scale:',
    'box: {length: , width: 7}',
    'handed: Left',
    'published: false',
  ])('%s', (line) => expect(says(`title: A\n${line}`)).toBe('accepted'))
})

describe('refuses what the reader cannot read', () => {
  test.each([
    'scale: 24 inn',
    'scale: 3/0',
    'scale: 1/2/3',
    'scale: -4',
    'scale: -1-1/2',
    'scale: 1/2 in 3',
    'scale: NaN',
    'scale: 1e999',
    'scale: [24]',
    'strings: [{note: G}]',
    'strings: [{note: H2}]',
    'strings: [{note: G#b3}]',
    'strings: ["F #3"]'.replace('["F #3"]', '[{note: "F #3"}]'),
    'strings: 0',
    'strings: []',
    'scale: {lines: 400}',
    'started: 2026-13-01',
    'handed: lefty',
    'neck: [1, 2]',
    'temperament: 3'.replace('temperament: 3', 'scale: {temperament: [9/8]}'),
    'pickup: {capacitance: 20}',
    'humidity: [40]',
  ])('%s', (line) => expect(says(`title: A\n${line}`)).toBe('refused'))
  test('a title missing', () => expect(says('scale: 24')).toBe('refused'))
  test('a list', () => expect(says('- a')).toBe('refused'))
})

test('accepts every good build of the fixtures and of the journal', () => {
  const files = ['test/journals/long-example/builds', 'builds'].flatMap((folder) =>
    readdirSync(folder, {recursive: true, withFileTypes: true})
      .filter(({name}) => name.endsWith('.md'))
      .map(({parentPath, name}) => `${parentPath}/${name}`),
  )
  expect(files.length).toBeGreaterThanOrEqual(2)
  for (const file of files)
    expect(`${file} ${says(frontMatterOf(readFileSync(file, 'utf8')))}`).toBe(`${file} accepted`)
})
