import {describe, expect, test} from 'vitest'
import {cornerHz} from '../../../plugins/plan/box/pickup.ts'
import {changed} from '../../support/changed.ts'
import {planOf, printedOf} from '../../support/plan-of.ts'
import {soundBuilds} from '../../support/sound-builds.ts'

describe('the corner of a piezo source', () => {
  // Articles on contact microphones: a disc of about 15 nF into 50 kΩ is said to fade from 200 Hz, into 7 kΩ from 1 kHz,
  // and its reactance at 20 Hz to be over 530 kΩ; figures to the last digit by 1/(2πRC), OpenStax vol. 2, §15.6.
  test.each([
    [15, 50e3, 212.2, 1],
    [15, 7e3, 1515.8, 1],
    [15, 530.5e3, 20, 2],
    [15, 1e6, 10.61, 2],
    [20, 1e6, 7.96, 2],
    [20, 10e6, 0.796, 3],
  ])('%f nF into %f Ω fades below %f Hz', (nf, ohm, hz, digits) => {
    expect(cornerHz(nf, ohm)).toBeCloseTo(hz, digits)
  })

  // OpenStax University Physics vol. 2, §15.6: the amplitude is 1/√(1 + 1/(ωRC)²), so 1/√2 at the corner.
  test('at the corner the voltage has fallen to 1/√2', () => {
    const omega = 2 * Math.PI * cornerHz(20, 1e6)
    expect(1 / Math.sqrt(1 + 1 / (omega * 1e6 * 20e-9) ** 2)).toBeCloseTo(Math.SQRT1_2, 12)
  })
})

describe('pickup and jack', () => {
  const planned = (changes: Record<string, string>, build: keyof typeof soundBuilds = 'on top') =>
    planOf(changed(soundBuilds[build], changes)).plan.pickup!

  test('a disc under the bridge lies at the bridge line', () => {
    expect(planned({}).stationMm).toBeCloseTo(24.25 * 25.4, 9)
    expect(planned({}).offMm).toBe(0)
  })

  test('a jack that the file does not place is proposed, and one that it places is not', () => {
    expect(planned({}).jack!.proposed).toBe(true)
    const placed = planned({'pickup.jack.along': '8'}).jack!
    expect(placed.proposed).toBeUndefined()
    expect(placed.stationMm).toBeCloseTo(24 * 25.4, 9)
  })

  test('in the end of a box that a neck runs through, a jack stands beside the neck', () => {
    const {jack} = planned({pickup: '{kind: piezo, jack: {hole: 3/8, thread: 3/8, in: end}}'}, 'through')
    expect(jack!.offMm).toBeGreaterThan((1.625 / 2) * 25.4)
    expect(jack!.roomMm).toBeCloseTo((10 - 1 / 4) * 25.4, 9)
  })

  // A quarter-inch plug's sleeve is 6.35 mm; its bush asks for 3/8 in (common practice, no source).
  test('a quarter-inch jack’s hole is a bit that shops have', () => {
    const {holes} = printedOf(soundBuilds['on top'])
    expect(holes!.find(({what}) => what === 'jack')).toMatchObject({
      bit: '3/8 in brad-point bit',
      face: 'side treble',
    })
  })
})
