import {describe, expect, test} from 'vitest'
import {changed} from '../../support/changed.ts'
import {planOf, printedOf} from '../../support/plan-of.ts'

const build = `
title: Slack water
scale: {length: 24, fretted: false}
strings: [D3 .030w, A3 .020w, D4 .013]
action: {nut: 1/8, octave: 7/32}
neck: {width: 1 1/2, thickness: 3/4, wood: white ash, joins: on top}
box: {wood: basswood, length: 10, width: 7, depth: 2, top: 1/8, holes: [{diameter: 1 3/8, along: 3, off: 2}]}
`
const measured = (values: string, more: Record<string, string> = {}) =>
  planOf(changed(build, {measured: values, ...more}))
const first = (values: string, more: Record<string, string> = {}) =>
  printedOf(changed(build, {measured: values, ...more})).asBuilt![0]!

describe('as built', () => {
  test('nothing measured, nothing said', () => {
    expect(planOf(build).plan.asBuilt).toBeUndefined()
    expect(measured('{on: 2026-03-15}').plan.asBuilt).toBeUndefined()
  })

  test('a difference is what was measured less what was drawn, in mm', () => {
    const one = first('{scale.length: 24 1/32}')
    expect(one).toMatchObject({path: 'scale.length', unit: 'mm', isOut: false})
    expect(one.planned).toBeCloseTo(609.6, 9)
    expect(one.measured).toBeCloseTo(610.39375, 9)
    expect(one.difference).toBeCloseTo(25.4 / 32, 9)
    expect(one.tolerance).toBeCloseTo(25.4 / 32, 9)
  })

  // By hand: lines marked for 24 in on 24 1/4 in; the octave line stands at 12 in, so 12 1/4 in sounds:
  // 1200·log2(24.25/12.25) = 1182.24 cents, 17.8 flat. The pull goes with the square: (24.25/24)² = 1.0209.
  test('a longer scale makes every line flat and every string pull more', () => {
    const {effects} = first('{scale.length: 24 1/4}')
    expect(effects.join(' ')).toContain('line 12 is 17.8 cents flat')
    expect(effects.join(' ')).toContain('pulls 2.1 % more')
    expect(first('{scale.length: 23 3/4}').effects.join(' ')).toContain('cents sharp')
  })

  // By hand: 12 1/32 in from the nut on 24 in leaves 11 31/32 in: 1200·log2(24/11.96875) = 1204.51.
  test('a line off its place is sharp or flat by what is left of the string', () => {
    const {effects, planned} = first('{lines: {12: 12 1/32}}')
    expect(planned).toBeCloseTo(304.8, 9)
    expect(effects).toEqual(['Where it lies, line 12 sounds 4.5 cents sharp, less than ears notice.'])
  })

  // By hand: stiffness goes with the cube of the thickness, and (48/47)³ = 1.0652.
  test('a thinner neck bows more', () => {
    expect(first('{neck.thickness: 47/64}').effects[0]).toContain('bow it 6.5 % more')
  })

  test('reads what the file leaves out from what is assumed or computed', () => {
    expect(first('{neck.thickness: 3/4}').planned).toBeCloseTo(19.05, 9)
    expect(first('{neck.width: 1 1/2}').planned).toBeCloseTo(38.1, 9)
    expect(first('{head.angle: 13}')).toMatchObject({planned: 13, unit: 'deg', difference: 0, effects: []})
    expect(first('{bridge.height: 3/8}').planned).toBeCloseTo(2 * 5.55625 - 3.175, 9)
    expect(first('{neck.length: 33}').planned).toBeGreaterThan(800)
  })

  test('pitch counts from the temperament, a pull from the plan, the air from its note', () => {
    const {plan} = measured('{cents: {12: 4}, resonance: 205, strings.D4.tension: 60 N}')
    const by = (path: string) => plan.asBuilt!.find((one) => one.path === path)!
    expect(by('cents.12')).toMatchObject({
      planned: 0,
      measured: 4,
      difference: 4,
      unit: 'cents',
      tolerance: 5,
    })
    expect(by('strings.D4.tension')).toMatchObject({
      measured: 60,
      unit: 'N',
      planned: plan.strings![2]!.tensionN,
    })
    expect(by('resonance')).toMatchObject({measured: 205, unit: 'Hz', planned: plan.box!.resonanceLowHz})
    expect(by('resonance').tolerance).toBeUndefined()
  })

  test('the file’s own tolerance wins over a mark of the ruler', () => {
    const more = {tolerances: '{scale.length: 1/8}'}
    expect(first('{scale.length: 24 1/8}', more)).toMatchObject({
      isOut: false,
      toleranceFrom: 'the build file',
    })
    expect(first('{scale.length: 24 5/32}', more)).toMatchObject({isOut: true})
  })
})

describe('measure-out-of-tolerance', () => {
  const found = (values: string) =>
    measured(values).problems.filter(({rule}) => rule === 'measure-out-of-tolerance')

  test('one mark is allowed, two are not, and the measure’s own line says so', () => {
    expect(found('{scale.length: 24 1/32}')).toEqual([])
    const problems = found('{scale.length: 24 1/16}')
    expect(problems).toHaveLength(1)
    expect(problems[0]).toMatchObject({severity: 'warning'})
    expect(problems[0]!.message).toContain('1/16 in more than the 24 in planned, where 1/32 in is allowed')
  })

  test('five cents are allowed, half a degree and a tenth of the pull', () => {
    expect(found('{cents: {12: 5}}')).toEqual([])
    expect(found('{cents: {12: 6}}')).toHaveLength(1)
    expect(found('{head.angle: 13.5}')).toEqual([])
    expect(found('{head.angle: 14}')).toHaveLength(1)
    expect(found('{resonance: 100}')).toEqual([])
  })

  test('it stays a warning once the instrument is strung up', () => {
    const {problems} = measured('{action.octave: 3/8}', {status: 'strung up'})
    expect(problems.find(({rule}) => rule === 'measure-out-of-tolerance')?.severity).toBe('warning')
  })

  test('a found box is what it is: a remark proposes to plan with it, and is silent then', () => {
    const box = {box: '{length: 10, width: 7, depth: 2}'}
    const depth = (more: Record<string, string>) =>
      planOf(changed(build, {measured: '{box.depth: 2 1/8}', status: 'strung up', ...more})).problems.filter(
        ({rule}) => rule === 'measure-out-of-tolerance',
      )
    expect(depth(box)).toMatchObject([{severity: 'remark', expected: ['2 1/8 in']}])
    expect(depth({box: '{length: 10, width: 7, depth: 2 1/8 in}'})).toEqual([])
  })

  test('stands at the line of the measure', () => {
    const text = `${build.trim()}\nmeasured:\n  action.nut: 1/8\n  action.octave: 3/8\n`
    const {problems} = planOf(text)
    const line = text.split('\n').findIndex((one) => one.includes('action.octave')) + 2
    expect(problems.find(({rule}) => rule === 'measure-out-of-tolerance')?.line).toBe(line)
  })
})

describe('measured again and again', () => {
  const again =
    '[{on: 2026-06-01, action.octave: 1/4}, {on: 2026-03-15, action.octave: 7/32, head.angle: 13}]'

  test('the last day counts, whatever the order in the file, and the earlier ones are kept', () => {
    const [octave, angle] = measured(again).plan.asBuilt!
    expect(octave).toMatchObject({path: 'action.octave', of: 'measured.1.action.octave', on: '2026-06-01'})
    expect(octave!.measured).toBeCloseTo(25.4 / 4, 9)
    expect(octave!.earlier).toHaveLength(1)
    expect(octave!.earlier![0]!.on).toBe('2026-03-15')
    expect(octave!.earlier![0]!.measured).toBeCloseTo((25.4 * 7) / 32, 9)
    expect(angle).toMatchObject({path: 'head.angle', on: '2026-03-15', measured: 13})
    expect(angle!.earlier).toBeUndefined()
  })

  test('setting up goes by the last day alone', () => {
    const moves = (text: string) => measured(text).plan.settingUp
    expect(moves('[{on: 2026-03-15, action.octave: 3/8}, {on: 2026-06-01, action.octave: 7/32}]')).toEqual(
      moves('{on: 2026-06-01, action.octave: 7/32}'),
    )
  })

  test('a measure out of bounds stands in its own record', () => {
    const text = `${build.trim()}\nmeasured:\n  - {on: 2026-03-15, action.octave: 7/32}\n  - {on: 2026-06-01, action.octave: 3/8}\n`
    const {problems} = planOf(text)
    const line = text.split('\n').findIndex((one) => one.includes('2026-06-01')) + 2
    expect(problems.find(({rule}) => rule === 'measure-out-of-tolerance')?.line).toBe(line)
  })

  test('one record and a list of it alone say the same', () => {
    const told = (text: string) => measured(text).plan.asBuilt!.map(({of: _, ...one}) => one)
    expect(told('[{on: 2026-03-15, scale.length: 24 1/16}]')).toEqual(
      told('{on: 2026-03-15, scale.length: 24 1/16}'),
    )
  })
})
