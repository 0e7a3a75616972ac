import {describe, expect, test} from 'vitest'
import {instrumentOf} from '../../plugins/drawings/instrument/instrument.ts'
import {sideOf, signOf} from '../../plugins/plan/kit/sides.ts'
import {sidesExplained, toSideSeen} from '../../plugins/words/sides.ts'
import {changed} from '../support/changed.ts'
import {planOf, printedOf} from '../support/plan-of.ts'
import {soundBuilds} from '../support/sound-builds.ts'

const three = soundBuilds['on top']
const one = changed(three, {
  strings: '[{note: D3, gauge: .030w}]',
  spacing: '',
  tuners: '{post-hole: 1/4, button: 3/4, at: [-2], off: [5/16], side: bass}',
  'anchors.spacing': '',
})

describe('which side a place is on', () => {
  // The build file: positive towards the last string listed, and strings are listed from the bass side; with one string
  // to the right as seen from the nut towards the bridge, which is the left of an instrument that hangs head up.
  test.each([
    [3, 1, 'treble'],
    [3, -1, 'bass'],
    [1, 1, 'bass'],
    [1, -1, 'treble'],
  ] as const)('of %d strings, %d off', (strings, off, side) => {
    expect(sideOf(off, strings)).toBe(side)
    expect(signOf(side, strings)).toBe(off)
  })

  test.each([
    [three, 'right', '5/16', 'to the treble side (right, seen from the front)'],
    [three, 'left', '5/16', 'to the treble side (left, seen from the front)'],
    [one, 'right', '5/16', 'to the bass side (left, seen from the front)'],
    [one, 'left', '5/16', 'to the bass side (right, seen from the front)'],
  ])('in words as it is drawn', (build, handed, _, words) => {
    const {plan} = planOf(changed(build, {handed}))
    expect(toSideSeen(8, plan)).toBe(words)
    const drawnRight = instrumentOf(plan).x(8) > 0
    expect(words.includes('(right')).toBe(drawnRight)
    expect(toSideSeen(8, plan, 'back').includes('(left')).toBe(drawnRight)
    expect(toSideSeen(0, plan)).toBe('on the centre line')
  })

  test('once for a table', () => {
    const {plan} = planOf(three)
    expect(sidesExplained(plan)).toBe(
      'Seen from the front with the head up, the bass side is the left one and the treble side the right one.',
    )
    expect(sidesExplained(plan, 'back')).toContain('the bass side is the right one')
  })

  test('a strap button stands in the wall that is named, on the side that is drawn', () => {
    for (const build of [three, one]) {
      const {plan} = planOf(changed(build, {extras: '[strap buttons]'}))
      const hole = plan.holes!.find(({face}) => face === 'side bass')!
      expect(sideOf(hole.offMm, plan.strings!.length)).toBe('bass')
      expect(instrumentOf(plan).x(hole.offMm)).toBeLessThan(0)
    }
  })
})

test('no step, and no drawing in words, tells a side or a place by a sign', () => {
  for (const build of Object.values(soundBuilds)) {
    const printed = printedOf(build)
    const said = (printed.work ?? []).flatMap(({does, setting = '', check = ''}) => [does, setting, check])
    expect(said.filter((text) => /[−-]\d/.test(text))).toEqual([])
  }
})
