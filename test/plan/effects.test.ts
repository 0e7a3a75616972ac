import {readFileSync} from 'node:fs'
import {resolve} from 'node:path'
import {describe, expect, test} from 'vitest'
import {readBuild} from '../../plugins/build-file/read.ts'
import {changesFrom} from '../../plugins/plan/changes.ts'
import {effectsOf} from '../../plugins/plan/effects.ts'
import {feltOtherwise, insteadOf} from '../../plugins/words/effects.ts'
import '../support/slow.ts'
import {planOf} from '../support/plan-of.ts'

const journal = {}
const buildOf = (text: string) => readBuild(`---\n${text.trim()}\n---\n`, {slug: 'a', journal}).build
const original = `
title: Needle box
scale: {length: 24 1/4, fretted: true}
strings: [D3 .030w, A3 .020w, D4 .013]
neck: {wood: hard maple, width: 1 1/2, thickness: 3/4, joins: on top}
box: 10 x 7 x 2
`
const copy = `${original.replace('24 1/4', '23').replace('.013', '.012').replace('3/4', '7/8')}fingerboard: {wood: black walnut, thickness: 1/4}\n`
const {was, is, alone} = effectsOf(buildOf(original), buildOf(copy), {journal})
const ofAlone = (path: string) => alone.find(({paths}) => paths.includes(path))!.is

// Judged by plans of whole files, each written out with what is changed.
describe('what the changes of a build come to', () => {
  test('with all of them is the plan of the build, and without any that of the original', () => {
    for (const [felt, text] of [
      [was, original],
      [is, copy],
    ] as const) {
      const {plan} = planOf(text)
      expect(felt.pullN).toBe(plan.tensionTotalN)
      expect(felt.octaveMm).toBe(plan.action!.octaveMm)
      expect(felt.bridgeMm).toBe(plan.bridge!.stationMm)
      expect(felt.bridgeHeightMm).toBe(plan.action!.bridgeToBuildMm)
      expect(felt.lastLineClearMm).toBe(plan.box!.atMm! - plan.scale!.lines!.at(-1)!.fromNutMm)
      expect(felt.bowMm).toBe(plan.neck!.bow!.octaveMm)
      expect(felt.airHz).toBe(plan.box!.resonanceLowHz)
      expect(felt.worstCents).toBe(plan.bridge!.drawnWorstCents)
    }
  })

  test.each([
    ['scale.length', original.replace('24 1/4', '23')],
    ['strings.D4.gauge', original.replace('.013', '.012')],
    ['neck.thickness', original.replace('3/4', '7/8')],
  ])('with %s alone is the plan of the original with that line', (path, text) => {
    const {plan} = planOf(text)
    expect(ofAlone(path).pullN).toBe(plan.tensionTotalN)
    expect(ofAlone(path).bowMm).toBe(plan.neck!.bow!.octaveMm)
    expect(ofAlone(path).bridgeHeightMm).toBe(plan.action!.bridgeToBuildMm)
  })

  // A string's pull grows as the square of its length and of its diameter (Mersenne).
  test('moves the pull as strings do', () => {
    expect(ofAlone('scale.length').pullN! / was.pullN!).toBeCloseTo((23 / 24.25) ** 2, 9)
    const thinner = planOf(original).plan.strings![2]!.tensionN! * (1 - (12 / 13) ** 2)
    expect(was.pullN! - ofAlone('strings.D4.gauge').pullN!).toBeCloseTo(thinner, 6)
  })

  test('starts from the original as it was made', () => {
    const measured = `${original}measured: {scale.length: 23}\n`.replace('fretted: true', 'fretted: false')
    const {plan} = planOf(original.replace('24 1/4', '23').replace('fretted: true', 'fretted: false'))
    expect(effectsOf(buildOf(measured), buildOf(copy), {journal}).was.pullN).toBe(plan.tensionTotalN)
  })

  test('of many changes is told by the part that they belong to', () => {
    const full = readFileSync(resolve('builds/lantern-pier/index.md'), 'utf8').split(/^---$/m)[1]!
    const parts = effectsOf(buildOf('title: A\nscale: 24'), buildOf(full), {journal}).alone
    expect(parts.length).toBeLessThanOrEqual(24)
    expect(parts.find(({paths}) => paths.includes('neck.thickness'))!.paths).toContain('neck.length')
  })

  test('can be of anything against anything', () => {
    const many =
      'title: C\nstrings: [D3]\nneck: {width: {nut: 1 1/2, tail: 2}}\nfingerboard: none\ntuners: {at: [-2]}'
    const texts = ['title: A', original, many]
    for (const a of texts)
      for (const b of texts) {
        const {is, alone} = effectsOf(buildOf(a), buildOf(b), {journal})
        expect(is.pullN).toBe(planOf(b).plan.tensionTotalN)
        expect(alone.flatMap(({paths}) => paths).sort()).toEqual(
          changesFrom(buildOf(a), buildOf(b))
            .map(({path}) => path)
            .sort(),
        )
      }
  })
})

test('what is felt otherwise is said, and what reads the same is not', () => {
  const ruler = {units: 'in', rulerMm: 25.4 / 32} as const
  const said = (before: object, after: object) => feltOtherwise(before, after, ruler).map(insteadOf)
  expect(said({pullN: 240.8, lastLineClearMm: 25.4}, {pullN: 212.7, lastLineClearMm: -12.7})).toEqual([
    'pull of all strings 47.8 lbf instead of 54.1 lbf',
    'last line 1/2 in over the box instead of 1 in before the box',
  ])
  expect(said({airHz: 282.8, airNote: 'C#4'}, {airHz: 282.6, airNote: 'C#4'})).toEqual([])
  expect(said({bowMm: 0.2}, {})).toEqual([])
  expect(said({lastLineClearMm: 0.1}, {lastLineClearMm: 3.2})).toEqual([
    'last line 1/8 in before the box instead of at the box',
  ])
})
