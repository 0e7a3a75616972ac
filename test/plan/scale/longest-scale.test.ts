import {describe, expect, test} from 'vitest'
import type {Piece} from '../../../plugins/plan/kit/context.ts'
import {planOf} from '../../support/plan-of.ts'
import fc from '../../support/properties.ts'

const inch = 25.4
const longest = (frontMatter: string, pieces?: Piece[]) => planOf(frontMatter, pieces).plan.scale?.longestMm

// Lengths by adding up a stick: head, string, and what lies past the bridge.
describe('the longest string on a neck of a given length', () => {
  const build = 'title: Long\nbox: 10 x 7 x 2\nstrings: 3\nneck: {length: 36}'

  test('less the head, 3 in and 1 1/4 for every two strings begun, and a fifth of the box', () => {
    expect(longest(build)).toBeCloseTo((36 - 5.5 - 2) * inch, 9)
  })
  test('less what the file says of head and tail', () => {
    const own = `${build}\nhead: {length: 6}\nbridge: {from-tail: 1 7/8}`
    expect(longest(own)).toBeCloseTo((36 - 6 - 1.875) * inch, 9)
  })
  test('a box that is placed says where the bridge lies, if the stick reaches', () => {
    expect(
      longest(build.replace('box: 10 x 7 x 2', 'box: {length: 10, width: 7, depth: 2, at: 16}')),
    ).toBeCloseTo(24 * inch, 9)
    expect(
      longest(build.replace('box: 10 x 7 x 2', 'box: {length: 10, width: 7, depth: 2, at: 24}')),
    ).toBeUndefined()
  })
  test('a neck that ends at the box spans all but the box', () => {
    const end = build.replace('length: 36', 'length: 20, joins: end')
    expect(longest(end)).toBeCloseTo((20 - 5.5 + 8) * inch, 9)
  })
  test('nothing to say where a length is given, or a stick too short for any string', () => {
    expect(longest(`${build}\nscale: 24`)).toBeUndefined()
    expect(longest(build.replace('36', '9'))).toBeUndefined()
    expect(longest('title: Long\nbox: 10 x 7 x 2\nstrings: 3')).toBeUndefined()
  })

  test('a build of that length has nothing to spare and nothing too short', () => {
    const sizes = fc.record({
      neck: fc.integer({min: 400, max: 1500}),
      box: fc.integer({min: 100, max: 400}),
      joins: fc.constantFrom('on top', 'through', 'end'),
      strings: fc.integer({min: 1, max: 6}),
    })
    fc.assert(
      fc.property(sizes, ({neck, box, joins, strings}) => {
        const text = (scale = '') =>
          `title: Long\nunits: mm\n${scale}box: ${box} x 180 x 50\nstrings: ${strings}\nneck: {length: ${neck}, joins: ${joins}}`
        const mm = longest(text())
        if (mm === undefined || mm > 2000) return
        const {plan, problems} = planOf(text(`scale: ${mm}\n`))
        expect(plan.neck!.budget!.spareMm).toBeCloseTo(0, 6)
        expect(problems.filter((problem) => problem.rule === 'neck-too-short')).toEqual([])
      }),
      {numRuns: 50},
    )
  })
})

describe('the longest string that the wood at hand allows', () => {
  const build = 'title: Stick\nbox: 10 x 7 x 2\nstrings: 3'
  const stick = '{id: A, wood: white ash, length: 40, width: 3, thickness: 3/4}'
  const piece = (id: string, lengthIn: number, widthIn = 3, thicknessIn = 0.75): Piece => ({
    id,
    wood: 'white ash',
    lengthMm: lengthIn * inch,
    widthMm: widthIn * inch,
    thicknessMm: thicknessIn * inch,
  })

  test('a build of that length takes the whole of its blank', () => {
    const mm = longest(`${build}\nstock: [${stick}]`)!
    const {plan} = planOf(`${build}\nscale: ${mm} mm\nstock: [${stick}]`)
    // 1/2 in is trimmed off each end.
    expect(plan.neck!.budget!.blankMm).toBeCloseTo(39 * inch, 6)
  })
  test('a clear length counts, not the whole one', () => {
    const clear = stick.replace('thickness', 'clear: [2, 38], thickness')
    expect(longest(`${build}\nstock: [${clear}]`)).toBeCloseTo(
      longest(`${build}\nstock: [${stick}]`)! - 4 * inch,
      6,
    )
  })
  test('the rack where the build lists nothing; what it takes where it takes something', () => {
    const own = longest(`${build}\nstock: [${stick}]`)!
    expect(longest(build, [piece('A', 40), piece('B', 30)])).toBeCloseTo(own, 6)
    expect(longest(`${build}\nstarted: 2026-03-07\ntake: [B]`, [piece('A', 40), piece('B', 30)])).toBeCloseTo(
      own - 10 * inch,
      6,
    )
  })
  test('a sheet or a lath that no neck comes out of does not count', () => {
    const own = longest(build, [piece('A', 40)])!
    expect(longest(build, [piece('A', 40), piece('B', 96, 48, 0.125), piece('C', 96, 1)])).toBe(own)
  })
})
