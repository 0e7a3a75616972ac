import {expect, test} from 'vitest'
import {changed} from '../../support/changed.ts'
import {planOf} from '../../support/plan-of.ts'
import {soundBuilds} from '../../support/sound-builds.ts'

const inch = 25.4

test('the push on the bridge balances the strings on both sides of it', () => {
  for (const frontMatter of Object.values(soundBuilds)) {
    const {bridge, action, anchors, tensionTotalN} = planOf(frontMatter).plan
    const crown: [number, number] = [bridge!.stationMm, action!.bridgeHeightMm]
    const nut: [number, number] = [0, action!.nutMm]
    const anchorHeight = frontMatter === soundBuilds.end ? -inch / 4 : 0
    const anchor: [number, number] = [anchors![0]!.stationMm, anchorHeight]
    // The force of a pulled string on what it bends over, as vectors: T along each of its two legs.
    const downN = (to: [number, number]) =>
      (tensionTotalN! * (crown[1] - to[1])) / Math.hypot(crown[0] - to[0], crown[1] - to[1])
    expect(bridge!.downforceN).toBeCloseTo(downN(nut) + downN(anchor), 9)
  }
})

// Trigonometry: 5/16 in over 2 1/2 in is 7.125°.
test('the break angle runs from the bridge down to the anchors', () => {
  expect(planOf(soundBuilds['on top']).plan.bridge!.breakAngleDeg).toBeCloseTo(7.125, 3)
})

test('without anchors behind the bridge, or their height, nothing is said', () => {
  for (const changes of [{'anchors.at': '20'}, {'anchors.height': ''}, {anchors: ''}] as Record<
    string,
    string
  >[]) {
    // Nothing is proposed for an instrument that exists.
    const {bridge} = planOf(changed(soundBuilds['on top'], {status: 'strung up', ...changes})).plan
    expect(bridge!.breakAngleDeg).toBeUndefined()
    expect(bridge!.downforceN).toBeUndefined()
  }
})
