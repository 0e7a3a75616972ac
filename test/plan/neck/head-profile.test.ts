import {describe, expect, test} from 'vitest'
import {changed} from '../../support/changed.ts'
import {planOf} from '../../support/plan-of.ts'
import fc from '../../support/properties.ts'
import {soundNecks} from '../../support/sound-necks.ts'

const inch = 25.4
const deg = (rad: number) => (rad * 180) / Math.PI
const lean = (14 * Math.PI) / 180
const known = (changes: Record<string, string>) => planOf(changed(soundNecks.laminated, changes))
const neckOf = (changes: Record<string, string>) => known(changes).plan.neck!

// Side view by hand, in inches: strings 1/8 above the face at the nut, 5/16 above the head's face at posts 2, 4 1/2 and
// 3 1/4 along it. The stick under the 3/16 face slopes down at 14° from 1/4 behind the nut.
const straightToPost = (post: number, step: number, ledge = 0.25) => {
  const slope = post - ledge
  return deg(Math.atan((0.125 + step + slope * Math.sin(lean) - 0.3125) / (ledge + slope * Math.cos(lean))))
}

describe('a face that ends behind the nut is a step', () => {
  test.each(['-1/4', '-1/8', '0', '-0.2499', '-0.2501'])('wherever it ends: from %s', (from) => {
    const {stringAngleDeg, head, scarf} = neckOf({'neck.laminations.1.from': from})
    for (const [i, post] of [2, 4.5, 3.25].entries())
      expect(Math.abs(stringAngleDeg![i]! - straightToPost(post, 3 / 16))).toBeLessThan(1e-6)
    expect(head!.steps).toHaveLength(1)
    expect(scarf!.thicknessMm).toBeCloseTo((5 / 8) * inch, 9)
  })

  test('a cap is one too, and two layers are two', () => {
    const {stringAngleDeg, head} = neckOf({
      'neck.cap': '{wood: beech, thickness: 1/16}',
      'neck.thickness': '7/8',
      'neck.above-top': '7/8',
    })
    expect(head!.steps.reduce((sum, {downMm}) => sum + downMm, 0)).toBeCloseTo(0.25 * inch, 9)
    expect(stringAngleDeg![0]).toBeCloseTo(straightToPost(2, 1 / 4), 6)
  })

  test('what stands in a string’s way turns it at the nut: from 1/8 down to the face’s edge', () => {
    const changes = {'head.ledge': '1', 'neck.laminations.1.from': '-1'}
    const {stringAngleDeg, overEdge} = neckOf(changes)
    // To the post at 4 1/2 in it would go down by 14° and more; the edge 1 in behind leaves atan(1/8).
    expect(straightToPost(4.5, 3 / 16, 1)).toBeGreaterThan(deg(Math.atan(1 / 8)))
    expect(stringAngleDeg![1]).toBeCloseTo(deg(Math.atan(1 / 8)), 9)
    expect(overEdge!.map(({string}) => string)).toContain(1)
    expect(overEdge![0]!.atMm).toBeCloseTo(inch, 9)
  })
})

describe('a face that ends elsewhere is named', () => {
  test('in front of the nut', () => {
    const {problems} = known({'neck.laminations.1.from': '1/2'})
    expect(problems).toContainEqual(
      expect.objectContaining({
        rule: 'face-before-nut',
        severity: 'fault',
        message: expect.stringMatching(/1\/2 in in front of the nut line/),
      }),
    )
  })

  test('under the nut’s groove, or under a zero fret', () => {
    const {problems} = known({'neck.laminations.1.from': '0'})
    expect(problems).toContainEqual(expect.objectContaining({rule: 'face-before-nut', severity: 'warning'}))
    const zero = changed(soundNecks['four strings on a narrow nut'], {
      'nut.kind': 'zero-fret',
      'action.octave': '3/32',
    })
    expect(planOf(zero).problems).toEqual([])
    expect(planOf(changed(zero, {'fingerboard.from': '0'})).problems).toMatchObject([
      {rule: 'face-before-nut', severity: 'warning', expected: ['-1/4 in']},
    ])
  })

  test('over the slope, where it lies hollow', () => {
    const {problems} = known({'neck.laminations.1.from': '-1'})
    expect(problems).toContainEqual(
      expect.objectContaining({rule: 'face-over-slope', severity: 'warning', expected: ['-1/4 in']}),
    )
  })
})

/** What the head's profile decides, in mm, degrees and kg. */
function figures(changes: Record<string, string>): number[] {
  const {stringAngleDeg = [], scarf, head, budget, nutSeat, massKg, roundOver} = neckOf(changes)
  return [
    ...stringAngleDeg,
    scarf!.faceMm,
    scarf!.runMm,
    scarf!.thicknessMm,
    head!.thicknessMm,
    head!.comesToMm!,
    budget!.blankMm!,
    nutSeat!.leftMm,
    massKg!,
    roundOver!.fromMm,
  ]
}

test('a law: a hair more or less of one value changes nothing by a leap', () => {
  const quarter = fc.constantFrom('0', '-1/8', '-1/4', '-1/2')
  fc.assert(
    fc.property(
      quarter,
      quarter,
      fc.constantFrom('before scarf', 'after scarf', ''),
      fc.constantFrom('neck.laminations.1.from', 'head.ledge', 'neck.laminations.1.thickness'),
      (from, ledge, glued, key) => {
        const base: Record<string, string> = {
          'neck.laminations.1.from': from,
          'neck.laminations.1.glued': glued,
          'head.ledge': ledge.replace('-', ''),
          'neck.laminations.1.thickness': '3/16',
          'head.thickness': '',
          'neck.thickness': '',
          'neck.above-top': '',
        }
        const mm = (text: string) => {
          const [over, under = '1'] = text.split('/')
          return (Number(over) / Number(under)) * inch
        }
        const here = figures(base)
        for (const hairMm of [-1e-5, 1e-5]) {
          const moved = mm(base[key]!) + hairMm
          if (key === 'head.ledge' && moved < 0) continue
          const there = figures({...base, [key]: `${moved.toFixed(7)} mm`})
          for (const [i, figure] of there.entries()) expect(Math.abs(figure - here[i]!)).toBeLessThan(1e-3)
        }
      },
    ),
    {numRuns: 60},
  )
})
