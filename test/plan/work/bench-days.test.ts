import {describe, expect, test} from 'vitest'
import type {DayEntry} from '../../../plugins/build-file/schema/build.ts'
import {wholeFile} from '../../../plugins/build-file/schema/problem.ts'
import {benchTimes, proposeDays} from '../../../plugins/plan/work/bench-days.ts'
import type {Step} from '../../../plugins/plan/work/step.ts'
import {planOf} from '../../support/plan-of.ts'
import fc from '../../support/properties.ts'
import {randomWork} from '../../support/random-work.ts'
import {soundBuilds} from '../../support/sound-builds.ts'

const step = (id: string, kind: Step['kind'], more: Partial<Step> = {}): Step => ({
  id,
  kind,
  facts: {of: 'sand'} as never,
  tool: 'hands',
  stations: [],
  after: [],
  cautions: [],
  isDone: false,
  ...more,
})
const day = (iso: string, title: string, minutes?: number): DayEntry => ({
  iso,
  title,
  place: wholeFile,
  ...(minutes !== undefined && {minutes}),
})
const three = [
  step('mill', 'mill'),
  step('rip', 'rip', {after: ['mill']}),
  step('plane', 'plane', {after: ['rip']}),
]

describe('how long steps took', () => {
  test('is shared evenly between what a day names and what must have come before it', () => {
    const days = [
      day('2026-03-08', 'Planed', 60),
      day('2026-03-07', 'Ripping', 120),
      day('2026-03-09', 'Tea', 600),
    ]
    const times = benchTimes([{work: three, days}])!
    // Two hours for milling and ripping, one for planing; of a day that names no step nothing is known.
    expect([...times.hours]).toEqual([
      ['mill', 1],
      ['rip', 1],
      ['plane', 1],
    ])
    expect(times).toMatchObject({anyH: 1, days: 2, builds: 1})
  })

  test('is the mean over the builds of the journal, and unknown without hours', () => {
    const of = (minutes: number) => ({work: [three[0]!], days: [day('2026-03-07', 'Milling', minutes)]})
    expect(benchTimes([of(60), of(180), {work: three, days: []}])).toMatchObject({
      anyH: 2,
      days: 2,
      builds: 2,
    })
    expect(benchTimes([{work: three, days: [day('2026-03-07', 'Milling')]}])).toBeUndefined()
  })
})

const hourEach = {hours: new Map<Step['kind'], number>(), anyH: 1, days: 1, builds: 1}

describe('days that are proposed', () => {
  test('fill the wait for glue with what does not depend on it, and wait where nothing is left', () => {
    const work = [
      step('glue-up', 'glue-up', {waitH: 24}),
      step('plane', 'plane', {after: ['glue-up']}),
      step('box-prepare', 'box-prepare'),
      step('string', 'string', {after: ['plane', 'box-prepare']}),
    ]
    // Glued in the first hour of the first day, the stick is ready after the first hour of the second.
    expect(proposeDays(work, 2, hourEach)).toEqual([
      {day: 1, steps: ['glue-up', 'box-prepare'], hours: 2},
      {day: 3, steps: ['plane', 'string'], hours: 2},
    ])
  })

  test('leave out what is done, and let a step that is longer than a day go on', () => {
    const work = [
      step('mill', 'mill', {isDone: true}),
      step('rip', 'rip', {after: ['mill']}),
      step('sand', 'sand'),
    ]
    // An hour is two days of 0.4 h and half of a third, which has no room for another hour.
    expect(proposeDays(work, 0.4, hourEach)).toEqual([
      {day: 1, steps: ['rip'], hours: 1},
      {day: 4, steps: ['sand'], hours: 1},
    ])
  })

  const holds = (work: readonly Step[], dayH: number) => {
    const days = proposeDays(work, dayH, hourEach)
    const order = days.flatMap(({steps}) => steps)
    expect([...order].sort()).toEqual(
      work
        .filter(({isDone}) => !isDone)
        .map(({id}) => id)
        .sort(),
    )
    const dayOf = new Map(days.flatMap(({day, steps}) => steps.map((id) => [id, day] as const)))
    for (const {id, after} of work)
      for (const before of after) {
        const earlier = work.find((one) => one.id === before)!
        if (earlier.isDone) continue
        expect(order.indexOf(before)).toBeLessThan(order.indexOf(id))
        // Whole days between cannot be fewer than the wait.
        expect((dayOf.get(id)! - dayOf.get(before)!) * 24 + dayH).toBeGreaterThanOrEqual(earlier.waitH ?? 0)
      }
    for (const {steps, hours} of days) expect(steps.length === 1 || hours <= dayH + 1e-9).toBe(true)
  }

  test('have every open step once, after all that it stands on and its waits, and are no longer than a day', () => {
    for (const text of Object.values(soundBuilds)) holds(planOf(text).plan.work!, 3)
    fc.assert(
      fc.property(randomWork, fc.integer({min: 1, max: 12}), (text, dayH) =>
        holds(planOf(text).plan.work ?? [], dayH),
      ),
      {numRuns: 6},
    )
  })
})
