import {expect, test} from 'vitest'
import {changed} from '../support/changed.ts'
import {planOf} from '../support/plan-of.ts'
import fc from '../support/properties.ts'
import {soundBuilds} from '../support/sound-builds.ts'

test('ten slips in one file are all named, each at its own line', () => {
  const file = changed(soundBuilds['on top'], {
    'box.at': '15 1/2',
    'bridge.from-tail': '1 7/8',
    'neck.above-top': '1',
    'box.holes.1': '{diameter: 1 3/8, along: 6 1/2, off: 1 3/4}',
    'box.blocks.1.width': '7',
    'screws.1.length': '1 1/2',
    'screws.1.at': '[17 1/4, 22 3/4]',
    'pickup.diameter': '4',
    'pickup.jack.thread': '1/4',
    'anchors.spacing': '5/16',
    'anchors.string-hole': '1/64',
    'box.top.held': 'glued',
  })
  const {problems} = planOf(file)
  const rules = new Set(problems.map(({rule}) => rule))
  for (const rule of [
    'box-places-disagree',
    'above-top-disagrees',
    'hole-near-block',
    'block-outside',
    'screw-comes-out',
    'pickup-inside',
    'jack-too-short',
    'anchors-crowded',
    'string-hole',
    'top-shuts-in',
  ])
    expect(rules).toContain(rule)
  const lines = file.split('\n')
  const lineOf = (rule: string) => lines[problems.find((one) => one.rule === rule)!.line - 2]
  expect(lineOf('screw-comes-out')).toMatch(/length: 1 1\/2/)
  expect(lineOf('jack-too-short')).toMatch(/jack: .*thread/)
  expect(lineOf('above-top-disagrees')).toMatch(/above-top: 1$/)
})

test('slips in a neck that runs through are named', () => {
  const {problems} = planOf(
    changed(soundBuilds.through, {
      'neck.thickness': '2 1/2',
      'box.neck-gap': '0',
      'box.notch.width': '1 1/4',
      'box.notch.depth': '1 15/16',
      'box.holes.1.off': '-1/2',
      'box.holes.2': '{diameter: 2, along: 7, off: 3}',
    }),
  )
  const rules = problems.map(({rule}) => rule)
  for (const rule of [
    'neck-too-tall',
    'neck-touches-top',
    'notch-too-narrow',
    'notch-too-deep',
    'hole-under-neck',
    'hole-near-edge',
  ])
    expect(rules).toContain(rule)
})

test('whatever is changed, no number of the plan is broken and no check fails', () => {
  const paths = [
    'box.length',
    'box.width',
    'box.depth',
    'box.sides',
    'box.top.thickness',
    'box.back',
    'box.at',
    'box.neck-gap',
    'box.notch.depth',
    'box.notch.width',
    'box.holes.1.along',
    'box.holes.1.off',
    'box.holes.1.diameter',
    'neck.length',
    'neck.thickness',
    'neck.above-top',
    'neck.width.nut',
    'head.length',
    'scale.length',
    'bridge.height',
    'bridge.foot',
    'bridge.length',
    'bridge.from-tail',
    'anchors.at',
    'anchors.height',
    'anchors.spacing',
    'anchors.body',
    'anchors.string-hole',
    'screws.1.length',
    'pickup.diameter',
    'pickup.jack.thread',
    'pickup.jack.body',
  ]
  const change = fc.tuple(
    fc.constantFrom(...paths),
    fc.integer({min: -64, max: 1200}).map((marks) => `${marks / 32}`),
  )
  fc.assert(
    fc.property(
      fc.constantFrom(...Object.values(soundBuilds)),
      fc.array(change, {minLength: 1, maxLength: 6}),
      fc.constantFrom(
        {},
        {box: ''},
        {anchors: ''},
        {screws: ''},
        {strings: '3'},
        {'neck.joins': 'through'},
        {'bridge.on': 'top'},
      ),
      (base, changes, more) => {
        const {plan, problems} = planOf(
          changed(base, {...Object.fromEntries(changes), ...more} as Record<string, string>),
        )
        for (const part of [
          plan.box,
          plan.bridge,
          plan.fasteners,
          plan.holes,
          plan.pickup,
          plan.anchorRow,
          plan.screws,
        ])
          expectSound(part)
        // A check that fails throws.
        expect(problems).toBeDefined()
      },
    ),
    {numRuns: 150},
  )
})

function expectSound(value: unknown): void {
  if (typeof value === 'number') expect(Number.isFinite(value)).toBe(true)
  else if (typeof value === 'object' && value) for (const inner of Object.values(value)) expectSound(inner)
  else expect(value === null).toBe(false)
}
