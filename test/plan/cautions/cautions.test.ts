import {describe, expect, test} from 'vitest'
import {hazards} from '../../../plugins/tables/hazards.ts'
import {changed} from '../../support/changed.ts'
import {planOf, printedOf} from '../../support/plan-of.ts'

// A build with as little in it as brings work: what each feature adds is seen against this one. Nothing is proposed for
// an instrument that exists.
const plain = `
title: Slack water
status: strung up
scale: {length: 24, fretted: false}
strings: [D3 .030w, A3 .020w, D4 .013]
nut: {kind: flat}
bridge: {kind: saddle, on: neck}
neck: {width: 1 1/2, thickness: 3/4, wood: white ash, joins: on top}
head: {joint: straight}
box: {wood: basswood, length: 10, width: 7, depth: 2, top: 1/8}
`
const ids = (frontMatter: string) => (printedOf(frontMatter).cautions ?? []).map(({id}) => id)
const caution = (frontMatter: string, id: string) =>
  printedOf(frontMatter).cautions?.find((one) => one.id === id)

type Feature = [name: string, changes: Record<string, string>, adds: string[]]
const features: Feature[] = [
  ['fretted', {'scale.fretted': 'true'}, ['fret-wire', 'fret-ends']],
  ['through', {'neck.joins': 'through', 'bridge.on': 'top', 'box.notch': '1 1/2 x 3/4'}, ['chisel']],
  ['scarf', {'head.joint': 'scarf'}, ['scarf-saw']],
  ['stain', {finish: '[{kind: stain}]'}, ['oil-rags', 'solvents']],
  ['stain in water', {finish: '[{kind: water stain}]'}, []],
  ['oil', {finish: '[{kind: oil, coats: 2}]'}, ['oil-rags']],
  ['shellac', {finish: '[{kind: shellac}]'}, ['solvents']],
  ['lacquer', {finish: '[{kind: lacquer}]'}, ['solvents', 'lacquer-mist']],
  ['solder', {pickup: '{kind: piezo}'}, ['mains-power', 'solder']],
  ['a microphone', {pickup: '{kind: microphone}'}, ['mains-power', 'solder', 'battery']],
  ['a lamp', {extras: '[lamp ring]'}, ['mains-power', 'battery']],
  ['redcedar', {'box.wood': 'western redcedar'}, ['redcedar-dust']],
  ['rosewood', {'neck.wood': 'indian rosewood'}, ['rosewood-dust', 'protected-wood', 'oily-wood']],
  [
    'cocobolo',
    {fingerboard: '{wood: cocobolo, thickness: 1/4, to: 16}'},
    ['rosewood-dust', 'protected-wood', 'oily-wood', 'planer'],
  ],
  ['an oily box, which is found and not glued', {'box.wood': 'teak'}, ['cancer-dust', 'sensitizer-dust']],
  ['beech', {'box.wood': 'beech'}, ['cancer-dust', 'sensitizer-dust']],
  ['wenge', {'neck.wood': 'wenge'}, ['sensitizer-dust']],
  ['plywood', {'box.top': '{thickness: 1/8, wood: plywood}'}, ['sheet-dust']],
  ['burnt marks', {markings: '{lines: burnt}'}, ['burn-marks']],
  [
    'short part',
    {parts: '[{name: wedge, wood: beech, length: 3, width: 1, thickness: 1/2}]'},
    ['short-part', 'cancer-dust', 'sensitizer-dust'],
  ],
  ['rod', {nut: '{kind: rod, diameter: 3/16}'}, ['rods']],
  ['round-over', {'neck.round-over': '{radius: 3/8, from: nut, to: box}'}, ['router-direction']],
  ['big hole', {'box.holes': '[{diameter: 1 3/8, along: 3, off: 2}]'}, ['big-bit', 'drill-clamp']],
  ['small hole', {'box.holes': '[{diameter: 1/2, along: 3, off: 2}]'}, ['drill-clamp']],
  ['thin layer', {'neck.cap': '{wood: white ash, thickness: 1/8}'}, ['planer']],
  ['epoxy', {'neck.glue': 'epoxy'}, ['glue-epoxy']],
  ['quick glue', {'neck.glue': 'ca'}, ['glue-ca']],
  ['polyurethane glue', {'neck.glue': 'polyurethane'}, ['glue-pu']],
  ['hide glue', {'neck.glue': 'hide glue'}, ['glue-hide']],
  ['white glue', {'neck.glue': 'pva'}, []],
  ['child’s', {summary: 'for a child'}, ['small-player']],
  ['short scale', {'scale.length': '19 1/2'}, ['small-player']],
]

describe('cautions', () => {
  test('a plain build brings what every build has, the worst first', () => {
    expect(ids(plain)).toEqual([
      'saw-kickback',
      'string-eyes',
      'lead-paint',
      'wood-dust',
      'box-residue',
      'eyes',
      'noise',
    ])
    const order = Object.keys(hazards)
    const all = ids(changed(plain, Object.assign({}, ...features.map(([, changes]) => changes))))
    expect(all).toEqual(order.filter((id) => all.includes(id)))
  })

  test.each(features)('%s adds exactly its own', (_, changes, adds) => {
    const before = ids(plain)
    const after = ids(changed(plain, changes))
    expect(after.filter((id) => !before.includes(id)).sort()).toEqual([...adds].sort())
    expect(before.filter((id) => !after.includes(id))).toEqual([])
  })

  test('says why here, naming the wood, where it is and what is asked of it', () => {
    expect(caution(changed(plain, {'box.wood': 'beech'}), 'cancer-dust')?.because).toBe(
      'The box: beech (known).',
    )
    expect(caution(changed(plain, {'box.wood': 'cedar'}), 'redcedar-dust')?.because).toBe(
      'The box: cedar, which may be western redcedar.',
    )
    // CITES annotation #15, as amended in 2019: finished instruments are let off.
    expect(caution(changed(plain, {'neck.wood': 'indian rosewood'}), 'protected-wood')?.because).toContain(
      'finished instruments and their parts are let off',
    )
    // CITES Appendix I: Dalbergia nigra.
    expect(caution(changed(plain, {'neck.wood': 'brazilian rosewood'}), 'protected-wood')?.because).toContain(
      'even an old, finished instrument',
    )
  })

  test('a big bit is one of 3/4 in or more in 1/4 in or less', () => {
    const with_ = (diameter: string, top: string) =>
      ids(changed(plain, {'box.holes': `[{diameter: ${diameter}, along: 3, off: 2}]`, 'box.top': top}))
    expect(with_('3/4', '1/4')).toContain('big-bit')
    expect(with_('23/32', '1/4')).not.toContain('big-bit')
    expect(with_('3/4', '9/32')).not.toContain('big-bit')
  })

  test('the build’s own cautions follow, and every one is whole', () => {
    const plan = printedOf(changed(plain, {cautions: '["the box still smells of tar"]'}))
    expect(plan.cautions?.at(-1)).toMatchObject({id: 'own-1', does: 'the box still smells of tar'})
    for (const one of plan.cautions!)
      for (const words of [one.hazard, one.because, one.does, one.source]) expect(words).not.toBe('')
  })

  test('nothing to work on brings none', () => {
    expect(planOf('title: Slack water').plan.cautions).toBeUndefined()
  })
})
