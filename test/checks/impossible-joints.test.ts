import {expect, test} from 'vitest'
import {changed} from '../support/changed.ts'
import {planOf} from '../support/plan-of.ts'
import {soundBuilds} from '../support/sound-builds.ts'

// What cannot be, in the joints of an instrument: each is told in a maker's words, and breaks no number of the plan.
const through = soundBuilds.through
const onTop = soundBuilds['on top']
/** Three strings that pull 300 N together. */
const pulling = ['D3', 'A3', 'D4']
  .map((note) => `{note: ${note}, tension: {pull: 100 N, scale: 24 1/4 in, note: ${note}}}`)
  .join(', ')

test.each([
  [
    'daylight larger than the neck',
    changed(through, {'box.neck-gap': '1 1/2'}),
    'neck-thin-inside',
    /keeps nothing to speak of inside the box.*box\.neck-gap .* would do/,
  ],
  [
    'a groove deeper than its rod',
    changed(onTop, {'nut.groove': '1/4', 'action.nut': '', 'bridge.height': ''}),
    'nut-sunk',
    /groove/,
  ],
  ['three heights of a nut', changed(onTop, {'nut.groove': '1/8'}), 'nut-heights-disagree', /would/],
  [
    'a radius under half the width',
    changed(onTop, {fingerboard: '{wood: black walnut, thickness: 1/4, radius: 3/4}'}),
    'board-radius-too-small',
    /radius/,
  ],
  [
    'a face that ends in front of the nut',
    changed(onTop, {
      'neck.laminations':
        '[{wood: black cherry, thickness: 3/16, from: 1/2, glued: after scarf}, {wood: white ash, thickness: 5/8}]',
      'neck.wood': '',
    }),
    'face-before-nut',
    /nut/,
  ],
  [
    'a packet against its model',
    changed(onTop, {'strings.3.mass': '1.4 g/m'}),
    'packet-unlike-gauge',
    /packet/,
  ],
  [
    'a lid of 1 mm under 300 N',
    changed(through, {'box.top.thickness': '1 mm', strings: `[${pulling}]`}),
    'top-too-weak',
    /may carry for years/,
  ],
])('%s', (_, text, rule, says) => {
  const {plan, problems} = planOf(text)
  const found = problems.filter((one) => one.rule === rule)
  expect(found).toHaveLength(1)
  expect(found[0]!.message).toMatch(says)
  expect(JSON.stringify(plan)).not.toContain('null')
})
