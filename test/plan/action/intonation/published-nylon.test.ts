import {describe, expect, test} from 'vitest'
import {planOf} from '../../../support/plan-of.ts'

// Anderson and Beausoleil, J. Acoust. Soc. Am. 156, 683 (2024): six nylon strings of one grade on 650 mm, string 1 mm
// above the frets at the nut and 5 mm at the saddle. Radius mm, mass g/m, pull N, stiffness GPa, setbacks mm, cents.
const published = [
  {note: 'E4', radius: 0.356, mass: 0.374, pull: 68.6, stiffness: 8.33, saddle: 1.48, nut: -0.36, rms: 0.15},
  {note: 'B3', radius: 0.409, mass: 0.505, pull: 52.0, stiffness: 4.82, saddle: 1.69, nut: -0.36, rms: 0.15},
  {note: 'G3', radius: 0.512, mass: 0.836, pull: 54.2, stiffness: 3.87, saddle: 2.33, nut: -0.43, rms: 0.19},
  {note: 'D3', radius: 0.368, mass: 1.92, pull: 70.0, stiffness: 7.56, saddle: 1.48, nut: -0.34, rms: 0.14},
  {note: 'A2', radius: 0.445, mass: 3.289, pull: 67.3, stiffness: 5.28, saddle: 1.82, nut: -0.36, rms: 0.15},
  {note: 'E2', radius: 0.546, mass: 5.47, pull: 62.8, stiffness: 3.9, saddle: 2.46, nut: -0.43, rms: 0.19},
]
const kappas = [48.2, 48.7, 58.6, 46.0, 48.7, 58.2]
const firstB = [0.0019, 0.0022, 0.00301, 0.00192, 0.00239, 0.00321]

const file = (heights: string, wound: (note: string) => boolean) => `
title: Nylon
units: mm
scale: {length: 650, fretted: true}
${heights}
strings:
${[...published]
  .reverse()
  .map(
    (one) =>
      `  - {note: ${one.note}, gauge: ${(2 * one.radius).toFixed(3)} mm${wound(one.note) ? ' w' : ''}, material: nylon, mass: ${one.mass} g/m, stiffness: ${one.stiffness} GPa}`,
  )
  .join('\n')}
`
const isBass = (note: string) => note.endsWith('2') || note === 'D3'

describe.each([
  {heights: 'action: {nut: 1, octave: 3}', wound: isBass},
  {heights: 'action: {nut: 1}\nbridge: {height: 5}', wound: () => false},
  {heights: 'action: {octave: 3}\nbridge: {height: 6, on: neck}\nfrets: {crown: 1}', wound: isBass},
])('with $heights', ({heights, wound}) => {
  const {plan, problems} = planOf(file(heights, wound))

  test('a sound set is met with silence, but for a packet of wound strings whose gauge does not say so', () => {
    const unlike = problems.map(({rule, severity}) => `${rule} ${severity}`)
    expect(unlike).toEqual(wound('E2') ? [] : Array(3).fill('packet-unlike-gauge remark'))
  })

  test.each(published)('$note pulls $pull N', ({note, pull}) => {
    const string = plan.strings!.find((one) => one.name === note)!
    expect(Math.abs(string.tensionN! - pull)).toBeLessThan(0.1)
  })

  test.each(published)('$note is set back $saddle mm at the saddle and $nut mm at the nut', (one) => {
    const {together} = plan.bridge!.setbacks!.find(({name}) => name === one.note)!
    expect(Math.abs(together.saddleMm - one.saddle)).toBeLessThan(0.03)
    expect(Math.abs(together.nutMm - one.nut)).toBeLessThan(0.01)
    expect(Math.abs(together.rmsCents - one.rms)).toBeLessThan(0.01)
  })
})

const {plan} = planOf(file('action: {nut: 1, octave: 3}', isBass))

test.each(published.map((one, i) => ({...one, kappa: kappas[i]!, b0: firstB[i]!})))(
  '$note stretches as κ $kappa and B0 $b0 say',
  ({note, kappa, b0}) => {
    const {sectionMm, stiffnessMpa, tensionN, inharmonicity} = plan.strings!.find((one) => one.name === note)!
    expect(Math.abs((Math.PI * (sectionMm! / 2) ** 2 * stiffnessMpa!) / tensionN! - kappa)).toBeLessThan(0.15)
    expect(Math.abs(Math.sqrt(inharmonicity!) / Math.PI - b0)).toBeLessThan(1e-5)
  },
)

// The same paper: over five sets of strings the saddle goes back 1.9 ± 0.4 mm and (4.4 ± 0.2)·ρ, the nut −0.37 ± 0.03 mm.
test('the set’s means lie where the paper’s do', () => {
  const setbacks = plan.bridge!.setbacks!
  const mean = (values: number[]) => values.reduce((sum, one) => sum + one, 0) / values.length
  expect(Math.abs(mean(setbacks.map(({together}) => together.saddleMm)) - 1.9)).toBeLessThan(0.4)
  expect(Math.abs(mean(setbacks.map(({together}) => together.nutMm)) + 0.37)).toBeLessThan(0.03)
  const byRadius = setbacks.map(
    ({name, together}) => together.saddleMm / published.find(({note}) => note === name)!.radius,
  )
  expect(Math.abs(mean(byRadius) - 4.4)).toBeLessThan(0.3)
})

// G. Byers, American Lutherie 47 (1996), recommends larger setbacks for nylon by ear and bench: a check of range only.
test('the saddle alone lies between nothing and what a maker recommends', () => {
  const byers: Record<string, number> = {E4: 1.3, B3: 2.1, G3: 3.1, D3: 1.5, A2: 1.7, E2: 2.9}
  for (const {name, setbackMm} of plan.bridge!.setbacks!) {
    expect(setbackMm).toBeGreaterThan(0.8 * byers[name]!)
    expect(setbackMm).toBeLessThan(1.6 * byers[name]!)
  }
})

test('the saddle alone leaves more over than saddle and nut together', () => {
  for (const {rmsCents, plainRmsCents, together} of plan.bridge!.setbacks!) {
    expect(rmsCents).toBeGreaterThan(together.rmsCents)
    expect(plainRmsCents).toBeGreaterThan(rmsCents)
  }
})
