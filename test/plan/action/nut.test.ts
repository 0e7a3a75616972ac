import {describe, expect, test} from 'vitest'
import {planOf} from '../../support/plan-of.ts'
import fc from '../../support/properties.ts'

const wire = 'frets: {wire-width: 0.080, crown: 0.037, tang: 0.020, tang-depth: 0.062, saw-kerf: 0.023}'
const build = (rows: string, fretted = false) =>
  planOf(
    `title: A\nscale: {length: 24, fretted: ${fretted}}\nneck: 1 5/8 x 3/4\nstrings: [D3 .030w, D4 .013]\n${fretted ? wire : ''}\n${rows}`,
  )
const inches = (mm: number | undefined) => mm! / 25.4
const grave = (problems: {severity: string; rule: string}[]) =>
  problems.filter(({severity}) => severity === 'fault' || severity === 'warning').map(({rule}) => rule)

// Worked by hand: what stands above a plane of a rod that lies so deep in it is the diameter less the depth.
describe('diameter, groove and height: two give the third', () => {
  test.each([
    ['nut: {kind: rod, diameter: 3/16, groove: 1/16}', 1 / 8, 1 / 16],
    ['nut: {kind: bolt, diameter: 5/16, groove: 1/8}', 3 / 16, 1 / 8],
    ['nut: {kind: rod, diameter: 3/16}\naction: {nut: 5/32}', 5 / 32, 1 / 32],
    ['nut: {kind: rod, diameter: 3/16}', 1 / 8, 1 / 16],
    ['nut: {kind: rod, diameter: 1/8}', 3 / 32, 1 / 32],
    ['nut: {kind: rod, diameter: 1/4}\naction: {octave: 7/32}\nbridge: {height: 5/16}', 1 / 8, 1 / 8],
  ])('%s', (rows, high, deep) => {
    const {plan, problems} = build(rows)
    expect(inches(plan.nut!.heightMm)).toBeCloseTo(high, 9)
    expect(inches(plan.action!.nutMm)).toBeCloseTo(high, 9)
    expect(inches(plan.nut!.grooveMm)).toBeCloseTo(deep, 9)
    expect(grave(problems)).toEqual([])
  })

  test('over frets the rod stands out by their crowns more', () => {
    const {plan} = build('nut: {kind: rod, diameter: 3/16}', true)
    expect(inches(plan.nut!.grooveMm)).toBeCloseTo(0.1875 - 0.037 - 0.02, 9)
    expect(plan.assumptions).toContainEqual(expect.objectContaining({path: 'nut.groove'}))
    const drawn = build('nut: {kind: rod, diameter: 3/16, groove: 0.13}', true).plan
    expect(inches(drawn.action!.nutMm)).toBeCloseTo(0.0205, 9)
  })

  test('over frets of an unknown wire a rod tells nothing', () => {
    const {plan} = planOf(
      'title: A\nscale: {length: 24, fretted: true}\nneck: 1 5/8 x 3/4\nstrings: [D3 .030w]\nnut: {kind: rod, diameter: 3/16}',
    )
    expect(plan.nut!.grooveMm).toBeUndefined()
  })

  test('a law: whatever two are given, the string lies on the rod', () => {
    fc.assert(
      fc.property(
        fc.double({min: 2, max: 12, noNaN: true}),
        fc.double({min: 0.1, max: 0.9, noNaN: true}),
        (diameter, part) => {
          const groove = diameter * part
          const [a, b] = [
            build(`nut: {kind: rod, diameter: ${diameter} mm, groove: ${groove} mm}`).plan,
            build(`nut: {kind: rod, diameter: ${diameter} mm}\naction: {nut: ${diameter - groove} mm}`).plan,
          ]
          expect(a.action!.nutMm).toBeCloseTo(diameter - groove, 6)
          expect(b.nut!.grooveMm).toBeCloseTo(groove, 6)
        },
      ),
      {numRuns: 30},
    )
  })
})

describe('what cannot be', () => {
  test.each([
    ['nut: {kind: rod, diameter: 3/16, groove: 1/16}\naction: {nut: 1/16}', 'nut-heights-disagree', '1/8 in'],
    ['nut: {kind: rod, diameter: 1/16}\naction: {nut: 1/8}', 'nut-heights-disagree', '3/16 in'],
    ['nut: {kind: rod, diameter: 1/16, groove: 1/32}\naction: {nut: 1/8}', 'nut-heights-disagree', '5/32 in'],
    ['nut: {kind: rod, diameter: 3/16, groove: 3/16}', 'nut-sunk', '1/16 in'],
    ['nut: {kind: bolt, diameter: 1/4, groove: 1/2}\naction: {nut: 1/8}', 'nut-sunk', '1/8 in'],
    [
      'nut: {kind: rod, diameter: 1/4, groove: 1/8}\naction: {octave: 1/4}\nbridge: {height: 5/16}',
      'nut-heights-disagree',
      '1/16 in',
    ],
  ])('%s', (rows, rule, would) => {
    const {problems} = build(rows)
    const found = problems.filter(({severity}) => severity === 'fault')
    expect(found).toMatchObject([{rule, expected: [would]}])
  })

  test('a rod that does not come above the frets', () => {
    const {problems} = build('nut: {kind: rod, diameter: 3/16, groove: 5/32}', true)
    expect(problems).toContainEqual(
      expect.objectContaining({
        rule: 'nut-sunk',
        message: expect.stringMatching(/below the frets; 0.131 in would do/),
      }),
    )
  })

  test('a ruler’s mark apart is no disagreement', () => {
    expect(
      grave(build('nut: {kind: rod, diameter: 3/16, groove: 1/16}\naction: {nut: 5/32}').problems),
    ).toEqual([])
  })
})

describe('a zero fret', () => {
  test('is a fret more: wire, line and slot', () => {
    const [plain, zero] = [build('nut: {kind: flat}', true).plan, build('nut: {kind: zero-fret}', true).plan]
    const [before, after] = [plain.neck!.fretting!, zero.neck!.fretting!]
    expect(after.pieces).toHaveLength(before.pieces!.length + 1)
    // 1 5/8 in of neck and 1/8 in over at each side.
    expect(inches(after.wireMm! - before.wireMm!)).toBeCloseTo(1 + 7 / 8, 9)
    expect(zero.layout).toContainEqual(
      expect.objectContaining({
        what: expect.objectContaining({kind: 'line', label: '0', isFret: true}),
        stationMm: 0,
      }),
    )
    expect(zero.action!.nutMm).toBe(0)
    expect(inches(zero.nut!.comesToMm)).toBeCloseTo(0.037, 9)
  })

  test('without other frets stands as high as its wire, and is slotted and pressed in', () => {
    const {plan} = build(`nut: {kind: zero-fret}\n${wire}`)
    expect(inches(plan.action!.nutMm)).toBeCloseTo(0.037, 9)
    expect(plan.bill).toContainEqual(
      expect.objectContaining({item: expect.objectContaining({is: 'fret wire'})}),
    )
    expect(plan.work!.map(({id}) => id)).toEqual(expect.arrayContaining(['slot-frets', 'fret', 'fret-ends']))
  })

  test('has its own crown and no more', () => {
    const {problems} = build('nut: {kind: zero-fret}\naction: {nut: 0.010, octave: 3/32}', true)
    expect(problems).toContainEqual(
      expect.objectContaining({rule: 'nut-heights-disagree', severity: 'fault', expected: ['0']}),
    )
  })
})

// Anderson and Beausoleil, J. Acoust. Soc. Am. 156, 683 (2024): Δν ≈ (1200/ln 2)·[(γ − 1)(B0 − ΔS/X0) + ΔN/X0 + κQ/2]
// with Q ≈ [γb + (γ − 1)c]²/(2(γ − 1)X0²). Over a zero fret b is 0, Q is (γ − 1)c²/(2X0²), and every fret is in tune at
// once with ΔN = 0 and ΔS = X0·B0 + κc²/(4X0). Their string: ρ 0.43 mm, κ 51; c 4 mm on 650 mm: 1.535 + 0.314 mm.
test('over a zero fret the saddle alone puts every fret right, as the published model with b = 0 has it', () => {
  const [radius, kappa, scale, c] = [0.43, 51, 650, 4]
  const called = scale * ((Math.sqrt(kappa) * radius) / (2 * scale)) + (kappa * c ** 2) / (4 * scale)
  expect(called).toBeCloseTo(1.849, 3)
  // κ = πρ²E/T: a mass and a stiffness that give the pull of E4 at 650 mm this κ.
  const pull = 70
  const mass = pull / (2 * 0.65 * 329.6276) ** 2
  const stiffness = (kappa * pull) / (Math.PI * radius ** 2)
  const {plan, problems} = planOf(`
title: Zero
units: mm
scale: {length: 650, fretted: true}
frets: {crown: 1}
nut: {kind: zero-fret}
action: {octave: 2, relief: 0}
strings: [{note: E4, gauge: ${2 * radius} mm, material: nylon, mass: ${mass * 1000} g/m, stiffness: ${stiffness} MPa}]`)
  expect(grave(problems)).toEqual([])
  const [setback] = plan.bridge!.setbacks!
  expect(Math.abs(setback!.setbackMm - called)).toBeLessThan(0.03)
  expect(Math.abs(setback!.together.nutMm)).toBeLessThan(0.005)
  expect(Math.abs(setback!.together.saddleMm - called)).toBeLessThan(0.03)
  expect(setback!.rmsCents).toBeLessThan(0.1)
})
