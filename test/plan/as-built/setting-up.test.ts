import {describe, expect, test} from 'vitest'
import {bridgeMoveMm} from '../../../plugins/plan/as-built/setting-up.ts'
import {setupFaults} from '../../../plugins/tables/setup-faults.ts'
import {changed} from '../../support/changed.ts'
import {planOf, printedOf} from '../../support/plan-of.ts'
import fc from '../../support/properties.ts'

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
  // By hand: 609.6 mm · 4 / 1731 = 1.4087 mm; twice that for 8 cents.
  test('moves by L·cents/1731 at the octave, away from the nut where it is sharp', () => {
    expect(bridgeMoveMm(4, 609.6)).toBeCloseTo((609.6 * 4) / 1731.234, 4)
    expect(moves('{cents: {12: 8}}')).toMatchObject([{amountMm: expect.closeTo(2.817, 3)}])
    expect(moves('{cents: {12: 8}}')[0]!.does).toContain('away from the nut')
    expect(moves('{cents: {12: -8}}')).toMatchObject([{amountMm: expect.closeTo(-2.817, 3)}])
    expect(moves('{cents: {12: -8}}')[0]!.does).toContain('towards the nut')
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
    expect(moves('{cents: {7: 2, 12: 8}}')).toHaveLength(1)
    expect(moves('{cents: {7: 2, 12: 8}}')[0]!.find).toContain('Line 12')
    expect(moves('{cents: {7: 8, 12: 2}}')).toEqual([])
  })

  // By hand: 17/64 in is 3/64 in over 7/32 in, and twice that is 3/32 in, 2.38125 mm.
  test('drops by twice what the strings are too high over the octave', () => {
    expect(moves('{action.octave: 17/64}')).toMatchObject([{amountMm: expect.closeTo(2.38125, 9)}])
    expect(moves('{action.octave: 17/64}')[0]!.does).toBe('Lower the bridge by 3/32 in, twice as much.')
    expect(moves('{action.octave: 11/64}')[0]!.does).toContain('Raise the bridge by 3/32 in')
  })

  test('waits for the nut, where both are off', () => {
    const both = moves('{action.nut: 5/32, action.octave: 17/64}')
    expect(both.map(({amountMm}) => amountMm)).toEqual([
      expect.closeTo(25.4 / 32, 9),
      expect.closeTo(2.38125, 9),
    ])
    expect(both[1]!.does).toContain('measure again')
  })

  test('goes by the length where no pitch was read', () => {
    expect(moves('{scale.length: 24 1/16}')).toMatchObject([{amountMm: expect.closeTo(-25.4 / 16, 9)}])
    expect(moves('{scale.length: 24 1/16, cents: {12: 0}}')).toEqual([])
  })

  // The page says of each of these that it is allowed, or that ears do not notice it.
  test.each([
    '{scale.length: 24 1/32}',
    '{cents: {12: 5}}',
    '{cents: {12: -4}}',
    '{action.octave: 15/64}',
    '{action.nut: 9/64}',
  ])('stays where %s is allowed', (measured) => expect(moves(measured)).toEqual([]))
})

describe('a bridge that is set back', () => {
  const fretted = {'scale.fretted': 'true', action: '{nut: 0.02, octave: 3/32}', play: 'fingers'}
  const {plan} = planOf(changed(build, fretted))
  const {firstMm, lastMm, middleMm} = plan.bridge!.setAt!
  const {setbacks, slantedSaddle} = plan.bridge!
  const measured = (values: string) =>
    setUp({...fretted, measured: values}).filter(({cause}) => cause === undefined)
  const inches = (mm: number) => (mm / 25.4).toFixed(4)

  test('stands off its line where a straight saddle fits best', () => {
    expect(firstMm).toBeCloseTo(609.6 + slantedSaddle!.firstMm, 9)
    expect(lastMm).toBeCloseTo(609.6 + slantedSaddle!.lastMm, 9)
    for (const {setbackMm} of setbacks!) expect(Math.abs(609.6 + setbackMm - middleMm)).toBeLessThan(4)
    expect(planOf(build).plan.bridge!.setAt).toEqual({firstMm: 609.6, lastMm: 609.6, middleMm: 609.6})
  })

  test('is not moved back to its line', () => {
    for (const mm of [firstMm, middleMm, lastMm])
      expect(measured(`{scale.length: ${inches(mm)}}`)).toEqual([])
    expect(measured('{scale.length: 24}')).toMatchObject([
      {amountMm: expect.closeTo(middleMm - 609.6, 2), does: expect.stringContaining('away from the nut')},
    ])
  })

  // What the model leaves over at the twelfth fret once every string is set back is in tune enough to stay.
  test('stays where the tuner reads what the plan leaves over', () => {
    const left = plan.intonation!.map(({compensatedCents}) => compensatedCents[11]!)
    const mean = left.reduce((sum, one) => sum + one, 0) / left.length
    expect(measured(`{cents: {12: ${mean.toFixed(1)}}}`)).toEqual([])
    // By hand: 10 cents at the octave of 609.6 mm are 3.52 mm.
    const [move] = measured(`{cents: {12: ${(mean + 10).toFixed(1)}}}`)
    expect(move!.amountMm).toBeCloseTo(3.52, 1)
  })

  test('is what the work order sets', () => {
    const step = printedOf(changed(build, fretted)).work!.find(({id}) => id === 'string')!
    expect(step.does).toContain('Bridge set back: 24')
    expect(printedOf(build).work!.find(({id}) => id === 'string')!.does).toContain('Bridge on its line')
  })

  // Whatever is drawn, an instrument that was made exactly as planned is left alone.
  test('is left alone on whatever is made as planned', () => {
    fc.assert(
      fc.property(
        fc.integer({min: 20, max: 28}),
        fc.constantFrom('0.01', '0.02', '0.03'),
        fc.constantFrom('5/64', '3/32', '1/8'),
        fc.boolean(),
        (inch, nut, octave, isFretted) => {
          const text = changed(build, {
            'scale.length': `${inch}`,
            'scale.fretted': `${isFretted}`,
            action: `{nut: ${nut}, octave: ${octave}}`,
          })
          const {bridge, intonation = []} = planOf(text).plan
          const cents = intonation.reduce((sum, one) => sum + one.compensatedCents[11]!, 0) / 3
          const made = `{scale.length: ${inches(bridge!.setAt!.middleMm)}, action.nut: ${nut}, action.octave: ${octave}`
          for (const read of [`${made}}`, `${made}, cents: {12: ${cents.toFixed(1)}}}`]) {
            const found = planOf(changed(text, {measured: read}))
            expect(found.plan.settingUp!.filter((one) => 'move' in one)).toEqual([])
            expect(found.problems.filter(({rule}) => rule === 'measure-out-of-tolerance')).toEqual([])
          }
        },
      ),
      {numRuns: 25},
    )
  }, 30_000)
})

describe('the nut', () => {
  test.each([
    ['rod', 'Bed the rod 1/16 in deeper'],
    ['flat', 'Cut every slot of the nut 1/16 in deeper'],
    ['zero-fret', 'Dress the zero fret down by 1/16 in'],
  ])('of kind %s: %s', (kind, does) => {
    const [move] = setUp({nut: `{kind: ${kind}}`, measured: '{action.nut: 3/16}'})
    expect(move!.does).toContain(does)
  })
})

describe('faults', () => {
  const faults = (changes: Record<string, string>) => setUp(changes).filter(({cause}) => cause !== undefined)
  // Nothing is proposed for an instrument that exists.
  const likely = (changes: Record<string, string>) =>
    faults({status: 'strung up', ...changes})
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
    expect(likely({'scale.fretted': 'true', play: 'fingers', 'action.relief': '-1/64'})).toContain(
      setupFaults['back-bow'].fault,
    )
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
