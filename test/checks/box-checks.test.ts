import {describe, expect, test} from 'vitest'
import {placeOf} from '../../plugins/build-file/schema/path.ts'
import type {RuleName} from '../../plugins/checks/all.ts'
import {findings} from '../../plugins/checks/checks.ts'
import {changed} from '../support/changed.ts'
import {planOf} from '../support/plan-of.ts'
import {soundBuilds} from '../support/sound-builds.ts'

type Changes = Record<string, string>
interface Case {
  rule: RuleName
  base: keyof typeof soundBuilds
  /** What both builds change, and what each changes besides: one mark of the ruler apart where it is about a measure. */
  both?: Changes
  passes: Changes
  fails: Changes
  severity?: string
  /** There is nothing to propose. */
  isOpen?: true
}

/** Everything above a remark, and what the rule itself finds. */
const grave = (frontMatter: string, rule: string) =>
  planOf(frontMatter).problems.filter((one) => one.severity !== 'remark' || one.rule === rule)

const cases: Case[] = [
  {
    rule: 'above-top-disagrees',
    base: 'on top',
    passes: {'neck.above-top': '27/32'},
    fails: {'neck.above-top': '7/8'},
  },
  {
    rule: 'above-top-disagrees',
    base: 'on top',
    both: {'box.notch': '{width: 1 5/8, depth: 1/8}'},
    passes: {'neck.above-top': '11/16'},
    fails: {'neck.above-top': '5/8'},
  },
  // The contract: thickness runs from the playing face to the back, so a board is counted in it, never on top of it.
  {
    rule: 'above-top-disagrees',
    base: 'on top',
    both: {
      fingerboard: '{wood: beech, thickness: 1/4, from: -1/4, to: 27}',
      'bridge.height': '',
    },
    passes: {'neck.above-top': '13/16'},
    fails: {'neck.above-top': '1 1/16'},
  },
  {
    rule: 'anchor-near-edge',
    base: 'on top',
    severity: 'warning',
    passes: {'anchors.spacing': '9/16'},
    fails: {'anchors.spacing': '5/8'},
  },
  {
    rule: 'anchors-crowded',
    base: 'on top',
    passes: {'anchors.spacing': '3/8'},
    fails: {'anchors.spacing': '11/32'},
  },
  {
    rule: 'block-outside',
    base: 'on top',
    passes: {'box.blocks.1.width': '6 11/16'},
    fails: {'box.blocks.1.width': '6 23/32'},
  },
  {
    rule: 'block-under-neck',
    base: 'through',
    passes: {
      'box.blocks':
        '[{wood: beech, along: 1 1/2, off: 0, length: 1, width: 4, thickness: 3/16, glued: under the top}]',
    },
    fails: {
      'box.blocks':
        '[{wood: beech, along: 1 1/2, off: 0, length: 1, width: 4, thickness: 7/32, glued: under the top}]',
    },
  },
  {rule: 'box-places-disagree', base: 'on top', passes: {'box.at': '16 1/32'}, fails: {'box.at': '16 1/16'}},
  {
    rule: 'box-without-inside',
    base: 'on top',
    isOpen: true,
    both: {'box.top.thickness': '1', 'box.holes': '', 'box.blocks': '', screws: '', pickup: ''},
    passes: {'box.back': '31/32'},
    fails: {'box.back': '1'},
  },
  {
    rule: 'bridge-near-tail',
    base: 'through',
    severity: 'warning',
    passes: {'box.at': '15 7/16'},
    fails: {'box.at': '15 13/32'},
  },
  {
    rule: 'bridge-near-tail',
    base: 'through',
    severity: 'warning',
    both: {'box.at': ''},
    passes: {'bridge.from-tail': '1 1/4'},
    fails: {'bridge.from-tail': '1 3/32'},
  },
  {rule: 'bridge-off-box', base: 'through', passes: {}, fails: {'box.at': '14 13/32'}},
  {
    rule: 'bridge-over-hole',
    base: 'through',
    both: {'bridge.length': '4'},
    passes: {'box.holes.2': '{diameter: 1, along: 8 1/4, off: 2 1/2}'},
    fails: {'box.holes.2': '{diameter: 1, along: 8 1/4, off: 2 15/32}'},
  },
  {
    rule: 'bridge-place',
    base: 'through',
    severity: 'remark',
    both: {'neck.length': '36', 'anchors.at': '28 3/4'},
    passes: {'box.at': '18 1/4'},
    fails: {'box.at': '18 9/32'},
  },
  {
    rule: 'hole-near-block',
    base: 'on top',
    severity: 'warning',
    passes: {'box.holes.1.along': '2 11/16', 'box.holes.1.off': '2'},
    fails: {'box.holes.1.along': '2 21/32', 'box.holes.1.off': '2'},
  },
  {
    rule: 'hole-near-block',
    base: 'on top',
    both: {'box.holes.1.off': '2'},
    passes: {},
    fails: {'box.holes.1.along': '2 17/32'},
  },
  {
    rule: 'hole-near-edge',
    base: 'on top',
    severity: 'warning',
    passes: {'box.holes.1.off': '2 3/8'},
    fails: {'box.holes.1.off': '2 13/32'},
  },
  {
    rule: 'hole-near-neck',
    base: 'on top',
    severity: 'warning',
    passes: {'box.holes.1.off': '1 5/8'},
    fails: {'box.holes.1.off': '1 19/32'},
  },
  {
    rule: 'hole-under-neck',
    base: 'through',
    passes: {'box.holes.1.off': '-1 7/16'},
    fails: {'box.holes.1.off': '-1 9/32'},
  },
  {
    rule: 'holes-close',
    base: 'through',
    severity: 'warning',
    both: {'box.holes.1': '{diameter: 1, along: 3, off: 2 1/2}'},
    passes: {'box.holes.2': '{diameter: 1, along: 4 3/8, off: 2 1/2}'},
    fails: {'box.holes.2': '{diameter: 1, along: 4 11/32, off: 2 1/2}'},
  },
  {
    rule: 'jack-inside',
    base: 'through',
    both: {'box.top.held': 'screwed'},
    passes: {pickup: '{kind: piezo, diameter: 1, jack: {hole: 3/8, thread: 3/8, in: side, body: 3 3/16}}'},
    fails: {pickup: '{kind: piezo, diameter: 1, jack: {hole: 3/8, thread: 3/8, in: side, body: 3 7/32}}'},
  },
  {
    rule: 'jack-inside',
    base: 'on top',
    isOpen: true,
    both: {'box.depth': '1 1/2'},
    passes: {'pickup.jack.hole': '1 1/4'},
    fails: {'pickup.jack.hole': '1 9/32'},
  },
  {
    rule: 'jack-too-short',
    base: 'on top',
    passes: {'pickup.jack.thread': '5/16'},
    fails: {'pickup.jack.thread': '9/32'},
  },
  {
    rule: 'neck-misses-box',
    base: 'end',
    // Without strings: they would find no leverage in 1/32 in of wood on the wall.
    both: {'bridge.height': '', strings: '', tuners: '', anchors: '', pickup: ''},
    passes: {'neck.above-top': '31/32'},
    fails: {'neck.above-top': '1'},
  },
  {
    rule: 'neck-too-tall',
    base: 'through',
    both: {'box.depth': '1 1/4', 'box.notch': ''},
    passes: {'neck.thickness': '1 3/8'},
    fails: {'neck.thickness': '1 13/32'},
  },
  // Its pine top comes down 1.33 mm in time under this bridge.
  {
    rule: 'neck-touches-top',
    base: 'through',
    passes: {'box.neck-gap': '1/16'},
    fails: {'box.neck-gap': '1/32'},
  },
  {
    rule: 'notch-too-deep',
    base: 'through',
    both: {'neck.thickness': '2'},
    passes: {'box.notch.depth': '1 3/4'},
    fails: {'box.notch.depth': '1 25/32'},
  },
  {
    rule: 'notch-too-narrow',
    base: 'through',
    passes: {'box.notch.width': '1 19/32'},
    fails: {'box.notch.width': '1 9/16'},
  },
  // The disc lies at the bridge line, 1 5/8 in from the inside of the tail wall less nothing: twice that is the widest.
  {
    rule: 'pickup-inside',
    base: 'on top',
    passes: {'pickup.diameter': '1 3/4'},
    fails: {'pickup.diameter': '1 25/32'},
  },
  {
    rule: 'screw-comes-out',
    base: 'on top',
    passes: {'screws.1.length': '1 1/8'},
    fails: {'screws.1.length': '1 5/32'},
  },
  {rule: 'screw-comes-out', base: 'on top', passes: {}, fails: {'screws.1.length': '1 1/2'}},
  {
    rule: 'screw-head-thin',
    base: 'on top',
    severity: 'warning',
    both: {'screws.1.through': '[top]', 'screws.1.length': '3/4'},
    passes: {'box.top.thickness': '1/4'},
    fails: {'box.top.thickness': '7/32'},
  },
  {
    rule: 'screw-misses-block',
    base: 'on top',
    passes: {'screws.1.at': '[17 1/4, 22 1/2]'},
    fails: {'screws.1.at': '[17 1/4, 22 3/32]'},
  },
  {
    rule: 'block-outside',
    base: 'on top',
    passes: {'box.blocks.2.along': '9 11/32'},
    fails: {'box.blocks.2.along': '9 3/8'},
    both: {'screws.1.at': '[17 1/4]', 'pickup.under': ''},
  },
  {
    rule: 'screw-misses-block',
    base: 'on top',
    isOpen: true,
    both: {'screws.1.at': '[17 1/4]'},
    passes: {},
    fails: {'box.blocks': ''},
  },
  {
    rule: 'screw-off-box',
    base: 'on top',
    both: {'screws.1.through': '[washer, top]', 'screws.1.length': '3/4', 'box.blocks': ''},
    passes: {'screws.1.at': '[16, 22 3/4]'},
    fails: {'screws.1.at': '[15 31/32, 22 3/4]'},
  },
  {
    rule: 'jack-too-short',
    base: 'end',
    both: {
      'box.blocks':
        '[{wood: sugar maple, along: 5/8, off: 0, length: 3/4, width: 3, thickness: 1 3/4, glued: at the ends}, {wood: sugar maple, along: 9 1/2, off: 0, length: 1/2, width: 3, thickness: 1 3/4, glued: at the ends}]',
    },
    passes: {'pickup.jack': '{hole: 3/8, thread: 7/8, in: end, off: 1/2}'},
    fails: {'pickup.jack': '{hole: 3/8, thread: 27/32, in: end, off: 1/2}'},
  },
  {
    rule: 'screw-near-edge',
    base: 'on top',
    severity: 'warning',
    passes: {'screws.1.off': '[7/16]'},
    fails: {'screws.1.off': '[15/32]'},
  },
  {
    rule: 'screw-near-edge',
    base: 'on top',
    severity: 'warning',
    passes: {'screws.1.at': '[17 1/4, 22 1/2]'},
    fails: {'screws.1.at': '[17 1/4, 22 15/32]'},
  },
  {
    rule: 'screw-overloaded',
    base: 'end',
    both: {'neck.wood': 'eastern white pine'},
    passes: {'screws.1.size': '8', 'screws.1.length': '2'},
    fails: {'screws.1.size': '4', 'screws.1.length': '1 27/32'},
  },
  {
    rule: 'screw-thread-short',
    base: 'on top',
    severity: 'warning',
    passes: {'screws.1.length': '23/32'},
    fails: {'screws.1.length': '11/16'},
  },
  {rule: 'screw-thread-short', base: 'on top', passes: {}, fails: {'screws.1.length': '3/8'}},
  {
    rule: 'string-hole',
    base: 'on top',
    both: {'anchors.kind': 'plain'},
    passes: {'anchors.string-hole': '1/8'},
    fails: {'anchors.string-hole': '5/32'},
  },
  {
    rule: 'string-hole',
    base: 'on top',
    passes: {'anchors.string-hole': '1/32'},
    fails: {'anchors.string-hole': '0.029'},
  },
  {
    rule: 'top-shuts-in',
    base: 'on top',
    severity: 'warning',
    passes: {'box.top.held': 'hinged'},
    fails: {'box.top.held': 'glued'},
  },
]

const alsoSound: [string, keyof typeof soundBuilds, Changes][] = [
  [
    'a neck through, with its top screwed down into it',
    'through',
    {screws: '[{size: 4, length: 1/2, at: [16 1/2], off: [-1/2, 1/2], through: [washer, top], into: neck}]'},
  ],
  [
    'a neck at the end, on screws through a block alone',
    'end',
    {'screws.1.through': '[block]', 'screws.1.length': '1 3/4', 'screws.1.at': '[16 1/4]'},
  ],
  [
    'a fingerboard on a neck on top, counted in its thickness',
    'on top',
    {
      'neck.thickness': '1 1/16',
      // The nut's rod lies in a groove of the board, which so reaches behind it.
      fingerboard: '{wood: beech, thickness: 1/4, from: -1/4, to: 16}',
      'neck.above-top': '1 1/16',
      bridge: '{kind: rod, on: neck, from-tail: 1 7/8, length: 1 1/2, foot: 1/2}',
    },
  ],
]

describe('sound builds are met with silence', () => {
  test.each(alsoSound)('%s', (_, base, changes) => {
    expect(grave(changed(soundBuilds[base], changes), 'screw-near-edge')).toEqual([])
  })

  test.each(Object.entries(soundBuilds))('a neck that joins %s', (_, frontMatter) => {
    expect(planOf(frontMatter).problems).toEqual([])
  })
})

describe.each(cases)(
  '$rule, $fails',
  ({rule, base, both = {}, passes, fails, severity = 'fault', isOpen}) => {
    const failing = changed(soundBuilds[base], {...both, ...fails})

    test('passes one mark before', () => {
      expect(grave(changed(soundBuilds[base], {...both, ...passes}), rule)).toEqual([])
    })

    test('fails once, at the value to change, and what it proposes mends it', () => {
      const {build, plan} = planOf(failing)
      const found = grave(failing, rule)
      expect(found.map((one) => [one.rule, one.severity])).toEqual([[rule, severity]])
      const [finding] = findings(rule, build, plan)
      const at = finding!.at as string
      const {line, column} = placeOf(build, at)
      expect(found[0]).toMatchObject({line, column})
      if (isOpen) expect(finding!.expected).toBeUndefined()
      else expect(grave(changed(failing, {[at]: finding!.expected![0]!}), rule)).toEqual([])
    })
  },
)
