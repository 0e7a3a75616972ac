import {describe, expect, test} from 'vitest'
import {screwLoads} from '../../../plugins/plan/fasteners/joint-loads.ts'
import {
  bitInBoth,
  pilotOf,
  screwSize,
  threadBites,
  withdrawalN,
} from '../../../plugins/plan/fasteners/screw-size.ts'
import {woodOf} from '../../../plugins/plan/kit/woods.ts'
import {bareBit, bitName, farFace} from '../../../plugins/words/holes.ts'
import {changed} from '../../support/changed.ts'
import {planOf} from '../../support/plan-of.ts'
import fc from '../../support/properties.ts'
import {soundBuilds} from '../../support/sound-builds.ts'

const inch = 25.4
const newtonsPerPound = 4.4482216152605
const screwsOf = (changes: Record<string, string>, build: keyof typeof soundBuilds = 'on top') =>
  planOf(changed(soundBuilds[build], changes)).plan.fasteners!.filter(({holdsTop}) => !holdsTop)

describe('holding power', () => {
  // Worked out by the handbook's inch form, 15,700 G² D L (Wood Handbook, Eq. 8-10), lbf for each inch of thread.
  test.each([
    ['eastern white pine', 215, 265, 315, 365],
    ['yellow-poplar', 310, 382, 454, 526],
    ['black cherry', 440, 542, 644, 746],
    ['black walnut', 532, 655, 779, 902],
    ['sugar maple', 698, 860, 1022, 1184],
    ['northern red oak', 698, 860, 1022, 1184],
    ['white oak', 813, 1002, 1191, 1379],
  ])('of %s: %i, %i, %i and %i lbf/in at number 4, 6, 8 and 10', (wood, ...pounds) => {
    for (const [i, gauge] of [4, 6, 8, 10].entries()) {
      const n = withdrawalN(screwSize(gauge).shankMm, [{g12: woodOf(wood)!.g12, mm: inch}])
      expect(Math.abs(n / newtonsPerPound - pounds[i]!)).toBeLessThan(1)
    }
  })

  // National Design Specification, withdrawal design value 2,850 G² D: 109 lbf/in for G 0.45 and number 10 in a worked example.
  test('is five and a half times the design value', () => {
    const ultimate = withdrawalN(screwSize(10).shankMm, [{g12: 0.45, mm: inch}]) / newtonsPerPound
    expect(ultimate / 109).toBeCloseTo(15_700 / 2850, 1)
  })

  test('adds up over the layers that the thread bites', () => {
    fc.assert(
      fc.property(
        fc.double({min: 0.1, max: 1, noNaN: true}),
        fc.double({min: 0, max: 30, noNaN: true}),
        (g12, mm) => {
          const whole = withdrawalN(4, [{g12, mm: 30}])
          expect(
            withdrawalN(4, [
              {g12, mm},
              {g12, mm: 30 - mm},
            ]),
          ).toBeCloseTo(whole, 6)
        },
      ),
    )
  })
})

describe('sizes', () => {
  // Wood Handbook, FPL-GTR-282, p. 8-10: 70 % of the root in softwoods, 90 % in hardwoods.
  test('the pilot of number 6', () => {
    expect(pilotOf(6, 'hard').mm).toBeCloseTo(0.9 * 0.094 * inch, 9)
    expect(pilotOf(6, 'soft').mm).toBeCloseTo(0.7 * 0.094 * inch, 9)
    expect(bareBit(pilotOf(6, 'hard').bit)).toBe('5/64 in')
  })

  // ANSI/ASME B18.6.1: #6 0.138 in, #8 0.164 in, #10 0.190 in.
  test.each([
    [6, 0.138],
    [8, 0.164],
    [10, 0.19],
  ])('number %i has a shank of %f in', (gauge, shank) => {
    expect(screwSize(gauge).shankMm / inch).toBeCloseTo(shank, 9)
  })

  // A bit that the shank does not pass splits what it is to slide through; all gauges, in either system of bits.
  test.each(Array.from({length: 25}, (_, gauge) => gauge))(
    'the clearance of number %i passes its shank',
    (gauge) => {
      const {shankMm, clearance, clearanceMm} = screwSize(gauge)
      expect(clearanceMm).toBeGreaterThanOrEqual((0.06 + 0.013 * gauge) * inch - 1e-9)
      expect(clearanceMm - shankMm).toBeLessThan(inch / 32)
      const metric = /([\d.]+) mm/.exec(bitName(bitInBoth(clearance, 'mm', 'up', shankMm)))
      expect(Number(metric![1])).toBeGreaterThanOrEqual(shankMm - 1e-9)
    },
  )

  test('a gauge that no table lists still has its sizes', () => {
    const {shankMm, rootMm, clearanceMm} = screwSize(11)
    expect(shankMm).toBeCloseTo(5.16, 1) // Wood Handbook, FPL-GTR-282, Table 8-9
    expect(rootMm / shankMm).toBeCloseTo(2 / 3, 9)
    expect(clearanceMm).toBeGreaterThanOrEqual(shankMm)
  })
})

describe('one screw', () => {
  test('through block and top into the neck', () => {
    const [screw] = screwsOf({})
    // 5/16 in of block and 1/8 in of top under the head; 1 in in all; 13/16 in of neck.
    expect(screw!.underHeadMm).toBeCloseTo((7 / 16) * inch, 9)
    expect(screw!.threadMm).toBeCloseTo((9 / 16) * inch, 9) // Less than the 2/3 in that is thread.
    expect(screw!.tipToFaceMm).toBeCloseTo((1 / 4) * inch, 9)
    expect(screw!.longestMm).toBeCloseTo(1.125 * inch, 9)
    expect(screw!.loadN).toBe(0)
  })

  test('one that comes out says so, and bites no more than the neck has', () => {
    const [screw] = screwsOf({'screws.1.length': '1 1/2'})
    expect(screw!.tipToFaceMm).toBeCloseTo(-(1 / 4) * inch, 9)
    // 1 in of its 1 1/2 is thread: from 1/2 in under the head, 1/16 in inside the neck, to the neck's far face.
    expect(screw!.threadMm).toBeCloseTo((13 / 16 - 1 / 16) * inch, 9)
  })

  test('bites with its thread, not with its shank', () => {
    // 7/16 in under the head of a 1 in screw, and 3/8 in of thread: it starts 5/8 in from the head.
    const [screw] = screwsOf({'screws.1.thread': '3/8'})
    expect(screw!.threadMm).toBeCloseTo((3 / 8) * inch, 9)
    // Thread longer than the screw is taken as the whole screw, and named.
    const [long] = screwsOf({'screws.1.thread': '2'})
    expect(long!.threadMm).toBeCloseTo((9 / 16) * inch, 9)
    expect(long!.isThreadTooLong).toBe(true)
  })

  test('whose shank reaches through the first layer bites the next alone', () => {
    const [first, second] = ['eastern white pine', 'sugar maple'].map((name) => woodOf(name))
    const layers = [first, second].map((wood) => ({wood, mm: 10}))
    expect(threadBites(layers, [10, 18]).bites.map(({mm}) => mm)).toEqual([0, 8])
    expect(threadBites(layers, [4, 14]).bites.map(({mm}) => mm)).toEqual([6, 4])
  })

  test('is bored by the wood that its tip sits in', () => {
    expect(screwsOf({'neck.wood': 'white ash'})[0]).toMatchObject({hardness: 'hard', wood: 'white ash'})
    expect(screwsOf({'neck.wood': 'western redcedar'})[0]).toMatchObject({hardness: 'soft'})
    const layered = screwsOf({
      'neck.wood': '',
      'neck.laminations':
        '[{wood: black cherry, thickness: 3/16}, {wood: eastern white pine, thickness: 5/8}]',
    })
    expect(layered[0]).toMatchObject({hardness: 'soft', wood: 'eastern white pine'})
  })

  test('of a loose wood the lightest that it may mean is what holds', () => {
    const loose = screwsOf({'neck.wood': 'maple'})[0]!.withdrawalN
    const lightest = screwsOf({'neck.wood': 'silver maple'})[0]!.withdrawalN
    expect(loose).toBeCloseTo(lightest, 6)
  })

  test('down through the top into a block, with its far face the block’s underside', () => {
    const screws = '[{size: 4, length: 3/8, along: [1 1/4], off: [2], through: [washer, top], into: block}]'
    const lid = planOf(changed(soundBuilds['on top'], {screws})).plan.fasteners!.find(
      ({of}) => of === 'screws.1',
    )
    expect(lid).toMatchObject({way: 'down', joinsNeck: false, holdsTop: true, loadN: 0})
    expect(farFace(lid!)).toBe('the block’s underside')
    expect(lid!.tipToFaceMm).toBeCloseTo((1 / 8 + 5 / 16 - 3 / 8) * inch, 9)
  })

  test('a file that does not say what a screw goes through leaves it out', () => {
    expect(screwsOf({'screws.1.through': ''})).toEqual([])
  })
})

describe('what the strings ask of the screws', () => {
  // Statics: the pull closes inside a neck that carries nut, bridge and anchors.
  test('nothing where the neck carries nut, bridge and anchors', () => {
    expect(screwsOf({}).map(({loadN}) => loadN)).toEqual([0, 0])
  })

  test('all of the bridge’s push, where the bridge stands on the top', () => {
    const {fasteners, bridge} = planOf(
      changed(soundBuilds['on top'], {'bridge.on': 'top', 'bridge.height': '1 1/8'}),
    ).plan
    const stations = fasteners!.map(({stationMm}) => stationMm)
    const loads = fasteners!.map(({loadN}) => loadN!)
    // The bridge lies past both screws: they balance it as a lever, and the nearer one carries more.
    expect(loads[1]).toBeGreaterThan(bridge!.downforceN!)
    expect(loads[0]).toBe(0)
    expect(stations[1]).toBeLessThan(bridge!.stationMm)
  })

  /*
   * The free body by hand, bridge 1 1/8 in high on the top, anchors on the neck, level with its face: the strings
   * touch the neck at nut and anchors and the box at the bridge. Cut loose, the neck feels what the bridge gives the
   * strings, upwards at 24 1/4 in: T·sin to each side. The bridge stands 1 1/8 − 13/16 = 5/16 in over the face, the nut
   * 1/8 in, the anchors 26 3/4 in from the nut. Screws at 17 1/4 and 22 3/4 in: moments about the first give the second,
   * which pulls alone, since the first is pressed home.
   */
  test('on top, with the bridge on the box: moments about the head end screw', () => {
    const {fasteners, tensionTotalN} = planOf(
      changed(soundBuilds['on top'], {'bridge.on': 'top', 'bridge.height': '1 1/8', 'action.octave': ''}),
    ).plan
    const front = Math.atan((5 / 16 - 1 / 8) / 24.25)
    const back = Math.atan(5 / 16 / (26.75 - 24.25))
    const lift = tensionTotalN! * (Math.sin(front) + Math.sin(back))
    expect(fasteners!.filter(({joinsNeck}) => joinsNeck).map(({loadN}) => loadN)).toEqual([
      0,
      expect.closeTo((lift * (24.25 - 17.25)) / (22.75 - 17.25), 6),
    ])
  })

  const station = fc.double({min: 300, max: 700, noNaN: true})
  const seat = {fromMm: 300, toMm: 700, belowFaceMm: 20}

  test('lift and moment balance over any row of screws', () => {
    fc.assert(
      fc.property(fc.array(station, {minLength: 2, maxLength: 6}), (stations) => {
        const middle = stations.reduce((sum, one) => sum + one, 0) / stations.length
        fc.pre(stations.every((one, i) => i === 0 || Math.abs(one - stations[0]!) > 20))
        // Lifted over their middle, every screw pulls and the balance is exact.
        const loads = screwLoads(stations, {upN: 60, tailwardN: 0, stationMm: middle, heightMm: 8}, seat)
        expect(loads.reduce((sum, one) => sum + one, 0)).toBeCloseTo(60, 6)
        for (const load of loads) expect(load).toBeCloseTo(60 / stations.length, 6)
      }),
    )
  })

  test('two screws balance a lift beyond them as a lever does', () => {
    const [near, far] = screwLoads([400, 600], {upN: 50, tailwardN: 0, stationMm: 550, heightMm: 8}, seat)
    // Moments about each screw in turn.
    expect(far).toBeCloseTo((50 * 150) / 200, 9)
    expect(near).toBeCloseTo((50 * 50) / 200, 9)
  })
})

describe('into a neck on top that has a fingerboard', () => {
  const board = (to: string) => ({
    fingerboard: `{wood: beech, thickness: 1/4, from: -1/4, to: ${to}}`,
    'neck.thickness': '1 1/16',
    'neck.above-top': '1 1/16',
    'bridge.height': '',
  })
  // By hand: 5/16 in of block and 1/8 in of top under the head, 13/16 in of stick, 1/4 in of board, 1 in of screw.
  test.each([
    ['the tip has the board before it where that goes on', '25', 5 / 16 + 1 / 8 + 13 / 16 + 1 / 4 - 1],
    ['and the bare stick where it has ended at the box', '16', 5 / 16 + 1 / 8 + 13 / 16 - 1],
  ])('%s', (_, to, roomIn) => {
    for (const {tipToFaceMm} of screwsOf(board(to))) expect(tipToFaceMm! / inch).toBeCloseTo(roomIn, 9)
  })
})
