import {readFileSync} from 'node:fs'
import {describe, expect, test} from 'vitest'
import {printedPlan} from '../../../plugins/words/printed-plan.ts'
import {planOf} from '../../support/plan-of.ts'

const inch = 25.4
const inches = (part: {lengthMm: number; widthMm: number; thicknessMm: number}) =>
  [part.lengthMm, part.widthMm, part.thicknessMm].map((mm) => Number((mm / inch).toFixed(6)))

const lantern = () => {
  const text = readFileSync('builds/lantern-pier/index.md', 'utf8')
  return planOf(text.split('---\n')[1]!).plan
}

describe('parts that the design implies', () => {
  // Worked out by hand from the file: 1/16 in off each face, 1/2 in at each end.
  test('the long example: laminations, strips, blocks, and what it lists', () => {
    const plan = lantern()
    const {cuts, neck} = plan
    const sizes = Object.fromEntries(cuts!.parts.map((part) => [part.id, inches(part)]))
    const blank = Number((neck!.budget!.blankMm! / inch).toFixed(6))
    expect(sizes).toEqual({
      'neck-lamination-1': [28.5, 1.75, 0.3125],
      'neck-lamination-2-strip-1': [blank, 0.666667, 0.75],
      'neck-lamination-2-strip-2': [blank, 0.666667, 0.75],
      'neck-lamination-2-strip-3': [blank, 0.666667, 0.75],
      'block-1': [5.5, 1.375, 0.4375],
      'block-2': [5.5, 1.375, 0.4375],
      'bridge-blank': [1.5, 0.5, 0.1875],
    })
    expect(cuts).toMatchObject({used: 3, bound: 3, proven: true, unplaced: [], bought: []})
    expect(printedPlan(plan).cuts!.parts.every(({why}) => why.length > 10)).toBe(true)
  })

  test('a scarf lengthens the stick by its saw cut and shortens it by the bend', () => {
    const {neck} = lantern()
    const {budget, scarf} = neck!
    // Exact trigonometry: t/sin θ − t/tan θ = t·tan(θ/2) is gained, kerf/sin θ lost, 1/2 in added at each end.
    const angle = (scarf!.angleDeg * Math.PI) / 180
    const gained = scarf!.thicknessMm * Math.tan(angle / 2)
    expect(budget!.blankMm).toBeCloseTo(budget!.lengthMm - gained + inch / 8 / Math.sin(angle) + inch, 9)
  })

  test('fingerboard, cap and head plate are there once they have a thickness', () => {
    const {plan} = planOf(`title: a
box: 10 x 7 x 2
scale: 24
strings: 3
neck: {width: 1 1/2, thickness: 3/4, cap: {wood: maple, thickness: 1/8}}
head: {length: 5, plate: {wood: walnut, thickness: 1/16}}
fingerboard: {wood: walnut, thickness: 1/4, from: 0, to: 18}`)
    const sizes = Object.fromEntries(plan.cuts!.parts.map((part) => [part.id, inches(part)]))
    const tail = plan.neck!.budget!.lengthMm / inch - 5
    expect(sizes.fingerboard).toEqual([19, 1.625, 0.375])
    expect(sizes['neck-cap']).toEqual([Number((tail + 0.25 + 1).toFixed(6)), 1.625, 0.25])
    expect(sizes['head-plate']).toEqual([5.75, 1.625, 0.1875])
  })

  test('strips of several woods come from those woods', () => {
    const {plan} = planOf(`title: a
box: 10 x 7 x 2
scale: 24
strings: 3
neck:
  width: 1 1/2
  laminations:
    - {thickness: 3/4, strips: 3, woods: [maple, walnut, maple]}`)
    const ofNeck = plan.cuts!.parts.filter(({of}) => of.startsWith('neck'))
    expect(ofNeck.map(({wood}) => wood)).toEqual(['maple', 'walnut', 'maple'])
  })

  test('a file without sizes has no cut list; one that lists no wood is met with silence', () => {
    expect(planOf('title: a').plan.cuts).toBeUndefined()
    const {plan, problems} = planOf(`title: Needle box
box: 10 1/8 x 7 x 2
scale: 24 1/4
strings: [D3 .030w, A3 .020w, D4 .013]`)
    expect(plan.cuts).toMatchObject({used: 0, pieces: [], hasStock: false})
    // For the neck, and for the blocks that are proposed.
    expect(plan.cuts!.bought).toHaveLength(2)
    expect(problems.filter(({rule}) => rule === 'part-unplaced')).toEqual([])
  })
})

describe('wood and pieces', () => {
  const cut = (wood: string, piece: string) =>
    planOf(`title: a
parts: [{name: rail, wood: ${wood}, length: 10, width: 1, thickness: 1/2}]
stock: [{id: A1, wood: ${piece}, length: 20, width: 3, thickness: 3/4}]`).plan.cuts!

  test.each([
    ['beech', 'american beech', 1],
    ['cherry', 'black cherry', 1],
    ['any', 'teak', 1],
    ['maple', 'sugar maple', 0],
    ['oak', 'white oak', 0],
    ['moonwood', 'Moon-wood', 0],
    ['moonwood', 'moonwood', 1],
    ['Moonwood', 'moonwood', 1],
  ])('%s out of %s: %i', (wood, piece, used) => {
    expect(cut(wood, piece).used).toBe(used)
  })

  test('several pieces alike are named one by one, and listed under one name', () => {
    const {cuts} = planOf(`title: a
parts: [{name: rail, wood: beech, length: 10, width: 3, thickness: 1/2, count: 3}]
stock: [{id: A1, wood: beech, length: 12, width: 3, thickness: 3/4, count: 6}]`).plan
    expect(cuts!.pieces.map(({id, stockId}) => [id, stockId])).toEqual([
      ['A1.1', 'A1'],
      ['A1.2', 'A1'],
      ['A1.3', 'A1'],
    ])
  })

  test('cuts lie within the clear length, measured from its end', () => {
    const {cuts} = planOf(`title: a
saw: {kerf: 1/8, trim: 1/2}
parts: [{name: rail, wood: beech, length: 10, width: 1, thickness: 1/2, count: 2}]
stock: [{id: A1, wood: beech, length: 40, width: 1, thickness: 3/4, clear: [6, 28]}]`).plan
    const [piece] = cuts!.pieces
    expect([piece!.fromMm / inch, piece!.toMm / inch]).toEqual([
      expect.closeTo(6.5, 9),
      expect.closeTo(27.5, 9),
    ])
    expect(piece!.strips[0]!.cuts.map(({atMm}) => atMm / inch)).toEqual([
      expect.closeTo(6.5, 9),
      expect.closeTo(16.625, 9),
    ])
  })
})
