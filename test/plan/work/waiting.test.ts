import {describe, expect, test} from 'vitest'
import {waitingOn} from '../../../plugins/plan/work/waiting.ts'
import {stillToGet, waitingInWords} from '../../../plugins/words/state.ts'
import {planOf} from '../../support/plan-of.ts'

const front = `title: a
scale: 24 1/4
strings: [D3 .030w, A3 .020w, D4 .013]
neck: {width: 1 5/8, laminations: [{wood: black cherry, thickness: 3/8}, {wood: white ash, thickness: 3/4}]}
tuners: {button: 1/2}
cost: [{item: tuners, count: 3, each: 2}]
box: {length: 10, width: 7, depth: 2}`

describe('what is left alone', () => {
  const {plan} = planOf(front)
  const place = {line: 1, column: 1, endLine: 1, endColumn: 2}
  const day = (iso: string, title: string) => ({iso, title, place})
  const onBench = (today: string, ...days: ReturnType<typeof day>[]) => waitingOn(today, plan.work!, days)

  // Yellow glue: 24 h until it may be loaded (common practice, no source), by the calendar over the end of a leap February.
  test('a glue-up waits until the day after, by the calendar', () => {
    const glued = day('2028-02-28', 'Glue-up of the layers')
    expect(onBench('2028-02-28', glued)).toMatchObject([
      {id: 'glue-up', on: '2028-02-28', until: '2028-02-29'},
    ])
    expect(onBench('2028-02-29', glued)).toHaveLength(1)
    expect(onBench('2028-03-01', glued)).toEqual([])
    expect(onBench('2028-02-27', glued)).toEqual([])
    expect(waitingInWords(onBench('2028-02-28', glued)[0]!, plan)).toMatch(
      /: since 2028-02-28, until 2028-02-29$/,
    )
  })

  test('the last day that names it counts, and one that only plans it does not', () => {
    const days = [day('2026-03-01', 'Glue-up of the layers'), day('2026-03-03', 'Glue-up again')]
    expect(onBench('2026-03-03', ...days)).toMatchObject([{on: '2026-03-03'}])
    expect(onBench('2026-03-03', day('2026-03-03', 'Clamps made ready for the glue-up'))).toEqual([])
  })
})

test('what is still to get leaves out what was paid for and what the rack gives', () => {
  const items = stillToGet(planOf(front).plan).map(({item}) => item)
  expect(items).toContain('string .013, steel')
  expect(items).not.toContain('tuners')
})
