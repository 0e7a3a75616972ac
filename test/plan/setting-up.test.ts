import {describe, expect, test} from 'vitest'
import {bridgeMoveMm} from '../../plugins/plan/setting-up.ts'
import {setupFaults} from '../../plugins/tables/setup-faults.ts'
import {changed} from '../support/changed.ts'
import {planOf, printedOf} from '../support/plan-of.ts'
import fc from '../support/properties.ts'

const build = `
title: Slack water
scale: {length: 24, fretted: false}
strings: [D3 .030w, A3 .020w, D4 .013]
action: {nut: 1/8, octave: 7/32}
neck: {width: 1 1/2, thickness: 3/4, wood: white ash, joins: on top}
box: {wood: basswood, length: 10, width: 7, depth: 2, top: 1/8}
`
const setUp = (changes: Record<string, string>) => printedOf(changed(build, changes)).settingUp ?? []
const moves = (measured: string) => setUp({measured}).filter(({cause}) => cause === undefined)

describe('the bridge', () => {
  // By hand: 609.6 mm · 4 / 1731 = 1.4087 mm.
  test('moves by L·cents/1731 at the octave, away from the nut where it is sharp', () => {
    expect(bridgeMoveMm(4, 609.6)).toBeCloseTo((609.6 * 4) / 1731.234, 4)
    expect(moves('{cents: {12: 4}}')).toMatchObject([{amountMm: expect.closeTo(1.4085, 3)}])
    expect(moves('{cents: {12: 4}}')[0]!.does).toContain('away from the nut')
    expect(moves('{cents: {12: -4}}')).toMatchObject([{amountMm: expect.closeTo(-1.4085, 3)}])
    expect(moves('{cents: {12: -4}}')[0]!.does).toContain('towards the nut')
  })

  // Against the definition of cents itself: the line stays, the bridge moves, the ratio of lengths is read again.
  test('moves so that the line that was read is in tune', () => {
    fc.assert(
      fc.property(
        fc.double({min: 300, max: 900, noNaN: true}),
        fc.double({min: -8, max: 8, noNaN: true}),
        fc.integer({min: 5, max: 19}),
        (lengthMm, sharp, semitones) => {
          const stopMm = lengthMm * 2 ** (-(semitones * 100) / 1200)
          const movedMm = bridgeMoveMm(sharp, lengthMm, semitones * 100)
          const after = 1200 * Math.log2((lengthMm + movedMm) / (stopMm + movedMm)) + sharp
          expect(Math.abs(after - semitones * 100)).toBeLessThan(0.2)
        },
      ),
    )
  })

  test('goes by the line nearest the octave', () => {
    expect(moves('{cents: {7: 2, 12: 4}}')).toHaveLength(1)
    expect(moves('{cents: {7: 2, 12: 4}}')[0]!.find).toContain('Line 12')
  })

  // By hand: 15/64 in is 1/64 in over 7/32 in, and twice that is 1/32 in, 0.79375 mm.
  test('drops by twice what the strings are too high over the octave', () => {
    expect(moves('{action.octave: 15/64}')).toMatchObject([{amountMm: expect.closeTo(0.79375, 9)}])
    expect(moves('{action.octave: 15/64}')[0]!.does).toBe('Lower the bridge by 1/32 in, twice as much.')
    expect(moves('{action.octave: 13/64}')[0]!.does).toContain('Raise the bridge by 1/32 in')
  })

  test('waits for the nut, where both are off', () => {
    const both = moves('{action.nut: 5/32, action.octave: 15/64}')
    expect(both.map(({amountMm}) => amountMm)).toEqual([
      expect.closeTo(25.4 / 32, 9),
      expect.closeTo(25.4 / 32, 9),
    ])
    expect(both[1]!.does).toContain('measure again')
  })

  test('goes by the length where no pitch was read', () => {
    expect(moves('{scale.length: 24 1/16}')).toMatchObject([{amountMm: expect.closeTo(-25.4 / 16, 9)}])
    expect(moves('{scale.length: 24 1/16, cents: {12: 0}}')).toEqual([])
  })
})

describe('faults', () => {
  const faults = (changes: Record<string, string>) => setUp(changes).filter(({cause}) => cause !== undefined)
  const likely = (changes: Record<string, string>) =>
    faults(changes)
      .filter(({because}) => because)
      .map(({find}) => find)

  test('are only those that can happen', () => {
    const found = (changes: Record<string, string>) => faults(changes).map(({find}) => find)
    expect(found({})).not.toContain(setupFaults['one-fret-buzz'].fault)
    expect(found({})).not.toContain(setupFaults.howl.fault)
    expect(found({'scale.fretted': 'true', pickup: 'piezo'})).toEqual(
      expect.arrayContaining([setupFaults['one-fret-buzz'].fault, setupFaults.howl.fault]),
    )
    expect(found({play: 'fingers'})).not.toContain(setupFaults['slide-rattles'].fault)
  })

  test('that these numbers make likely come first', () => {
    expect(likely({})).toEqual([])
    expect(likely({action: '{nut: 1/16, octave: 1/8}'})).toEqual([
      setupFaults['open-buzz'].fault,
      setupFaults['slide-rattles'].fault,
    ])
    expect(faults({action: '{nut: 1/16, octave: 1/8}'})[0]!.because).toContain('1/16 in')
    // D3 in equal temperament, A4 440 Hz (ISO 16): 146.83 Hz.
    expect(likely({measured: '{resonance: 147}'})).toEqual([setupFaults['dead-note'].fault])
    expect(setUp({measured: '{resonance: 147}'})[0]!.because).toContain('the open D3')
  })

  test('need strings and a scale', () => {
    expect(planOf('title: Slack water').plan.settingUp).toBeUndefined()
  })
})
