import {describe, expect, test} from 'vitest'
import {bitFor} from '../../../plugins/plan/kit/bits.ts'
import {bitName} from '../../../plugins/words/holes.ts'
import {changed} from '../../support/changed.ts'
import {planOf, printedOf} from '../../support/plan-of.ts'
import {soundBuilds} from '../../support/sound-builds.ts'

const inch = 25.4

describe('the drilling schedule', () => {
  test.each(Object.entries(soundBuilds))(
    'of a neck that joins %s has each hole once, in the order of the work',
    (_, file) => {
      const holes = planOf(file).plan.holes!
      const keyOf = (hole: (typeof holes)[number]) =>
        `${hole.face} ${hole.diameterMm} ${hole.stationMm} ${hole.offMm}`
      expect(new Set(holes.map(keyOf)).size).toBe(holes.length)
      const faces = holes.map(({face}) => face)
      expect(faces.filter((face, i) => face !== faces[i - 1])).toHaveLength(new Set(faces).size)
      for (const [i, hole] of holes.slice(1).entries()) {
        const before = holes[i]!
        if (before.face !== hole.face) continue
        expect(hole.diameterMm).toBeGreaterThanOrEqual(before.diameterMm)
        if (hole.diameterMm === before.diameterMm)
          expect(hole.stationMm).toBeGreaterThanOrEqual(before.stationMm)
      }
    },
  )

  test('holds every tuner, anchor, sound hole, screw, jack and strap button', () => {
    const holes = printedOf(changed(soundBuilds['on top'], {'box.top.held': 'hinged'})).holes!
    const count = (what: RegExp) => holes.filter((hole) => what.test(hole.what)).length
    expect(count(/^tuner/)).toBe(3)
    expect(count(/^string hole/)).toBe(3)
    expect(count(/^ferrule/)).toBe(3)
    expect(count(/^sound hole/)).toBe(1)
    expect(count(/clearance/)).toBe(2)
    expect(count(/pilot/)).toBe(2)
    expect(count(/^jack/)).toBe(1)
    expect(count(/^strap button/)).toBe(2)
    expect(holes).toHaveLength(17)
  })

  test('says how high jack and strap buttons sit: half way down a wall 2 in deep, or under a neck that comes through', () => {
    const downOf = (base: string, changes: Record<string, string>) =>
      Object.fromEntries(
        printedOf(changed(base, {extras: '[strap buttons]', ...changes}))
          .holes!.filter(({what}) => /^(jack|strap)/.test(what))
          .map(({what, face, downMm}) => [`${what}, ${face}`, downMm! / 25.4]),
      )
    const onTop = Object.values(downOf(soundBuilds['on top'], {'box.top.held': 'hinged'}))
    expect(onTop).toHaveLength(3)
    for (const down of onTop) expect(down).toBeCloseTo(1, 9)
    // 1 1/4 in of neck, its face 1/4 in over the top, comes through the tail wall: 1 to 2 in below the top are free.
    const through = downOf(soundBuilds.through, {})
    expect(through['strap button, tail end']).toBeCloseTo(3 / 2, 9)
    expect(through['strap button, side bass']).toBeCloseTo(1, 9)
  })

  test('bores a ferrule in two steps from one face, the string hole first', () => {
    const steps = printedOf(soundBuilds['on top']).holes!.filter(
      ({what}) => / D3$/.test(what) && !/tuner/.test(what),
    )
    expect(steps.map(({what, face}) => [what, face])).toEqual([
      ['string hole, D3', 'neck back'],
      ['ferrule, D3', 'neck back'],
    ])
    expect(steps[0]!.depthMm).toBeUndefined()
    expect(steps[1]!.depthMm).toBeCloseTo((3 / 8) * inch, 9)
  })

  test('says how far along the box a hole of the box lies, and of no other', () => {
    const holes = printedOf(soundBuilds['on top']).holes!
    expect(holes.find(({what}) => what === 'sound hole')!.alongMm).toBeCloseTo(4 * inch, 9)
    expect(
      holes
        .filter(({face}) => face === 'head' || face === 'neck back')
        .every(({alongMm}) => alongMm === undefined),
    ).toBe(true)
  })

  test('leaves a pilot’s depth out where it comes through', () => {
    const {holes} = printedOf(changed(soundBuilds['on top'], {'screws.1.length': '1 1/2'}))
    expect(
      holes!.filter(({what}) => /pilot into neck/.test(what)).every(({depthMm}) => depthMm === undefined),
    ).toBe(true)
  })
})

describe('the bit for a hole', () => {
  test.each([
    [0.25 * inch, 'in', '1/4 in brad-point bit'],
    [(5 / 64) * inch, 'in', '5/64 in twist bit'],
    [(1 / 8) * inch, 'in', '1/8 in brad-point bit'],
    [2.5, 'mm', '2.5 mm twist bit'],
    [3, 'mm', '3 mm brad-point bit'],
    [6, 'in', '6 mm brad-point bit'],
    [6, 'mm', '6 mm brad-point bit'],
    [0.375 * inch, 'mm', '3/8 in brad-point bit'],
    [1.375 * inch, 'in', '1 3/8 in Forstner bit'],
    [35, 'in', '35 mm Forstner bit'],
    [35, 'mm', '35 mm Forstner bit'],
    [1.375 * inch, 'mm', '1 3/8 in Forstner bit'],
    [3 * inch, 'in', 'circle cutter set to 3 in'],
    [44, 'mm', 'circle cutter set to 44 mm'],
  ] as const)('of %f mm in a build in %s: %s', (mm, units, bit) => {
    expect(bitName(bitFor(mm, units))).toBe(bit)
  })
})
