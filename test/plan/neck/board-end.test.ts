import {describe, expect, test} from 'vitest'
import {planOf} from '../../support/plan-of.ts'
import fc from '../../support/properties.ts'

const inch = 25.4
const board = 'fingerboard: {wood: black walnut, thickness: 1/4}'
const made = (rows: string) =>
  planOf(`title: A\nneck: {length: 32, width: 1 5/8, thickness: 3/4}\nstrings: [D3 .030w, D4 .013]\n${rows}`)

/** Where a line lies: L·(1 − 2^(−n/12)), the law of stretched strings. */
const line = (scale: number, n: number) => scale * (1 - 2 ** (-n / 12))

describe('a fingerboard without an end', () => {
  test.each([
    ['stops at the box', `scale: {length: 24, lines: 12}\nbox: {length: 10, width: 7, depth: 2, at: 16}`, 16],
    [
      'goes on to its last line where that lies over the box',
      `scale: {length: 24, lines: 22, fretted: true}\nbox: {length: 10, width: 7, depth: 2, at: 16}`,
      line(24, 22) + 1 / 4,
    ],
    [
      'stops past its last line where there is no box',
      'scale: {length: 24, lines: 17}',
      line(24, 17) + 1 / 4,
    ],
    [
      'stops before the foot of a bridge that stands on the neck',
      'scale: {length: 24, lines: 0}\nbridge: {on: neck, foot: 1/2}',
      23.75,
    ],
  ])('%s', (_, rows, end) => {
    const {plan} = made(`${rows}\n${board}`)
    expect(plan.outline!.neck!.fingerboard!.toMm).toBeCloseTo(end * inch, 6)
    const assumed = plan.assumptions.find(({path}) => path === 'fingerboard.to')
    expect(assumed?.why).toMatch(/box, or 1\/4 in past the last line/)
    // Everything else follows: the layer, the part to cut, the step that glues it on.
    expect(plan.neck!.layup!.layers[0]!.toMm).toBeCloseTo(end * inch, 6)
    const part = plan.cuts?.parts.find(({of}) => of === 'fingerboard')
    if (part) expect(part.lengthMm).toBeCloseTo((end + 1) * inch, 6)
  })

  test('stops at the box where the neck runs through it, with as many frets as lie before', () => {
    const through = (rows: string) =>
      planOf(
        `title: A\nneck: {width: 1 5/8, thickness: 1 1/4, joins: through}\nbox: {length: 10, width: 7, depth: 2 1/2, at: 16}\nstrings: [D3 .030w, D4 .013]\n${rows}`,
      )
    const {plan, problems} = through(`scale: {length: 24, lines: 22, fretted: true}\n${board}`)
    expect(plan.outline!.neck!.fingerboard!.toMm).toBeCloseTo(16 * inch, 6)
    // By the law: of 24 in, line 19 lies 15.99 in from the nut, line 20 already 16.44.
    expect(line(24, 19)).toBeLessThan(16)
    expect(line(24, 20)).toBeGreaterThan(16)
    const told = problems.find(({rule}) => rule === 'fret-off-board')
    expect(told?.expected).toEqual(['19'])
    const mended = through(`scale: {length: 24, lines: 19, fretted: true}\n${board}`).problems
    expect(mended.map(({rule}) => rule)).not.toContain('fret-off-board')
    const over = through(`scale: {length: 24, lines: 19}\n${board.replace('1/4}', '1/4, to: 17}')}`).problems
    expect(over.find(({rule}) => rule === 'board-over-box')?.expected).toEqual(['16 in'])
  })

  test('leaves a bridge on the neck standing on the neck, lower by the board', () => {
    const heights = 'scale: {length: 24, lines: 12}\naction: {nut: 1/8, octave: 7/32}\nbridge: {on: neck}'
    const [without, withBoard] = [made(heights).plan, made(`${heights}\n${board}`).plan]
    expect(withBoard.bridge!.heightMm! - without.bridge!.heightMm!).toBeCloseTo(inch / 4, 6)
  })

  test('is not assumed where the file says it, nor where there is none', () => {
    for (const rows of ['scale: 24', `scale: 24\n${board.replace('1/4}', '1/4, to: 15}')}`])
      expect(made(rows).plan.assumptions.map(({path}) => path)).not.toContain('fingerboard.to')
  })

  test('a law: it holds every fret, reaches the box, and ends before the bridge', () => {
    fc.assert(
      fc.property(
        fc.integer({min: 1, max: 24}),
        fc.integer({min: 36, max: 80}),
        fc.integer({min: 5, max: 18}),
        (lines, scaleQuarters, at) => {
          const scale = scaleQuarters / 4
          const {plan, problems} = made(
            `scale: {length: ${scale}, lines: ${lines}, fretted: true}\nbox: {length: 10, width: 7, depth: 2, at: ${at}}\n${board}`,
          )
          const {toMm} = plan.outline!.neck!.fingerboard!
          expect(toMm).toBeLessThanOrEqual(scale * inch + 1e-6)
          expect(toMm + 1e-6).toBeGreaterThanOrEqual(line(scale, lines) * inch)
          if (at < scale) expect(toMm + 1e-6).toBeGreaterThanOrEqual(at * inch)
          expect(problems.map(({rule}) => rule)).not.toContain('fret-off-board')
        },
      ),
      {numRuns: 40},
    )
  })
})
