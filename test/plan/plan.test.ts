import {describe, expect, test} from 'vitest'
import {readBuild} from '../../plugins/build-file/read.ts'
import {planBuild} from '../../plugins/plan/plan.ts'
import {planOf} from '../support/plan-of.ts'

const four = 'title: Needle box\nbox: 10 1/8 x 7 x 2\nscale: 24 1/4\nstrings: [D3 .030w, A3 .020w, D4 .013]'

test('four lines give a whole plan', () => {
  const {plan, problems} = planOf(four)
  expect(problems.filter(({severity}) => severity !== 'remark')).toEqual([])
  expect(Object.keys(plan)).toEqual(
    expect.arrayContaining([
      'scale',
      'strings',
      'tensionTotalN',
      'bridge',
      'action',
      'neck',
      'box',
      'assumptions',
    ]),
  )
  expect(plan.scale?.lines).toHaveLength(19)
})

describe('what is left out is assumed aloud', () => {
  const assumed = (text: string) =>
    Object.fromEntries(planOf(text).plan.assumptions.map(({path, value}) => [path, value]))
  test('by common practice', () =>
    expect(assumed(four)).toMatchObject({
      units: 'in',
      ruler: '1/32',
      handed: 'right',
      publish: 'true',
      status: 'idea',
      play: 'slide',
      'scale.fretted': 'false',
      'scale.lines': '19',
      'scale.pattern': 'chromatic',
      'scale.temperament': 'equal',
      'reference-pitch': '440',
      'neck.joins': 'on top',
      'neck.width': '1 1/2',
      'neck.thickness': '3/4',
      'head.joint': 'scarf',
      'head.angle': '13',
      'head.length': '5 1/2',
      'head.ledge': '1/4',
      'box.sides': '3/16',
      'box.top.thickness': '1/8',
      'box.back': '1/8',
      'spacing.slots': 'centres',
      'spacing.nut': '1 1/8',
      'spacing.bridge': '1 1/8',
      'action.nut': '1/8',
      'action.octave': '7/32',
      'saw.kerf': '1/8',
      'saw.trim': '1/2',
      'saw.plane': '1/16',
      'strings.3.material': 'steel',
      'strings.1.wrap': 'nickel-plated steel',
    }))
  test.each([
    ['title: A\nunits: mm', {ruler: '0.5'}],
    ['title: A\nstarted: 2026-03-07', {status: 'on the bench'}],
    [
      'title: A\nscale: {length: 24, fretted: true}\nstrings: 3',
      {play: 'fingers', 'action.nut': '0.020', 'action.octave': '3/32'},
    ],
    ['title: A\nscale: {length: 24, pattern: diatonic}', {'scale.lines': '14'}],
    ['title: A\nplay: fingers\nscale: 24\nstrings: 3', {'action.nut': '1/32', 'action.octave': '1/8'}],
    ['title: A\nscale: 24\nstrings: 6', {'neck.width': '2', 'head.length': '6 3/4'}],
    ['title: A\nscale: 24\nstrings: 1', {'spacing.nut': '0', 'head.length': '4 1/4'}],
    ['title: A\nneck: {laminations: [{thickness: 3/16}, {thickness: 5/8}]}', {'neck.thickness': '13/16'}],
  ])('%s', (text, expected) => expect(assumed(text)).toMatchObject(expected))
  test('two of the three heights are enough', () => {
    expect(
      assumed('title: A\nscale: 24\nstrings: 3\nbridge: {height: 5/16}\naction: {nut: 1/8}'),
    ).not.toHaveProperty('action.octave')
    expect(
      assumed('title: A\nscale: 24\nstrings: 3\nbridge: {height: 5/16}\naction: {octave: 7/32}'),
    ).not.toHaveProperty('action.nut')
  })
  test('nothing is assumed that is given', () =>
    expect(assumed(`${four}\nneck: 1 5/8 x 13/16`)).not.toHaveProperty('neck.width'))
  test('a journal sets units, ruler and saw for all', () => {
    const journal = {
      units: {value: 'mm' as const, text: 'mm', place: {line: 1, column: 1, endLine: 1, endColumn: 3}},
    }
    const {build} = readBuild('---\ntitle: A\n---\n', {slug: 'a', journal})
    expect(planBuild(build, {journal, pieces: []}).units).toBe('mm')
  })
})

test('the same build gives the same plan, to the byte', () => {
  const once = JSON.stringify(planOf(four).plan)
  expect(JSON.stringify(planOf(four).plan)).toBe(once)
})

test('two strings of 640 mm have their octave at 320 and their pull by μ(2Lf)²', () => {
  const {plan} = planOf('title: A\nunits: mm\nscale: 640\nstrings: [A3 0.5 mm, {note: E4, gauge: 0.3 mm}]')
  expect(plan.scale?.lines?.[11]?.fromNutMm).toBe(320)
  for (const string of plan.strings ?? []) {
    const law = string.massPerLengthKgM! * (2 * 0.64 * string.frequencyHz) ** 2
    expect(Math.abs(string.tensionN! - law) / law).toBeLessThan(1e-9)
  }
})
