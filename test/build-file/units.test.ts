import {expect, test} from 'vitest'
import {readBuild} from '../../plugins/build-file/read.ts'
import {applied, editsOf} from '../../plugins/build-file/yaml/apply-edits.ts'
import {manyBuilds, readAll} from '../support/slip-healing.ts'

const problemsOf = (text: string) =>
  readBuild(text, {slug: 'x'}).problems.filter(({severity}) => severity === 'error')

const metric = manyBuilds().filter((text) => /^units: mm$/m.test(text))
const imperial = manyBuilds().filter((text) => /^units: in$/m.test(text) || !/^units:/m.test(text))

test('a file in millimetres that does not say so is told once, and what is proposed makes it whole', () => {
  expect(metric.length).toBeGreaterThan(2)
  for (const text of metric) {
    const without = text.replace(/^units: mm\n/m, '')
    const [first, ...rest] = problemsOf(without)
    expect([first?.rule, first?.expected, rest]).toEqual(['units-unlike', ['units: mm'], []])
    const mended = applied(without, editsOf(first!))
    expect(JSON.parse(readAll(mended).plan)).toEqual(JSON.parse(readAll(text).plan))
  }
})

test('a file in inches that says millimetres is told once, where it says so', () => {
  for (const text of imperial) {
    const wrong = /^units: in$/m.test(text)
      ? text.replace(/^units: in$/m, 'units: mm')
      : text.replace('---\n', '---\nunits: mm\n')
    expect(problemsOf(wrong).map(({rule, expected}) => ({rule, expected}))).toEqual([
      {rule: 'units-unlike', expected: ['in']},
    ])
  }
})

test('three sizes too large among others that fit are told each by itself', () => {
  const text = '---\ntitle: A\nscale: 24\nbox: 100 x 70 x 30\n---\n'
  expect(problemsOf(text).map(({rule}) => rule)).toEqual(['out-of-range', 'out-of-range', 'out-of-range'])
})
