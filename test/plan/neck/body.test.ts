import {describe, expect, test} from 'vitest'
import {changed} from '../../support/changed.ts'
import {planOf, printedOf} from '../../support/plan-of.ts'
import {soundBuilds} from '../../support/sound-builds.ts'
import {soundNecks} from '../../support/sound-necks.ts'

const inch = 25.4
const neckOf = (base: string, changes: Record<string, string> = {}) =>
  planOf(changed(base, changes)).plan.neck!

describe('sections along the neck', () => {
  test('are at nut, middle of the free neck, box edge, and wherever it changes', () => {
    const stations = printedOf(soundNecks['four strings on a narrow nut']).neck!.sections!.map(
      ({what}) => what,
    )
    expect(stations).toEqual([
      'nut',
      'round-over at full depth',
      'middle of the free neck',
      'round-over runs out',
      'box edge',
      'fingerboard ends',
      'box tail',
      'tail end',
    ])
  })

  test('taper with the neck', () => {
    const sections = neckOf(soundNecks.tapered).sections!
    expect(sections[0]!.widthMm).toBeCloseTo(1.5 * inch, 9)
    expect(sections.at(-1)!.widthMm).toBeCloseTo(1.875 * inch, 9)
    for (const [i, {widthMm}] of sections.slice(1).entries())
      expect(widthMm).toBeGreaterThan(sections[i]!.widthMm)
  })

  test('lose the two spandrels where the round-over runs, and less where the cutter runs in', () => {
    const {sections, roundOver} = printedOf(soundNecks.laminated).neck!
    const at = (what: string) => sections!.find((one) => one.what === what)!
    const [b, h, r] = [1.625 * inch, 0.8125 * inch, 0.375 * inch]
    expect(at('middle of the free neck').areaMm2).toBeCloseTo(b * h - 2 * (1 - Math.PI / 4) * r * r, 6)
    expect(at('box edge').areaMm2).toBeCloseTo(b * h, 6)
    expect(at('nut').areaMm2).toBeGreaterThan(at('middle of the free neck').areaMm2)
    expect(at('nut').areaMm2).toBeLessThan(b * h)
    // A 3/8 in cutter on a 1/2 in bearing is 5/8 in in radius: √(5/8² − 1/4²) in.
    expect(roundOver!.runInMm).toBeCloseTo(Math.sqrt(0.625 ** 2 - 0.25 ** 2) * inch, 9)
    expect(roundOver!.toMm).toBeCloseTo(16 * inch, 9)
  })

  test('stand on their layers from the face down', () => {
    const [section] = neckOf(soundNecks.laminated).sections!
    expect(
      section!.laminations.map(({wood, thicknessMm, fromFaceMm}) => [
        wood,
        Number((thicknessMm / inch).toFixed(9)),
        Number((fromFaceMm / inch).toFixed(9)),
      ]),
    ).toEqual([
      ['black cherry', 3 / 16, 0],
      ['white ash, black walnut, white ash', 5 / 8, 3 / 16],
    ])
  })

  test('leave stiffness and weight open where the wood is not given', () => {
    const {sections, bow, massKg} = neckOf(
      'title: x\nbox: 10 1/8 x 7 x 2\nscale: 24 1/4\nstrings: [D3 .030w, A3 .020w, D4 .013]',
    )
    expect(sections![0]!.eiNmm2).toBeUndefined()
    expect(sections![0]!.areaMm2).toBeCloseTo(1.5 * 0.75 * inch * inch, 6)
    expect(bow).toBeUndefined()
    expect(massKg).toBeUndefined()
  })
})

describe('weight and balance', () => {
  // A plain stick: 672 kg/m³ (Wood Handbook Eq. 4-14, G 0.60) times its volume; it balances in its middle.
  test('of a straight stick are those of a plain bar', () => {
    const {massKg, balanceMm} = neckOf(soundBuilds['on top'], {
      'head.joint': 'straight',
      'head.angle': '',
      'head.thickness': '13/16',
      'head.retainer': 'bar',
    })
    const volumeMm3 = 33.5 * 1.625 * 0.8125 * inch ** 3
    expect(massKg).toBeCloseTo(volumeMm3 * 672e-9, 9)
    expect(balanceMm).toBeCloseTo((33.5 / 2 - 6.25) * inch, 6)
  })

  // 1 5/8 in of width times the polygon of the side view, gone round corner by corner: the head's face falls 14° from
  // 1/4 in behind the nut line, its back 9/16 in under it meets the neck's back 13/16 in down.
  test('of a leaning head are those of its side view, cut out of one board', () => {
    const {massKg, balanceMm} = neckOf(soundBuilds['on top'])
    const [sin, cos] = [Math.sin((14 * Math.PI) / 180), Math.cos((14 * Math.PI) / 180)]
    const [t, h] = [0.8125, 0.5625]
    const bend = -0.25 - ((t - h * cos) / sin) * cos + h * sin
    const corners = [
      [27.25, 0],
      [-0.25, 0],
      [-0.25 - 6 * cos, 6 * sin],
      [-0.25 - 6 * cos + h * sin, 6 * sin + h * cos],
      [bend, t],
      [27.25, t],
    ] as const
    let [area, moment] = [0, 0]
    for (const [i, [x, z]] of corners.entries()) {
      const [u, w] = corners[(i + 1) % corners.length]!
      area += (u * z - x * w) / 2
      moment += ((u * z - x * w) * (x + u)) / 6
    }
    expect(massKg).toBeCloseTo(Math.abs(area) * 1.625 * inch ** 3 * 672e-9, 9)
    expect(balanceMm).toBeCloseTo((moment / area) * inch, 6)
  })

  test('a plate on the head adds its own, and draws the balance to the head', () => {
    const bare = neckOf(soundBuilds['on top'])
    const plated = neckOf(soundBuilds['on top'], {
      'head.plate': '{wood: ipe, thickness: 1/8}',
      'head.thickness': '11/16',
    })
    // A thicker head fills less of the bend, and is cut off square over more of the neck.
    const [lean, t] = [Math.tan((14 * Math.PI) / 180), 0.8125]
    const bend = (h: number) => ((t - h * Math.hypot(1, lean)) ** 2 / lean - h ** 2 * lean) / 2
    const plateKg = 6 * 1.625 * 0.125 * inch ** 3 * 1.08 * 1120e-9
    const bendKg = (bend(0.6875) - bend(0.5625)) * 1.625 * inch ** 3 * 672e-9
    expect(plated.massKg! - bare.massKg!).toBeCloseTo(plateKg + bendKg, 9)
    expect(plated.balanceMm!).toBeLessThan(bare.balanceMm!)
  })
})

describe('laminations and thickness', () => {
  test('what is over by up to 1/8 in is planed off the back', () => {
    const {layup, sections} = neckOf(soundBuilds['on top'], {
      'neck.wood': '',
      'neck.laminations': '[{wood: black cherry, thickness: 1/4}, {wood: white ash, thickness: 5/8}]',
    })
    expect(layup!.planedMm).toBeCloseTo(inch / 16, 9)
    expect(sections![0]!.thicknessMm).toBeCloseTo((13 / 16) * inch, 9)
  })

  test('a fingerboard stands on laminations that come to the thickness by themselves, else it is a part of it', () => {
    const laminations = '[{wood: black cherry, thickness: 1/4}, {wood: white ash, thickness: 9/16}]'
    const base = {'neck.wood': '', 'neck.laminations': laminations}
    const board = {fingerboard: '{wood: black walnut, thickness: 3/16, to: 16}'}
    expect(neckOf(soundBuilds['on top'], {...base, ...board}).layup!.totalMm).toBeCloseTo(inch, 9)
    expect(neckOf(soundBuilds['on top'], board).layup!.totalMm).toBeCloseTo((13 / 16) * inch, 9)
  })
})

/*
 * By hand, of a neck 25 thick from the playing face to the back that runs through under a top of 4 with the bridge on
 * it. Bare: the face is level with the top, so 4 of top and 1/32 in of daylight leave 25 − 4.79375 inside. A board of 6
 * is part of the 25 and stands above the top, so 6 + 4.79375 are gone; on laminations that come to 25 by themselves it
 * stands on top of them, 31 in all, and inside is left what a bare neck has.
 */
test.each([
  ['bare', '', '', 25, 25 - 4.79375],
  ['under a board', 'fingerboard: {thickness: 6}', '', 25, 19 - 4.79375],
  [
    'of laminations under a board',
    'fingerboard: {thickness: 6}',
    ', laminations: [{thickness: 10}, {thickness: 15}]',
    31,
    25 - 4.79375,
  ],
])(
  'a neck %s is as thick to the box as to itself, and so is what is left inside',
  (_, board, layers, totalMm, leftMm) => {
    const {neck, box} = planOf(`units: mm
scale: 600
neck: {joins: through, width: 40, thickness: 25${layers}}
${board}
bridge: {on: top, height: 20}
box: {length: 300, width: 200, depth: 60, sides: 6, top: {thickness: 4}, at: 400}`).plan
    expect(neck!.layup!.totalMm).toBeCloseTo(totalMm, 9)
    expect(box!.neck!.thicknessMm).toBeCloseTo(totalMm, 9)
    expect(neck!.inside!.thicknessMm).toBeCloseTo(leftMm, 9)
    expect(box!.neck!.heightInsideMm).toBeCloseTo(leftMm, 9)
  },
)

describe('fretting', () => {
  test('slots by the saw, a piece for each fret, and the wire they come to', () => {
    const {plan} = planOf(soundNecks['four strings on a narrow nut'])
    const {slotWidthMm, slotDepthMm, pieces, wireMm, overhangMm} = plan.neck!.fretting!
    expect(slotWidthMm).toBeCloseTo(0.023 * inch, 9)
    expect(slotDepthMm).toBeGreaterThan(0.062 * inch)
    expect(pieces).toHaveLength(17)
    // Wire lies along the arc of a round board, 2·R·asin(w/2R), by geometry.
    const roundMm = 12 * inch
    for (const [i, {lengthMm}] of pieces!.entries()) {
      const widthMm = plan.scale!.lines![i]!.widthMm!
      expect(lengthMm).toBeCloseTo(2 * roundMm * Math.asin(widthMm / (2 * roundMm)) + 2 * overhangMm, 9)
    }
    expect(wireMm).toBeCloseTo(
      pieces!.reduce((sum, {lengthMm}) => sum + lengthMm, 0),
      9,
    )
  })

  // By hand: on 24 in, lines 16 and 17 lie 24·(2^(−16/12) − 2^(−17/12)) = 0.534 in apart.
  test('crowns leave bare what their width takes of the nearest two', () => {
    const {plan} = planOf(
      'title: F\nscale: {length: 24, lines: 17, fretted: true}\nneck: 1 1/2 x 3/4\nfrets: {wire-width: .08}',
    )
    const {widthMm, leastBareMm, between} = plan.neck!.fretting!.crowns!
    expect(widthMm).toBeCloseTo(0.08 * inch, 9)
    expect(leastBareMm / inch).toBeCloseTo(24 * (2 ** (-16 / 12) - 2 ** (-17 / 12)) - 0.08, 9)
    expect(between).toEqual(['16', '17'])
    expect(neckOf(soundNecks['four strings on a narrow nut'], {frets: ''}).fretting!.crowns).toBeUndefined()
  })

  test('is left out of a neck with marks only', () => {
    expect(neckOf(soundBuilds['on top']).fretting).toBeUndefined()
  })
})

test('wood under the nut counts the scarf’s overlap where the head turns behind it', () => {
  const flat = neckOf(soundBuilds['on top']).nutSeat!
  expect(flat.leftMm).toBeCloseTo((13 / 16 - 1 / 16) * inch, 9)
  const atNut = neckOf(soundBuilds['on top'], {'head.ledge': '0'}).nutSeat!
  const lean = (14 * Math.PI) / 180
  const overlap = (13 / 16) * Math.tan(lean / 2) * Math.tan(lean) * inch
  expect(atNut.leftMm).toBeCloseTo(flat.leftMm + overlap, 9)
})
