import {describe, expect, test} from 'vitest'
import {placeOf} from '../../plugins/build-file/schema/path.ts'
import type {RuleName} from '../../plugins/checks/all.ts'
import {findings} from '../../plugins/checks/checks.ts'
import {changed} from '../support/changed.ts'
import {planOf} from '../support/plan-of.ts'
import {soundBuilds} from '../support/sound-builds.ts'
import {soundNecks} from '../support/sound-necks.ts'

const bases = {...soundBuilds, ...soundNecks}

type Changes = Record<string, string>
interface Case {
  rule: RuleName
  base?: keyof typeof bases
  /** What both builds change, and what each changes besides: one mark of the ruler apart where it is about a measure. */
  both?: Changes
  passes: Changes
  fails: Changes
  severity: string
}

/** Everything above a remark, and what the rule itself finds. */
const grave = (frontMatter: string, rule: string) =>
  planOf(frontMatter).problems.filter((one) => one.severity !== 'remark' || one.rule === rule)

const laminated = {'neck.wood': '', 'neck.laminations': '[{wood: white ash, thickness: 13/16}]'}

const cases: Case[] = [
  {
    rule: 'bow-too-large',
    base: 'plain',
    severity: 'warning',
    passes: {'neck.thickness': '1/2'},
    fails: {'neck.thickness': '15/32'},
  },
  {
    rule: 'bow-too-large',
    base: 'plain',
    severity: 'warning',
    both: {
      'neck.wood': '',
      'neck.laminations': '[{wood: black cherry, thickness: 15/32}]',
      'neck.thickness': '15/32',
    },
    passes: {'neck.width': '1 19/32'},
    fails: {'neck.width': '1 9/16'},
  },
  {
    rule: 'bow-too-large',
    base: 'plain',
    severity: 'warning',
    both: {'neck.wood': '', 'neck.thickness': ''},
    passes: {'neck.laminations': '[{wood: black cherry, thickness: 1/2}]'},
    fails: {'neck.laminations': '[{wood: black cherry, thickness: 15/32}]'},
  },
  {
    // Under frets it is the hollow that is too much: 1/16 in with creep, long before the strings come down.
    rule: 'bow-too-large',
    base: 'plain',
    severity: 'warning',
    both: {scale: '{length: 24 1/4, fretted: true}', frets: '{crown: 0.037}'},
    passes: {'neck.thickness': '3/4'},
    fails: {'neck.thickness': '23/32'},
  },
  {
    rule: 'neck-thin-inside',
    base: 'through',
    severity: 'fault',
    passes: {'box.neck-gap': '13/32'},
    fails: {'box.neck-gap': '7/16'},
  },
  {
    rule: 'neck-thin-inside',
    base: 'through',
    severity: 'fault',
    both: {'box.neck-gap': ''},
    passes: {'neck.inside': '15/32'},
    fails: {'neck.inside': '7/16'},
  },
  {
    // Daylight for more than the neck: nothing is left of it.
    rule: 'neck-thin-inside',
    base: 'through',
    severity: 'fault',
    passes: {'box.neck-gap': '13/32'},
    fails: {'box.neck-gap': '1 1/2'},
  },
  {
    rule: 'neck-inside-disagrees',
    base: 'through',
    severity: 'fault',
    passes: {'neck.inside': '23/32'},
    fails: {'neck.inside': '3/4'},
  },
  {
    rule: 'notch-deeper-than-neck',
    base: 'through',
    severity: 'fault',
    passes: {'box.notch.depth': '1 1/32'},
    fails: {'box.notch.depth': '1 1/16'},
  },
  {
    rule: 'head-thicker-than-stick',
    base: 'plain',
    severity: 'fault',
    passes: {'head.thickness': '3/4'},
    fails: {'head.thickness': '25/32'},
  },
  {
    rule: 'buttons-touch',
    severity: 'fault',
    passes: {'tuners.at': '[-2, -2 3/4, -3 1/4]'},
    fails: {'tuners.at': '[-2, -2 23/32, -3 1/4]'},
  },
  {
    rule: 'head-too-thick',
    severity: 'warning',
    passes: {'head.thickness': '3/4'},
    fails: {'head.thickness': '25/32'},
  },
  {
    rule: 'head-too-thin',
    severity: 'warning',
    passes: {'head.thickness': '3/8'},
    fails: {'head.thickness': '11/32'},
  },
  {
    rule: 'laminations-too-thick',
    severity: 'warning',
    both: laminated,
    passes: {'neck.laminations.1.thickness': '15/16'},
    fails: {'neck.laminations.1.thickness': '31/32'},
  },
  {
    rule: 'laminations-too-thin',
    severity: 'fault',
    both: laminated,
    passes: {'neck.laminations.1.thickness': '13/16'},
    fails: {'neck.laminations.1.thickness': '25/32'},
  },
  {
    rule: 'neck-too-short',
    severity: 'fault',
    passes: {'neck.length': '33 13/32'},
    fails: {'neck.length': '33 3/8'},
  },
  {
    rule: 'neck-too-short',
    base: 'end',
    severity: 'fault',
    passes: {'neck.length': '22 1/4'},
    fails: {'neck.length': '22 7/32'},
  },
  {
    rule: 'neck-too-short',
    severity: 'remark',
    both: {'anchors.at': '25 1/2'},
    passes: {'neck.length': '32 3/8'},
    fails: {'neck.length': '32 11/32'},
  },
  {
    rule: 'round-over-too-large',
    severity: 'fault',
    both: {'neck.round-over': '{radius: 1/2, from: scarf, to: box}'},
    passes: {'neck.round-over.radius': '11/16'},
    fails: {'neck.round-over.radius': '23/32'},
  },
  {
    rule: 'scarf-angle',
    severity: 'remark',
    both: {'tuners.string-height': '1/8'},
    passes: {'head.angle': '7'},
    fails: {'head.angle': '6.5'},
  },
  {
    rule: 'scarf-angle',
    severity: 'remark',
    both: {'tuners.string-height': '1/8'},
    passes: {'head.angle': '18'},
    fails: {'head.angle': '18.5'},
  },
  {
    rule: 'string-angle-flat',
    severity: 'warning',
    passes: {'tuners.string-height': '13/32'},
    fails: {'tuners.string-height': '7/16'},
  },
  {
    rule: 'string-angle-steep',
    severity: 'warning',
    both: {'tuners.at': '[-1 1/8, -4 1/2, -3 1/4]', 'tuners.string-height': '0'},
    passes: {'head.angle': '17.5'},
    fails: {'head.angle': '18'},
  },
  {
    rule: 'string-angle-steep',
    base: 'straight head',
    severity: 'warning',
    both: {'tuners.at': '[-3/4, -4 1/2, -3 1/4]', 'tuners.string-height': '0'},
    passes: {'head.drop': '1/8'},
    fails: {'head.drop': '5/32'},
  },
  {
    rule: 'string-fouls-post',
    severity: 'fault',
    passes: {'tuners.off': '[-9/32, -7/16, 7/16]'},
    fails: {'tuners.off': '[-1/4, -7/16, 7/16]'},
  },
  {
    rule: 'string-near-edge',
    severity: 'warning',
    passes: {'spacing.nut': '1 7/16'},
    fails: {'spacing.nut': '1 15/32'},
  },
  {
    rule: 'string-near-edge',
    severity: 'warning',
    passes: {'spacing.bridge': '1 21/32'},
    fails: {'spacing.bridge': '1 11/16'},
  },
  {
    rule: 'strings-cross',
    severity: 'fault',
    both: {'tuners.off': '[-7/16, -9/16, 7/16]'},
    passes: {},
    fails: {'tuners.at': '[-4 1/2, -2, -3 1/4]'},
  },
  {
    rule: 'strings-too-close',
    severity: 'warning',
    both: {play: 'fingers'},
    passes: {'spacing.nut': '1/2'},
    fails: {'spacing.nut': '15/32'},
  },
  {
    rule: 'strings-too-close',
    severity: 'warning',
    both: {play: 'fingers', 'spacing.nut': '1/2'},
    passes: {'spacing.bridge': '1/2'},
    fails: {'spacing.bridge': '15/32'},
  },
  {
    rule: 'strings-too-close',
    base: 'plain',
    severity: 'warning',
    both: {play: 'fingers', 'neck.thickness': '1'},
    passes: {'neck.width': '7/8'},
    fails: {'neck.width': '27/32'},
  },
  {
    rule: 'thin-under-nut',
    severity: 'warning',
    both: {'nut.diameter': '9/16'},
    passes: {'nut.groove': '7/16'},
    fails: {'nut.groove': '15/32'},
  },
  {
    rule: 'tuner-holes-close',
    severity: 'warning',
    both: {'tuners.at': '[-3, -1 1/2, -3]'},
    passes: {'tuners.off': '[-1/4, 0, 1/4]'},
    fails: {'tuners.off': '[-7/32, 0, 1/4]'},
  },
  {
    rule: 'tuner-near-edge',
    severity: 'warning',
    passes: {'tuners.off': '[-9/16, -7/16, 7/16]'},
    fails: {'tuners.off': '[-19/32, -7/16, 7/16]'},
  },
]

describe('sound necks of every kind are met with silence', () => {
  test.each(Object.entries(soundNecks))('%s', (_, frontMatter) => {
    expect(planOf(frontMatter).problems).toEqual([])
  })
})

describe.each(cases)('$rule, $fails', ({rule, base = 'on top', both = {}, passes, fails, severity}) => {
  const failing = changed(bases[base], {...both, ...fails})

  test('passes one mark before', () => {
    expect(grave(changed(bases[base], {...both, ...passes}), rule)).toEqual([])
  })

  test('fails once, at the value to change, and what it proposes mends it', () => {
    const {build, plan} = planOf(failing)
    const found = grave(failing, rule)
    expect(found.map((one) => [one.rule, one.severity])).toEqual([[rule, severity]])
    const [finding] = findings(rule, build, plan)
    const at = finding!.at as string
    const {line, column} = placeOf(build, at)
    expect(found[0]).toMatchObject({line, column})
    expect(grave(changed(failing, {[at]: finding!.expected![0]!}), rule)).toEqual([])
  })
})
