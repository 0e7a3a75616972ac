import {describe, expect, test} from 'vitest'
import {planOf} from '../support/plan-of.ts'

const inch = 25.4
const rackPiece = (id: string) => ({
  id,
  wood: 'beech',
  lengthMm: 20 * inch,
  widthMm: 3 * inch,
  thicknessMm: 0.75 * inch,
})
const found = (frontMatter: string, rule: string, pieces = [rackPiece('A1')]) =>
  planOf(frontMatter, pieces).problems.filter((one) => one.rule === rule || one.severity !== 'remark')

const cut = (
  length: string,
  stock = '{id: A1, wood: beech, length: 20, width: 3, thickness: 3/4}',
) => `title: a
saw: {kerf: 1/8, trim: 1/2}
parts:
  - {name: rail, wood: beech, length: ${length}, width: 1, thickness: 1/2}
stock: [${stock}]`

describe('part-unplaced', () => {
  test('one mark of the ruler decides, and the length proposed mends it', () => {
    expect(found(cut('19'), 'part-unplaced')).toEqual([])
    const [problem, ...rest] = found(cut('19 1/32'), 'part-unplaced')
    expect(rest).toEqual([])
    expect(problem).toMatchObject({
      rule: 'part-unplaced',
      severity: 'fault',
      line: 5,
      column: 39,
      expected: ['19 in'],
    })
    expect(problem!.message).toContain('1/32 in of length')
    expect(found(cut(problem!.expected![0]!), 'part-unplaced')).toEqual([])
  })

  test('many parts alike are one problem', () => {
    const many = cut('19').replace('thickness: 1/2}', 'thickness: 1/2, count: 40}')
    expect(found(many, 'part-unplaced')).toHaveLength(1)
  })

  test('a part that the design implies is named at its own key', () => {
    const [problem] = found(
      `title: a
box: {length: 10, width: 7, depth: 2, blocks: [{wood: teak, along: 2, length: 1, width: 4, thickness: 3/8}]}
stock: [{id: A1, wood: beech, length: 20, width: 3, thickness: 3/4}]`,
      'part-unplaced',
    )
    expect(problem).toMatchObject({rule: 'part-unplaced', line: 3})
  })

  test('a build that names no wood is met with silence', () => {
    expect(
      found(
        'title: a\nparts: [{name: rail, wood: beech, length: 19, width: 1, thickness: 1/2}]',
        'part-unplaced',
      ),
    ).toEqual([])
  })
})

describe('pieces', () => {
  const take = (ids: string, more = 'started: 2026-01-02') => `title: a
${more}
take: [${ids}]
parts: [{name: rail, wood: beech, length: 10, width: 1, thickness: 1/2}]`

  test('piece-twice, with the place of the first', () => {
    expect(found(take('A1'), 'piece-twice')).toEqual([])
    expect(found(take('A1, A1'), 'piece-twice')).toMatchObject([
      {rule: 'piece-twice', line: 4, column: 12, cause: {line: 4, column: 8}},
    ])
  })

  test('piece-unknown proposes the nearest that is there', () => {
    const [problem, ...rest] = found(take('A2'), 'piece-unknown')
    expect(rest).toEqual([])
    expect(problem).toMatchObject({rule: 'piece-unknown', line: 4, column: 8, expected: ['A1']})
    expect(found(take(problem!.expected![0]!), 'piece-unknown')).toEqual([])
  })

  test('piece-gone: an offcut of a piece that is still whole', () => {
    expect(found(take('A1-a'), 'piece-gone')).toMatchObject([
      {rule: 'piece-gone', severity: 'fault', line: 4},
    ])
  })

  test('a build without a day reserves what it takes, and is planned with it', () => {
    const {plan, problems} = planOf(take('A1', 'summary: no day yet'), [rackPiece('A1')])
    expect(problems.filter(({severity}) => severity !== 'remark')).toEqual([])
    expect(plan.cuts!.pieces.map(({id}) => id)).toEqual(['A1'])
  })
})

describe('slips in the list of wood', () => {
  test('clear-outside: one mark of the ruler decides, and the end proposed mends it', () => {
    const stock = (to: string) =>
      `{id: A1, wood: beech, length: 20, width: 3, thickness: 3/4, clear: [0, ${to}]}`
    expect(found(cut('10', stock('20')), 'clear-outside')).toEqual([])
    const [problem, ...rest] = found(cut('10', stock('20 1/32')), 'clear-outside')
    expect(rest).toEqual([])
    expect(problem).toMatchObject({rule: 'clear-outside', severity: 'warning', line: 6, expected: ['20 in']})
    expect(found(cut('10', stock(problem!.expected![0]!)), 'clear-outside')).toEqual([])
    expect(found(cut('10', stock('0')), 'clear-outside').map(({rule}) => rule)).toContain('clear-outside')
  })

  test('size-missing names what is missing', () => {
    const [problem] = found(cut('10', '{id: A9, wood: beech, length: 20, width: 3}'), 'size-missing')
    expect(problem).toMatchObject({rule: 'size-missing', severity: 'warning', line: 6})
    expect(problem!.message).toContain('thickness')
  })

  test('too-many-parts', () => {
    const row = '  - {name: rail, wood: beech, length: 1, width: 1, thickness: 1/2, count: 10000}\n'
    expect(found(`title: a\nparts:\n${row.repeat(3)}`, 'too-many-parts')).toMatchObject([
      {rule: 'too-many-parts', severity: 'error', line: 4},
    ])
    expect(planOf(`title: a\nparts:\n${row.repeat(3)}`).plan.cuts).toBeUndefined()
  })
})
