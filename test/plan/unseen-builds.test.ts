import {describe, expect, test} from 'vitest'
import {planOf} from '../support/plan-of.ts'

import '../support/slow.ts'

/*
 * Four builds, each judged by figures written out from the published formula, to 2 %: nothing here is taken from the
 * plan but the wood table's row. Pull: Mersenne's law, μ(2Lf)². Bow and stress: Gere & Goodno, Mechanics of Materials
 * (M = EI·κ, σ = M·c/I + T/A). Plates: Timoshenko and Woinowsky-Krieger, Theory of Plates and Shells, arts. 34 and 85
 * (Navier's series). Screws: Wood Handbook, FPL-GTR-282, Eq. 8-10. Zero fret: Anderson and Beausoleil, J. Acoust. Soc.
 * Am. 156, 683 (2024), with b = 0. Crowns and sagittas: geometry.
 */
const near = (value: number | undefined, figure: number) =>
  expect(Math.abs(value! / figure - 1)).toBeLessThan(0.02)
const hertz = (midi: number) => 440 * 2 ** ((midi - 69) / 12)
const pullN = (gramsPerMetre: number, scaleMm: number, midi: number) =>
  (gramsPerMetre / 1000) * ((2 * scaleMm * hertz(midi)) / 1000) ** 2
const sum = (values: readonly number[]) => values.reduce((total, one) => total + one, 0)
const grave = (text: string) =>
  planOf(text).problems.flatMap(({rule, severity}) => (severity === 'remark' ? [] : [rule]))

/** How far a plate that lies loose on four walls sinks under a foot that presses it evenly, the mean over it: Navier. */
function navier(
  {a, b}: {a: number; b: number},
  {dx, dy, h}: {dx: number; dy: number; h: number},
  foot: {x: number; along: number; across: number; pushN: number},
): number {
  let sink = 0
  for (let m = 1; m < 160; m++)
    for (let n = 1; n < 160; n += 2) {
      const [km, kn] = [(m * Math.PI) / a, (n * Math.PI) / b]
      const [u, v] = [(km * foot.along) / 2, (kn * foot.across) / 2]
      const spread = (Math.sin(u) / u) * (Math.sin(v) / v)
      const load =
        ((4 * foot.pushN) / (a * b)) * Math.sin(km * foot.x) * Math.sin((n * Math.PI) / 2) * spread ** 2
      const stiff = dx * km ** 4 + 2 * h * km ** 2 * kn ** 2 + dy * kn ** 4
      sink += (load / stiff) * Math.sin(km * foot.x) * Math.sin((n * Math.PI) / 2)
    }
  return sink
}

/** A lid of one stiffness every way: E·h³/12(1 − ν²), art. 21. */
const even = (eMpa: number, thickMm: number, poisson: number) => {
  const d = (eMpa * thickMm ** 3) / (12 * (1 - poisson ** 2))
  return {dx: d, dy: d, h: d}
}

// A stick 42 by 32 of sugar maple (12,600 MPa) through a box from 430 to 690, walls 10: it lies 4 + 6 + 3 = 13 under its
// face between them, 19 thick, held in their middles, 435 and 685. Fibreboard 6 thick (3590 MPa, ν 0.3), free 240 by 180.
describe('a fretted neck through a box, the bridge on a thick lid', () => {
  const text = `
title: Slip dock
units: mm
ruler: 0.5
scale: {length: 640, fretted: true}
frets: {crown: 1}
strings: [{note: G2, mass: 5 g/m}, {note: D3, mass: 2.2 g/m}, {note: G3, mass: 1.1 g/m}]
nut: {kind: flat}
action: {nut: 0.5, octave: 2.2}
neck: {width: 42, thickness: 32, joins: through, above-top: 4, wood: sugar maple, length: 850}
head: {length: 140, joint: straight}
bridge: {kind: saddle, on: top, foot: 12, length: 70}
anchors: {kind: plain, at: 700, spacing: 10, string-hole: 2, height: -4}
box: {length: 260, width: 200, depth: 60, sides: 10, back: 3, wood: eastern white pine, at: 430, neck-gap: 3, top: {thickness: 6, wood: mdf}}`
  const {neck, box, tensionTotalN} = planOf(text).plan
  const t = pullN(5, 640, 43) + pullN(2.2, 640, 50) + pullN(1.1, 640, 55)
  // Over the face: nut 0.5 + 1, octave 2.2 + 1, so bridge 2·3.2 − 1.5 = 4.9; anchors 4 under it, 60 behind the bridge.
  const front = Math.atan((4.9 - 1.5) / 640)
  const push = t * (Math.sin(front) + Math.sin(Math.atan((4.9 + 4) / 60)))

  test('stands without a fault', () => expect(grave(text)).toEqual([]))
  test('the walls share the push of the bridge as a lever', () => {
    near(tensionTotalN, t)
    near(neck!.inside!.wallsN![0], (push * 45) / 250)
    near(neck!.inside!.wallsN![1], (push * 205) / 250)
  })
  test('what is left inside is stressed by M·c/I and T/A', () => {
    const moment = (x: number) =>
      t * Math.cos(front) * (22.5 + 1.5 + (3.4 / 640) * x) - ((push * 45) / 250) * Math.max(x - 435, 0)
    const stress = (x: number) => (moment(x) * 9.5) / ((42 * 19 ** 3) / 12) + t / (42 * 19)
    near(neck!.inside!.stressMpa, Math.max(stress(440), stress(640)))
    expect(neck!.inside!.thicknessMm).toBeCloseTo(19, 9)
  })
  test('the lid sinks, loose on its walls, by Navier’s series', () => {
    const loose = navier({a: 240, b: 180}, even(3590, 6, 0.3), {x: 200, along: 18, across: 76, pushN: push})
    near(box!.lid!.rangeMm[1], loose)
    expect(box!.lid!.sinkMm).toBeLessThan(loose)
  })
})

// Nylon over a zero fret and a board of radius 400, screwed to the end of a box at 380; its lid only 2 mm thick.
describe('a nylon-strung neck at the end of a box, a round board, a zero fret, a thin lid', () => {
  const strings = [
    {note: 'G3', midi: 55, grams: 0.9, gauge: 1},
    {note: 'C4', midi: 60, grams: 0.58, gauge: 0.8},
    {note: 'E4', midi: 64, grams: 0.4, gauge: 0.66},
  ]
  const stiffness = 2500
  const text = `
title: Dry berth
units: mm
ruler: 0.5
scale: {length: 560, fretted: true}
frets: {crown: 1, wire-width: 2, tang: 0.5, tang-depth: 1.5}
nut: {kind: zero-fret}
action: {octave: 2, relief: 0}
strings:
${strings.map(({note, grams, gauge}) => `  - {note: ${note}, gauge: ${gauge} mm, material: nylon, mass: ${grams} g/m, stiffness: ${stiffness} MPa}`).join('\n')}
spacing: {nut: 20, bridge: 30}
fingerboard: {wood: black walnut, thickness: 6, radius: 400}
neck: {joins: end, length: 520, width: 40, thickness: 27, above-top: 6, wood: sugar maple}
head: {length: 140, joint: straight}
bridge: {kind: saddle, on: top, foot: 12, length: 60}
anchors: {kind: tailpiece, at: 650, height: -6}
box: {length: 280, width: 190, depth: 60, sides: 8, back: 3, wood: sugar maple, at: 380, top: {thickness: 2, wood: mdf}, end-block: {wood: sugar maple, length: 20, width: 60, thickness: 40}}
screws: [{size: 8, length: 60, at: [380], off: [-8, 8], down: [14], through: [block, side], into: neck}]`
  const {plan} = planOf(text)
  const pulls = strings.map(({grams, midi}) => pullN(grams, 560, midi))
  const t = sum(pulls)
  // Over the face: crown 1, octave 2 + 1, so bridge 5; the outer strings, 13.4 off at 380, follow the board by as much down.
  const line = 1 + (4 / 560) * 380
  const sagitta = 400 - Math.sqrt(400 ** 2 - (10 + (5 / 560) * 380) ** 2)
  const momentNmm = sum(pulls.map((pull, i) => pull * (line + 6 - (i === 1 ? 0 : sagitta))))

  test('two screws 14 under the edge share what the strings turn the neck by', () => {
    near(plan.tensionTotalN, t)
    near(plan.endJoint!.momentNmm, momentNmm)
    for (const {loadN} of plan.fasteners!) near(loadN, momentNmm / (2 * 14))
  })
  test('each string is set back as the published model has it over a zero fret', () => {
    for (const [i, {gauge}] of strings.entries()) {
      const radius = gauge / 2
      const kappa = (Math.PI * radius ** 2 * stiffness) / pulls[i]!
      const setback = (Math.sqrt(kappa) * radius) / 2 + (kappa * 4 ** 2) / (4 * 560)
      expect(Math.abs(plan.bridge!.setbacks![i]!.setbackMm - setback)).toBeLessThan(0.02 * setback + 0.02)
    }
  })
  test('the board is lower at its edges by the sagitta of 40 mm on a radius of 400', () => {
    near(plan.neck!.boardRadius!.checks[0]!.sagittaMm, 400 - Math.sqrt(400 ** 2 - 20 ** 2))
  })
  test('the thin lid sinks by Navier’s series, and is told', () => {
    const push = t * (Math.sin(Math.atan(4 / 560)) + Math.sin(Math.atan(11 / 90)))
    const loose = navier({a: 264, b: 174}, even(3590, 2, 0.3), {x: 172, along: 14, across: 62, pushN: push})
    near(plan.box!.lid!.rangeMm[1], loose)
    expect(grave(text).filter((rule) => rule.startsWith('top-'))).not.toEqual([])
  })
})

// A neck that ends on the top at 520, screwed there at 420 and 500: the strings go on to a bridge on the top at 600.
test('a neck on the top, the bridge beyond it: its head end screw holds what the strings tip it by', () => {
  const {plan} = planOf(`
title: Barge pole
units: mm
ruler: 0.5
scale: 600
play: slide
strings: [{note: D3, mass: 3 g/m}, {note: A3, mass: 1.4 g/m}]
action: {nut: 4, octave: 6}
neck: {joins: on top, width: 40, thickness: 22, length: 660, wood: white ash}
head: {length: 140, joint: straight}
bridge: {kind: saddle, on: top, foot: 10, length: 60}
anchors: {kind: pins, at: 655, spacing: 12, body: 4, height: -22}
box: {length: 280, width: 180, depth: 60, sides: 8, back: 3, wood: white ash, at: 400, top: {thickness: 4}}
screws: [{size: 8, length: 20, at: [420, 500], off: [0], through: [top], into: neck}]`)
  const t = pullN(3, 600, 50) + pullN(1.4, 600, 57)
  // Heights over the face: nut 4, bridge 8. Moments about the far screw, in the seat 22 under the face.
  const slope = Math.atan(4 / 600)
  const head = (t * Math.cos(slope) * (4 + 22) + t * Math.sin(slope) * 500) / 80
  near(plan.tensionTotalN, t)
  near(plan.fasteners![0]!.loadN, head)
  expect(plan.fasteners![1]!.loadN).toBe(0)
  // Number 8: a shank of 4.17 mm. Eq. 8-10: p = 108.25·G²·D·L, ash of G 0.6, 2/3 of 20 mm of thread.
  near(plan.fasteners![0]!.withdrawalN, 108.25 * 0.6 ** 2 * 4.17 * ((2 / 3) * 20))
})

// A fretless stick on the top that carries nut, bridge and anchors: between the ends the moment runs in a straight line,
// so in the middle the hollow is M·L²/(8EI) of the moment there.
test('a neck that carries all its strings bows by M·L²/(8EI), and time doubles it', () => {
  const {plan} = planOf(`
title: Sounding lead
units: mm
ruler: 0.5
scale: 620
play: slide
strings: [{note: G2, mass: 5.4 g/m}, {note: D3, mass: 2.4 g/m}, {note: G3, mass: 1.2 g/m}]
action: {nut: 3, octave: 5}
neck: {joins: on top, width: 38, thickness: 21, length: 845, wood: sugar maple}
head: {length: 140, joint: straight}
bridge: {kind: rod, on: neck}
anchors: {kind: plain, at: 690, spacing: 10, string-hole: 2, height: 0}
box: {length: 250, width: 170, depth: 50, sides: 6, back: 3, wood: basswood, at: 420, top: {thickness: 3}}`)
  const t = pullN(5.4, 620, 43) + pullN(2.4, 620, 50) + pullN(1.2, 620, 55)
  near(plan.tensionTotalN, t)
  const moment = t * Math.cos(Math.atan(4 / 620)) * (10.5 + 5)
  const bow = (moment * 620 ** 2) / (8 * 12_600 * ((38 * 21 ** 3) / 12))
  near(plan.neck!.bow!.octaveMm, bow)
  near(plan.neck!.bow!.creepMm, bow)
})
