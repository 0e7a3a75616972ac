import {expect, test} from 'vitest'
import {findings} from '../../plugins/checks/checks.ts'
import {changed} from '../support/changed.ts'
import {planOf} from '../support/plan-of.ts'
import fc from '../support/properties.ts'
import {soundBuilds} from '../support/sound-builds.ts'

// Whoever follows all that is advised at once must not be worse off: no fault and no warning that was not there before.

/** Slips that somebody makes, each in another part of the instrument, and all in one build together. */
const slips = {
  'on top': {
    'box.holes.1.off': ['1', '1 1/4', '-1/2'],
    'screws.1.off': ['[11/16]', '[-3/4]'],
    'screws.1.length': ['1 1/4', '1 1/2', '5/8'],
    'strings.2.gauge': ['.036w', '.024w'],
    'anchors.spacing': ['5/8', '11/16', '1/4'],
    'tuners.off': ['[-11/16, -7/16, 7/16]', '[-7/16, -7/16, 11/16]'],
    'neck.above-top': ['1', '3/4'],
    'box.blocks.1.width': ['6 3/4', '7'],
    'nut.groove': ['1/8', '1/32'],
  },
  through: {
    'box.holes.1.off': ['-1', '-1 1/2'],
    'box.neck-gap': ['1/2', '5/8', '1/16'],
    'bridge.foot': ['1/8'],
    'neck.wood': ['balsa', 'eastern white pine'],
    'anchors.spacing': ['5/8', '11/16'],
    'box.top.thickness': ['1/32', '1/16'],
    'tuners.off': ['[-11/16, -7/16, 7/16]'],
  },
  end: {
    'screws.1.off': ['[-11/16, 11/16]', '[-3/8, 3/8]'],
    'screws.1.length': ['1 1/4', '2'],
    'screws.1.size': ['4', '6', '12'],
    'strings.1.gauge': ['.040w', '.024w'],
    'neck.wood': ['northern white cedar'],
    'box.holes.1.off': ['3 1/2', '2'],
    'box.top.thickness': ['1/32', '1/8'],
  },
} as const

const spoiled = fc.constantFrom(...(Object.keys(slips) as (keyof typeof slips)[])).chain((base) =>
  fc
    .subarray(Object.entries(slips[base]), {minLength: 1, maxLength: 4})
    .chain((own) =>
      fc.tuple(...own.map(([path, values]) => fc.tuple(fc.constant(path), fc.constantFrom(...values)))),
    )
    .map((changes) => changed(soundBuilds[base], Object.fromEntries(changes as [string, string][]))),
)

/** What is wrong, by rule, above a remark. */
const grave = (text: string) =>
  planOf(text).problems.flatMap(({rule, severity}) => (severity === 'remark' ? [] : [rule]))

/** Put the first value that every problem proposes in its place; of two for one value the first. */
function follow(text: string): string {
  const {build, plan, problems} = planOf(text)
  const changes: Record<string, string> = {}
  for (const {rule, expected} of problems) {
    if (!expected) continue
    for (const finding of findings(rule as Parameters<typeof findings>[0], build, plan))
      if (typeof finding.at === 'string' && finding.expected) changes[finding.at] ??= finding.expected[0]!
  }
  return changed(text, changes)
}

test('all that is advised, followed at once, brings no new fault and no new warning', () => {
  fc.assert(
    fc.property(spoiled, (text) => {
      const before = grave(text)

      expect(grave(follow(text)).filter((rule) => !before.includes(rule))).toEqual([])
    }),
    {numRuns: 12},
  )
})
