import {expect, test} from 'vitest'
import {changed} from '../../support/changed.ts'
import {planOf} from '../../support/plan-of.ts'
import {soundBuilds} from '../../support/sound-builds.ts'

const inch = 25.4
const neckOf = (build: keyof typeof soundBuilds, changes: Record<string, string> = {}) =>
  planOf(changed(soundBuilds[build], changes)).plan.box!.neck!

test('a neck on top stands on it by its thickness', () => {
  expect(neckOf('on top').aboveTopMm).toBeCloseTo((13 / 16) * inch, 9)
  expect(neckOf('on top').backBelowTopMm).toBeCloseTo(0, 9)
  expect(neckOf('on top').notch).toBeUndefined()
})

test('a neck that runs through needs a notch as deep as it lies below the top’s face', () => {
  const needed = neckOf('through', {'box.notch': ''}).notch!
  expect(needed).toMatchObject({isGiven: false})
  expect(needed.depthMm).toBeCloseTo(inch, 9)
  expect(needed.widthMm).toBeCloseTo(1.625 * inch, 9)
  // A wall of 2 in less the back's 1/8 in, less the notch.
  expect(needed.leftMm).toBeCloseTo((2 - 1 / 8 - 1) * inch, 9)
})

test('the tallest neck through a box comes down to its back', () => {
  expect(neckOf('through').tallestMm).toBeCloseTo((2 - 1 / 8 + 1 / 4) * inch, 9)
})

test('a neck that tilts back on the top stands on a wedge of that angle', () => {
  const {shim} = neckOf('on top', {'neck.angle': '2'})
  expect(shim!.lengthMm).toBeCloseTo(10.125 * inch, 9)
  expect(shim!.thickMm).toBeCloseTo(10.125 * inch * Math.tan((2 * Math.PI) / 180), 9)
})

test('the string over the box’s edge lies on the line from nut to bridge', () => {
  // 1/8 in at the nut, 5/16 in at the bridge, 16 of 24 1/4 in along, over a face 13/16 in above the top.
  const inches = 1 / 8 + ((5 / 16 - 1 / 8) * 16) / 24.25 + 13 / 16
  expect(neckOf('on top').stringAboveTopMm).toBeCloseTo(inches * inch, 9)
})

test('on frets it starts a crown higher, since the nut’s height is above the crowns', () => {
  const {stringAboveTopMm} = neckOf('on top', {'scale.fretted': 'true', 'frets.crown': '0.037'})
  // The bridge stays 5/16 in above the face: 1/8 in and the crown at the nut, 16 of 24 1/4 in along.
  const inches = 0.162 + ((5 / 16 - 0.162) * 16) / 24.25 + 13 / 16
  expect(stringAboveTopMm).toBeCloseTo(inches * inch, 9)
})

// Laminations of 1 in under a board of 1/4 in: face to back 1 1/4 in, as the layers and the drawings have it.
test('laminations that carry a board lie by all of it in the box', () => {
  const {plan} = planOf(
    changed(soundBuilds.end, {
      'neck.laminations': '[{wood: sugar maple, thickness: 1}]',
      fingerboard: '{wood: black walnut, thickness: 1/4, to: 16}',
    }),
  )
  expect(plan.neck!.layup!.totalMm).toBeCloseTo(1.25 * inch, 9)
  expect(plan.box!.neck!.thicknessMm).toBeCloseTo(1.25 * inch, 9)
  expect(plan.box!.neck!.backBelowTopMm).toBeCloseTo(inch, 9)
  const carried = planOf(
    changed(soundBuilds['on top'], {
      'neck.wood': '',
      'neck.above-top': '',
      'neck.laminations': '[{wood: white ash, thickness: 13/16}]',
      fingerboard: '{wood: black walnut, thickness: 1/4, to: 16}',
    }),
  ).plan.box!.neck!
  expect(carried.aboveTopMm).toBeCloseTo((13 / 16 + 1 / 4) * inch, 9)
  expect(carried.backBelowTopMm).toBeCloseTo(0, 9)
})
