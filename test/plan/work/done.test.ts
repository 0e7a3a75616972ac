import {describe, expect, test} from 'vitest'
import {readBuild} from '../../../plugins/build-file/read.ts'
import {planBuild} from '../../../plugins/plan/plan.ts'
import {stepCalled} from '../../../plugins/plan/work/step.ts'
import {named} from '../../../plugins/plan/work/work-facts.ts'
import {readBody} from '../../../plugins/syntax/body.ts'

const front = `---
title: Slipway
status: on the bench
box: 10 x 7 x 2
scale: {length: 24 1/4, fretted: true}
strings: 3
neck: {width: 1 1/2, thickness: 3/4, wood: poplar}
finish: [{kind: oil}, {kind: shellac}]
---
`
function doneAfter(body: string, text = front): string[] {
  const {build} = readBuild(`${text}\n${body}\n`, {slug: 'slipway', body: readBody})
  const {work = []} = planBuild(build, {journal: {}, pieces: []})
  return work.filter(({isDone}) => isDone).map(({id}) => id)
}

describe('a journal ticks', () => {
  test('nothing while it tells of nothing', () => expect(doneAfter('A box from the tide line.')).toEqual([]))

  test('the step that a day’s heading names, and what came before it', () => {
    expect(doneAfter('## 2026-03-08 Scarf (2 h)')).toEqual([
      'mill',
      'rip',
      'plane',
      'mark-lines-stick',
      'saw-scarf',
    ])
  })

  test('the step that a ticked task names, not one that is still open', () => {
    expect(doneAfter('- [x] pulled the nails out of the box\n- [ ] sawed the scarf')).toEqual(['box-prepare'])
  })

  test('not what a heading puts off', () => {
    expect(doneAfter('## 2026-03-08 Milling, all but the frets')).toEqual(['mill'])
    expect(doneAfter('## 2026-03-08 Waiting for the oil')).toEqual([])
  })

  test('a finish by its own name', () => {
    expect(doneAfter('## 2026-03-08 Oil')).toContain('finish-oil')
    expect(doneAfter('## 2026-03-08 Oil')).not.toContain('finish-shellac')
  })

  test('the step that :step[...] names exactly, in a sentence or in a day’s heading', () => {
    expect(doneAfter('## 2026-03-08\n\n:step[saw the  SCARF], and tea.').at(-1)).toBe('saw-scarf')
    const groove = {id: 'groove-nut', kind: 'groove-nut', facts: {of: 'groove-nut'}} as never
    expect(stepCalled("Cut the nut's groove", [groove])).toBe(groove)
    expect(doneAfter('## 2026-03-08 :step[shape-head] (1 h)').at(-1)).toBe('shape-head')
    expect(doneAfter(':step[Set it up]').at(-1)).toBe('set-up')
    expect(doneAfter(':step[Scarf]\n\n:step[]\n\nat 10:step[x')).toEqual([])
  })

  test('everything but the setting up once it is strung up, and that too once it was measured', () => {
    const strung = front.replace('on the bench', 'strung up')
    expect(doneAfter('', strung).at(-1)).toBe('string')
    expect(doneAfter('', strung.replace('finish:', 'measured: {scale.length: 24 1/4}\nfinish:')).at(-1)).toBe(
      'set-up',
    )
  })
})

test.each([
  ['Burning the lines', ['burn*'], true],
  ['Glue-up of the neck', ['glue up'], true],
  ['Sandwiches', ['sand'], false],
  ['', ['sand'], false],
])('%j names %j: %j', (text, words, is) => expect(named(text)(words)).toBe(is))
