import {all, create} from 'mathjs'
import {describe, expect, test} from 'vitest'
import {changed} from '../../support/changed.ts'
import {planOf} from '../../support/plan-of.ts'
import fc from '../../support/properties.ts'
import {soundBuilds} from '../../support/sound-builds.ts'

import '../../support/slow.ts'

// The library's own types leave it out.
const {solveODE: solveOde} = create(all!) as unknown as {solveODE: CallableFunction}

/** A neck through a box 200 long with walls of 10: all of it in millimetres, N and MPa, written out by hand below. */
const through = `
title: Slipway
units: mm
ruler: 0.5
scale: 600
strings: [{note: A3, mass: 1 g/m}]
action: {nut: 3, octave: 5}
neck: {width: 40, thickness: 30, joins: through, above-top: 5, wood: test stick, stiffness: 10 GPa, density: 600 kg/m3, length: 800}
head: {length: 140, joint: straight}
bridge: {kind: saddle, on: top}
anchors: {kind: plain, at: 650, string-hole: 2, height: -5}
box: {length: 200, width: 180, depth: 60, sides: 10, back: 3, top: {thickness: 3}, at: 440, neck-gap: 4}
`

interface Figures {
  /** Pull. */
  t: number
  /** What is left inside, under a face that lies so deep. */
  deep: number
}

/**
 * The neck written out by hand: a stick 40 x 30, in the walls (440 to 450 and 630 to 640) cut down to the top's
 * underside, 8 under the face, between them to `deep`; walls hold it in their middles, 445 and 635.
 */
function byHand({t, deep}: Figures) {
  const [x1, x2, xb] = [445, 635, 600]
  // Heights 3 at the nut and 7 at the bridge (5 at the octave); anchors 5 under the face, 50 behind the bridge.
  const front = Math.atan(4 / 600)
  const back = Math.atan(12 / 50)
  const d = t * (Math.sin(front) + Math.sin(back))
  const [r1, r2] = [(d * (x2 - xb)) / (x2 - x1), (d * (xb - x1)) / (x2 - x1)]
  const surface = (x: number) => (x < 440 || x > 640 ? 0 : x < 450 || x > 630 ? 8 : deep)
  const ei = (x: number) => (10_000 * 40 * (30 - surface(x)) ** 3) / 12
  const axis = (x: number) => (30 + surface(x)) / 2
  // The part towards the nut: the nut is pulled along the string's line, which rises 4 in 600 wherever it is cut.
  const moment = (x: number) =>
    t * Math.cos(front) * (axis(x) + 3 + (4 / 600) * x) - r1 * Math.max(x - x1, 0) - r2 * Math.max(x - x2, 0)
  return {x1, x2, xb, d, r1, r2, ei, moment, breaks: [0, 440, x1, 450, 540, xb, 630, x2]}
}

/** Integrate y″ = M/EI by the library's own Runge-Kutta; the bridge stands on the box's line through both walls. */
function hollowByLibrary({x1, x2, xb, ei, moment, breaks}: ReturnType<typeof byHand>) {
  let state = [0, 0]
  const ys = new Map([[0, 0]])
  const path: [number, number][] = [[0, 0]]
  for (const [i, from] of breaks.slice(0, -1).entries()) {
    const to = breaks[i + 1]!
    const inside = (x: number) => Math.min(to - 1e-9, Math.max(from + 1e-9, x))
    const derivative = (x: number, [, slope]: number[]) => [slope!, moment(inside(x)) / ei(inside(x))]
    const {t, y} = solveOde(derivative, [from, to], state, {tol: 1e-10, maxStep: (to - from) / 60}) as {
      t: number[]
      y: number[][]
    }
    for (const [k, x] of t.entries()) path.push([x, y[k]![0]!])
    state = y.at(-1)!
    ys.set(to, state[0]!)
  }
  const bridge = ys.get(x1)! + ((ys.get(x2)! - ys.get(x1)!) * (xb - x1)) / (x2 - x1)
  return Math.max(...path.filter(([x]) => x <= xb).map(([x, y]) => (x / xb) * bridge - y))
}

describe('a neck through a box, its free body by hand', () => {
  const {plan} = planOf(through)
  const t = plan.tensionTotalN!
  const hand = byHand({t, deep: 12})
  const inside = plan.neck!.inside!

  test('is left 30 − 5 − 3 − 4 = 18 mm thick between the walls', () => {
    expect(inside).toMatchObject({fromMm: 450, toMm: 630})
    expect(inside.thicknessMm).toBeCloseTo(18, 9)
    expect(inside.eiNmm2).toBeCloseTo(10_000 * 40 * 486, 3)
    const middle = plan.neck!.sections!.find(({what}) => what?.at === 'inside')!
    expect(middle.thicknessMm).toBeCloseTo(18, 9)
    expect(middle.neutralAxisMm).toBeCloseTo(21, 9)
  })

  test('is pressed down by the walls, as a lever shares the bridge’s push', () => {
    expect(plan.bridge!.downforceN).toBeCloseTo(hand.d, 9)
    expect(inside.wallsN![0]).toBeCloseTo(hand.r1, 9)
    expect(inside.wallsN![1]).toBeCloseTo(hand.r2, 9)
  })

  test('is stressed by M·c/I and T/A where it is worst', () => {
    const xs = Array.from({length: 1800}, (_, i) => 450 + i / 10 + 0.05)
    const worst = Math.max(...xs.map((x) => (hand.moment(x) * 9) / ((40 * 18 ** 3) / 12) + t / (40 * 18)))
    expect(inside.stressMpa! / worst).toBeCloseTo(1, 1.9)
  })

  test('buckles between the walls at Euler’s load', () => {
    expect(inside.bucklingMargin! * t).toBeCloseTo((Math.PI ** 2 * 10_000 * 40 * 486) / 180 ** 2, 3)
  })

  // The library's hollow is read at its own steps, so a little short of the deepest.
  test('bows as a general differential-equation solver bends it', () => {
    expect(plan.neck!.bow!.reliefMm / hollowByLibrary(hand)).toBeCloseTo(1, 2)
  })
})

/*
 * Anchors on the box, 1 behind the middle of its tail wall. The box by itself: pushed down by the bridge with D at 600,
 * lifted by t·sin(back) and drawn towards the nut by t·cos(back) at the anchors, 5 under the face; held by the neck in
 * both walls, along it in the tail wall, in the middle of what is left of the neck there: (8 + 30)/2 = 19 under the face.
 */
test('strings that end on the box draw on it, and the walls press the neck as that has it', () => {
  const {plan} = planOf(changed(through, {'anchors.at': '636'}))
  const t = plan.tensionTotalN!
  const [front, back] = [Math.atan(4 / 600), Math.atan(12 / 36)]
  const d = t * (Math.sin(front) + Math.sin(back))
  const atHead = (d * 35 + t * Math.sin(back) * 1 + t * Math.cos(back) * (19 - 5)) / 190
  const {wallsN} = plan.neck!.inside!
  expect(wallsN![0]! / atHead).toBeCloseTo(1, 6)
  expect(wallsN![1]).toBeCloseTo(d - t * Math.sin(back) - atHead, 6)
  // The neck by itself, towards the nut: past the tail wall nothing acts on it, so there no moment is left.
  const left = t * Math.cos(front) * (19 + 7 + (4 / 600) * 35) - atHead * 190
  expect(Math.abs(left)).toBeLessThan(0.06 * t * 26)
})

test('over any gap, pull and thickness left it agrees with an independent sum of moments', () => {
  const cases = fc.record({
    gap: fc.integer({min: 1, max: 14}),
    grams: fc.integer({min: 5, max: 40}),
  })
  fc.assert(
    fc.property(cases, ({gap, grams}) => {
      const text = changed(through, {
        'box.neck-gap': `${gap}`,
        strings: `[{note: A3, mass: ${grams / 10} g/m}]`,
      })
      const {plan} = planOf(text)
      const hand = byHand({t: plan.tensionTotalN!, deep: 8 + gap})
      // The virtual work of a unit load gives the hollow at the octave: no integration of slopes.
      const unit = (x: number) => {
        const {x1, x2, xb} = hand
        const [nut, bridge] = [0.5, 0.5]
        const [w1, w2] = [(bridge * (x2 - xb)) / (x2 - x1), (bridge * (xb - x1)) / (x2 - x1)]
        return nut * x - Math.max(x - 300, 0) + w1 * Math.max(x - x1, 0) + w2 * Math.max(x - x2, 0)
      }
      let hollow = 0
      for (let x = 0.05; x < hand.x2; x += 0.1) hollow += ((hand.moment(x) * unit(x)) / hand.ei(x)) * 0.1
      expect(plan.neck!.bow!.octaveMm / hollow).toBeCloseTo(1, 1.7)
    }),
    {numRuns: 25},
  )
})

test('what is cut away altogether is a fault, and has a daylight that would do', () => {
  const {problems, plan} = planOf(changed(soundBuilds.through, {'box.neck-gap': '2'}))
  expect(problems.map(({rule}) => rule)).toContain('neck-thin-inside')
  expect(plan.neck!.inside!.thicknessMm).toBe(0)
  expect(plan.neck!.bow).toBeUndefined()
})

// A neck 1 1/2 in wide at the nut and 2 in at its end, 27 in on; walls at 16 and 26 in.
test('a tapered neck is as wide in each wall as it is there', () => {
  const {plan} = planOf(
    changed(soundBuilds.through, {'neck.width': '{nut: 1 1/2, tail: 2}', 'box.notch.width': ''}),
  )
  const {notch} = plan.box!.neck!
  expect(notch!.widthMm / 25.4).toBeCloseTo(1.5 + (0.5 * 16) / 27, 9)
  expect(notch!.tailWidthMm! / 25.4).toBeCloseTo(1.5 + (0.5 * 26) / 27, 9)
  // 1 in deep under a top of 1/8 in.
  expect(notch!.topOffMm! / 25.4).toBeCloseTo(7 / 8, 9)
})

test('strung heights: the bridge is built lower by twice the bow at the octave, and creep raises the octave by it', () => {
  const {action, neck, scale} = planOf(soundBuilds['on top']).plan
  const {octaveMm} = neck!.bow!
  expect(action!.reliefFrom).toBe('bow')
  expect(action!.bridgeToBuildMm).toBeCloseTo(action!.bridgeHeightMm - 2 * octaveMm, 12)
  expect(action!.octaveAfterCreepMm).toBeCloseTo(action!.octaveMm + octaveMm, 12)
  const octave = scale!.lines!.findIndex(({label}) => label === '12')
  expect(action!.atLinesMm![0]![octave]).toBeCloseTo(action!.octaveMm, 6)
})
