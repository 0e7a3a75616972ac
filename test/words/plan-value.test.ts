import {describe, expect, it} from 'vitest'
import {planValues} from '../../plugins/tables/plan-values.ts'
import {valueNeeds} from '../../plugins/tables/value-needs.ts'
import {keysMissingFor, planValue} from '../../plugins/words/plan-value.ts'
import {printedPlan} from '../../plugins/words/printed-plan.ts'
import {planOf} from '../support/plan-of.ts'

const {plan: computed, build} = planOf(`
title: Needle box
scale: {length: 24 1/4, pattern: diatonic, lines: 14}
strings: [{note: D4, gauge: .013}, {note: D4, gauge: .013}, {note: F#3, gauge: .020w}]
anchors: {at: 26 3/4, spacing: 1/2}
`)
const plan = printedPlan(computed)

function likelyFor(path: string): string[] | undefined {
  const value = planValue(plan, path)
  return value.is === 'unknown' ? value.likely() : undefined
}

describe('a value of the plan', () => {
  it.each([
    ['scale.lengthMm', expect.closeTo(24.25 * 25.4)],
    ['scale.length', expect.closeTo(24.25 * 25.4)],
    ['scale.lines.7.fromNut', expect.closeTo((24.25 * 25.4) / 2)],
    ['scale.lines.7.label', '7'],
    ['strings.F#3.gauge', '.020w'],
    ['strings.D4-2.name', 'D4-2'],
    ['anchors.F#3.off', 12.7],
    ['assumptions.1.path', plan.assumptions[0]?.path],
    ['scale.fretted', false],
    [' scale.length ', expect.closeTo(24.25 * 25.4)],
  ])('%s is found', (path, value) => expect(planValue(plan, path)).toMatchObject({is: 'value', value}))

  it.each([
    ['box.atMm', 'box.atMm'],
    ['box.at', 'box.atMm'],
    ['neck.bow.relief', 'neck.bow.reliefMm'],
    ['bridge.breakAngle', 'bridge.breakAngleDeg'],
    ['cost.total', 'cost.total'],
  ])('%s is known, and open', (path, pattern) => expect(planValue(plan, path)).toEqual({is: 'open', pattern}))

  it.each([
    ['scale.lenght', ['scale.lengthMm']],
    ['strings.D5.gauge', ['strings.D4.gauge', 'strings.D4-2.gauge', 'strings.F#3.gauge']],
    ['strings.1.gauge', ['strings.D4.gauge', 'strings.D4-2.gauge', 'strings.F#3.gauge']],
    ['neck.totalMm', ['neck.layup.totalMm']],
    ['strings.D4.breakAngle', ['bridge.breakAngleDeg', 'strings.D4.breakKnown']],
    ['frets.count', []],
    ['constructor', []],
    ['__proto__.x', []],
    ['', []],
    ['.', []],
  ])('%s is nothing that is known', (path, likely) => expect(likelyFor(path)).toEqual(likely))

  it('of one of several proposes what that one has in the same unit', () => {
    expect(likelyFor('scale.lines.3.stationMm')?.slice(0, 2)).toEqual([
      'scale.lines.3.fromNutMm',
      'scale.lines.3.fromPreviousMm',
    ])
  })

  it('that holds several is none, and proposes those', () => {
    expect(likelyFor('scale')).toContain('scale.lengthMm')
  })

  it('that a list is asked for proposes what has its words, and what one of the list has', () => {
    expect(likelyFor('strings.total')).toEqual(expect.arrayContaining(['tensionTotalN', 'cost.total']))
    expect(likelyFor('strings.A7')).toContain('strings.D4.name')
  })

  it('names the keys it needs and the file lacks', () => {
    expect(keysMissingFor('box.volumeL', build)).toEqual(['box.length', 'box.width', 'box.depth'])
    expect(
      keysMissingFor('strings.*.tensionN', planOf('title: x\nscale: 24\nstrings: [{note: D4}]').build),
    ).toEqual(['strings.1.gauge'])
  })
})

describe('the table of what values need', () => {
  // The parts of the plan that a maker may put into a sentence.
  const parts =
    'scale strings tensionTotalN layout bridge intonation action neck box tuners anchors screws holes fasteners work cuts bill cost cautions asBuilt settingUp'.split(
      ' ',
    )

  it.each(parts)('says what %s needs', (part) => {
    const names = planValues.filter((name) => name === part || name.startsWith(`${part}.`))
    expect(names).not.toEqual([])
    for (const name of names) expect(valueNeeds.some(([start]) => name.startsWith(start))).toBe(true)
  })
})
