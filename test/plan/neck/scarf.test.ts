import {describe, expect, test} from 'vitest'
import {changed} from '../../support/changed.ts'
import {planOf} from '../../support/plan-of.ts'
import fc from '../../support/properties.ts'
import {soundBuilds} from '../../support/sound-builds.ts'
import {soundNecks} from '../../support/sound-necks.ts'

const inch = 25.4
const planned = (changes: Record<string, string>, base: string = soundNecks.plain) =>
  planOf(changed(base, changes)).plan.neck!

// Face t/sin θ and run t/tan θ for t = 19.05 mm (3/4 in), by trigonometry: θ, slope 1 in, face by thickness, face, run.
describe.each([
  [10, 5.671, 5.7588, 109.7, 108.04],
  [12, 4.705, 4.8097, 91.63, 89.62],
  [13, 4.331, 4.4454, 84.69, 82.51],
  [14, 4.011, 4.1336, 78.74, 76.41],
  [15, 3.732, 3.8637, 73.6, 71.1],
  [16, 3.487, 3.628, 69.11, 66.44],
  [17, 3.271, 3.4203, 65.16, 62.31],
])('a scarf at %d°', (angle, slope, byThickness, faceMm, runMm) => {
  test('has the face and the run of trigonometry', () => {
    const scarf = planned({'head.angle': `${angle}`, 'head.length': '6 1/4'}).scarf!
    expect(scarf.slope).toBeCloseTo(slope, 3)
    expect(scarf.faceMm / scarf.thicknessMm).toBeCloseTo(byThickness, 4)
    expect(Math.abs(scarf.faceMm - faceMm)).toBeLessThan(0.006)
    expect(Math.abs(scarf.runMm - runMm)).toBeLessThan(0.006)
    // Glue area over the stick's cross-section is 1/sin θ as well.
    expect(scarf.glueAreaMm2 / (38.1 * 19.05)).toBeCloseTo(byThickness, 4)
  })
})

// Structural slopes of 1 in 8, 10 and 12, as the Wood Handbook has them (FPL-GTR-190, ch. 10), by trigonometry.
test.each([
  [7.125, 8, 8.0623],
  [5.711, 10, 10.0499],
  [4.764, 12, 12.0416],
])('%d° is 1 in %d', (angle, slope, byThickness) => {
  const scarf = planned({'head.angle': `${angle}`, 'head.length': '6 1/4'}).scarf!
  expect(Math.abs(scarf.slope / slope - 1)).toBeLessThan(1e-4)
  expect(Math.abs(scarf.faceMm / scarf.thicknessMm / byThickness - 1)).toBeLessThan(1e-4)
})

test('what is glued on after the scarf is not sawn', () => {
  const {scarf} = planned({}, soundNecks.laminated)
  expect(scarf!.thicknessMm).toBeCloseTo((5 / 8) * inch, 9)
  expect(scarf!.faceMm).toBeCloseTo(((5 / 8) * inch) / Math.sin((14 * Math.PI) / 180), 9)
})

/** The area of a side view given by its corners. */
function shoelace(points: readonly (readonly [number, number])[]): number {
  return Math.abs(
    points.reduce((sum, [x, y], i) => {
      const [u, v] = points[(i + 1) % points.length]!
      return sum + (x * v - u * y) / 2
    }, 0),
  )
}

describe('the stick to start from', () => {
  // Nothing but the kerf is lost: the side view of the finished, bent stick, drawn corner by corner, has the area of
  // the straight one. The sawn piece is turned over, so both are as thick all along.
  test('has as much wood as the bent neck and its saw cut', () => {
    fc.assert(
      fc.property(
        fc.integer({min: 14, max: 36}),
        fc.integer({min: 5, max: 20}),
        fc.integer({min: 0, max: 16}),
        (thirtySeconds, angle, ledge) => {
          const t = (thirtySeconds / 32) * inch
          const {budget} = planned({
            'neck.thickness': `${thirtySeconds}/32`,
            'head.angle': `${angle}`,
            'head.ledge': `${ledge}/32`,
            'head.length': '8',
          })
          const lean = (angle * Math.PI) / 180
          const headMm = 8 * inch - (ledge / 32) * inch
          const stickMm = budget!.lengthMm - headMm
          const turn = t * Math.tan(lean / 2)
          const end = (along: number, deep: number) =>
            [
              stickMm + along * Math.cos(lean) - deep * Math.sin(lean),
              -along * Math.sin(lean) - deep * Math.cos(lean),
            ] as const
          const bent = [
            [0, 0],
            [stickMm, 0],
            end(headMm, 0),
            end(headMm, t),
            [stickMm - turn, -t],
            [0, -t],
          ] as const
          const kerfMm = ((1 / 8) * inch) / Math.sin(lean)
          expect(budget!.blankMm! - inch - kerfMm).toBeCloseTo(shoelace(bent) / t, 6)
        },
      ),
      {numRuns: 60},
    )
  })

  test('of a straight head is the finished length and 1/2 in at each end', () => {
    const {budget} = planned({}, soundNecks['straight head'])
    expect(budget!.blankMm).toBeCloseTo(34.5 * inch, 9)
  })

  test('of a head sawn out of the solid is shorter as it leans, and thick enough for it', () => {
    const {budget} = planned({}, soundNecks['head out of the solid'])
    const lean = (10 * Math.PI) / 180
    expect(budget!.blankMm).toBeCloseTo((27.25 + 6.25 * Math.cos(lean) + 1) * inch, 9)
    expect(budget!.blankThicknessMm).toBeCloseTo(
      (6.25 * Math.sin(lean) + (9 / 16) * Math.cos(lean)) * inch,
      9,
    )
  })
})

describe('how the length is shared', () => {
  test('head, scale, what the anchors need and what is left over make the whole', () => {
    const {budget} = planned({}, soundBuilds['on top'])
    expect(budget!.headMm).toBeCloseTo(6.25 * inch, 9)
    expect(budget!.scaleMm).toBeCloseTo(24.25 * inch, 9)
    // Anchors at 26 3/4 in, 5/16 in bodies, and 1/4 in behind them.
    expect(budget!.tailMm).toBeCloseTo((26.75 - 24.25 + 5 / 32 + 1 / 4) * inch, 9)
    expect(budget!.headMm + budget!.scaleMm + budget!.tailMm + budget!.spareMm!).toBeCloseTo(
      budget!.lengthMm,
      9,
    )
  })

  test('a length left out ends 1 in past the box, or past anchors further out', () => {
    const assumed = planned({'neck.length': ''}, soundBuilds['on top']).budget!
    expect(assumed.lengthMm).toBeCloseTo((6.25 + 26.75 + 5 / 32 + 1 / 4) * inch, 9)
    const bare = planned({'neck.length': '', 'anchors.at': '26 1/4'}, soundBuilds['on top']).budget!
    expect(bare.lengthMm).toBeCloseTo((6.25 + 26.125 + 1) * inch, 9)
  })

  test('a neck that ends at the box spans the scale only so far', () => {
    const {budget} = planned({}, soundBuilds.end)
    expect(budget!.scaleMm).toBeCloseTo(16 * inch, 9)
    expect(budget!.tailMm).toBe(0)
    expect(budget!.spareMm).toBeCloseTo(0, 9)
  })
})

describe('each string’s own angle behind the nut', () => {
  // Long example by hand: 1/8 in above the face at the nut, 5/16 in above the head's face at the post; a post at 2 in
  // lies 1 3/4 in down a 14° slope that starts 1/4 in behind the nut, in the stick under the 3/16 in face that ends there.
  const faceIn = 3 / 16
  test('follows the head’s face', () => {
    const lean = (14 * Math.PI) / 180
    const expected = [2, 4.5, 3.25].map((post) => {
      const slope = post - 0.25
      const drop = 0.125 + faceIn + slope * Math.sin(lean) - 0.3125
      return (Math.atan(drop / (0.25 + slope * Math.cos(lean))) * 180) / Math.PI
    })
    const {stringAngleDeg, scarf} = planned({}, soundNecks.laminated)
    for (const [i, deg] of expected.entries()) expect(stringAngleDeg![i]).toBeCloseTo(deg, 9)
    expect(scarf!.stringAngleDeg).toEqual(stringAngleDeg)
  })

  test('falls by the drop of a straight head', () => {
    const {stringAngleDeg} = planned({}, soundNecks['straight head'])
    expect(stringAngleDeg![0]).toBeCloseTo((Math.atan((0.125 + 0.25 - 0.3125) / 2) * 180) / Math.PI, 9)
  })
})
