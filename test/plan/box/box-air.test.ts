import {describe, expect, test} from 'vitest'
import {airResonanceHz, wallsGive} from '../../../plugins/plan/box/box-air.ts'
import {planOf} from '../../support/plan-of.ts'
import fc from '../../support/properties.ts'
import {soundBuilds} from '../../support/sound-builds.ts'

describe('the note of the air in a box', () => {
  // J. Woodhouse, Euphonics §4.2.1 eq. (8), c = 343 m/s; several texts round the two flanged ends, 16/(3π), to 1.70 r,
  // which gives 138.966 and 196.527 Hz.
  test('3 L behind a 25 mm hole in 4 mm', () => {
    expect(airResonanceHz(3, 4, [25])).toBeCloseTo(138.966, 0)
    expect(airResonanceHz(3, 4, [25, 25])).toBeCloseTo(196.527, 0)
    expect(airResonanceHz(3, 4, [25, 25])! / airResonanceHz(3, 4, [25])!).toBeCloseTo(Math.SQRT2, 12)
  })

  // "L + 1.7 r" for two flanged ends, as several texts round it: 151.481 Hz for a top of no thickness.
  test('a top of no thickness, within the texts’ rounding of 8/(3π)', () => {
    expect(airResonanceHz(3, 0, [25])).toBeCloseTo(151.481, 0)
  })

  // Rayleigh's exact hole in a plate of no thickness, L = πr/2 (from memory): 157.588 Hz; a flanged piston stays below.
  test('a flanged piston stays below Rayleigh’s exact hole, by less than 5 %', () => {
    const flanged = airResonanceHz(3, 0, [25])!
    expect(flanged).toBeLessThan(157.588)
    expect(flanged).toBeGreaterThan(157.588 * 0.95)
  })

  // D. Politzer, "Sound Hole Sound", arXiv:1505.04787: N equal holes of the same total area carry √N more.
  test('in a thin top the flow goes with the size of the holes, not their area', () => {
    const one = airResonanceHz(2, 0, [40])!
    const four = airResonanceHz(2, 0, [20, 20, 20, 20])!
    expect((four / one) ** 2).toBeCloseTo(2, 9)
  })

  // UNSW, Physics of the Helmholtz resonator (from memory): 1 L, 3 cm², neck 5 cm give 130 Hz without end corrections.
  test('a bottle lies below the textbook’s figure by its end corrections', () => {
    const hz = airResonanceHz(1, 50, [2 * Math.sqrt(300 / Math.PI)])!
    expect(hz).toBeLessThan(130)
    expect(hz).toBeGreaterThan(110)
  })

  // OpenStax University Physics vol. 1, §17.2: c = 331·√(1 + T/273), 343 m/s at 20 °C.
  test('sound at 20 °C goes at 343 m/s', () => {
    expect(331 * Math.sqrt(1 + 20 / 273)).toBeCloseTo(343, 0)
  })

  // Nia et al., Proc. R. Soc. A 471, 20140905 (2015): about a semitone lower.
  test('thin walls lower it by about a semitone', () => {
    expect(-1200 * Math.log2(wallsGive)).toBeCloseTo(100, -1)
  })

  test('a larger hole, a thinner top and a smaller box raise it', () => {
    const size = fc.double({min: 0.5, max: 100, noNaN: true})
    fc.assert(
      fc.property(size, size, size, (volumeL, topMm, diameterMm) => {
        const hz = airResonanceHz(volumeL, topMm, [diameterMm])!
        expect(airResonanceHz(volumeL, topMm, [diameterMm * 1.1])!).toBeGreaterThan(hz)
        expect(airResonanceHz(volumeL * 1.1, topMm, [diameterMm])!).toBeLessThan(hz)
        expect(airResonanceHz(volumeL, topMm * 1.1, [diameterMm])!).toBeLessThan(hz)
      }),
    )
  })

  test('no air or no hole, no note', () => {
    expect(airResonanceHz(0, 3, [20])).toBeUndefined()
    expect(airResonanceHz(2, 3, [])).toBeUndefined()
  })
})

describe('the air in a box', () => {
  const litresPerCubicInch = 0.0254 ** 3 * 1000

  test('is what the walls leave, less the blocks', () => {
    // A top that is screwed would be given blocks of its own.
    const {box} = planOf(soundBuilds['on top'].replace('held: screwed', 'held: glued')).plan
    const inches = 9.75 * 6.625 * 1.75 - 2 * 1.25 * 4.5 * 0.3125
    expect(box!.volumeL).toBeCloseTo(inches * litresPerCubicInch, 9)
    expect(box!.holeAreaMm2).toBeCloseTo((Math.PI / 4) * (1.375 * 25.4) ** 2, 9)
    expect(box!.resonanceLowHz! / box!.resonanceHz!).toBeCloseTo(0.944, 9)
  })

  test('is less a neck that runs through, from under the daylight down to its back', () => {
    const {box} = planOf(soundBuilds.through).plan
    const neckInches = 9.5 * 1.625 * (1 - 1 / 8 - 3 / 16)
    expect(box!.volumeL).toBeCloseTo((9.5 * 7.5 * 1.75 - neckInches) * litresPerCubicInch, 9)
  })

  test('names its note, and where that falls on the strings', () => {
    const {box} = planOf(soundBuilds['on top']).plan
    // Thin walls come first: a semitone under the A3 of a stiff box.
    expect(box!.nearestNote).toBe('G#3')
    expect(box!.stiffNote).toBe('A3')
    expect(box!.nearestCents).toBeCloseTo(1200 * Math.log2(box!.resonanceLowHz! / 207.652), 1)
    expect(box!.nearestLines!.map(({string, label}) => [string, label])).toEqual([['D3', '6']])
  })
})
