import {toHtml} from 'hast-util-to-html'
import {expect, test} from 'vitest'
import {offPlanPlot} from '../../plugins/drawings/plots/off-plan-plot.ts'
import {overTimePlot} from '../../plugins/drawings/plots/over-time-plot.ts'

const words = {id: 'plot', title: 'Relief', says: 'How it went.'}
const runOf = (html: string) =>
  /plot-after" d="M([^"]*)"/
    .exec(html)![1]!
    .split('L')
    .map((place) => place.split(' ').map(Number))

test('a measure over months stands at its days, the calendar’s', () => {
  const html = toHtml(
    overTimePlot({
      ...words,
      days: [
        {on: '2026-01-01', value: 0.2, figure: '0.2 mm'},
        {on: '2026-01-31', value: 0.5, figure: '0.5 mm'},
        {on: '2026-05-01', value: 0.3, figure: '0.3 mm'},
      ],
      planned: {value: 0.1, figure: '0.1 mm'},
    }),
  )
  const [first, second, third] = runOf(html) as [number[], number[], number[]]
  // By the calendar: 30 days of 120.
  expect((second[0]! - first[0]!) / (third[0]! - first[0]!)).toBeCloseTo(30 / 120, 2)
  // More is higher: of 0.1 to 0.5 mm, 0.3 mm is in the middle.
  expect(third[1]!).toBeCloseTo((second[1]! + (132 - 30)) / 2, 1)
  for (const figure of ['0.1 mm', '0.5 mm', '2026-01-01', '2026-05-01']) expect(html).toContain(`>${figure}<`)
})

test('measures that never moved, and a single day, can be drawn', () => {
  const day = {on: '2026-01-01', value: 1, figure: '1'}
  for (const days of [[day], [day, {...day, on: '2026-02-01'}]])
    expect(toHtml(overTimePlot({...words, days}))).not.toContain('NaN')
})

test('differences lie about the plan in the middle, a dot each, alike ones stacked', () => {
  const html = toHtml(
    offPlanPlot({
      ...words,
      differences: [-2, 1, 1, 0],
      median: 0.5,
      typical: 1,
      words: {least: '2 less', most: '2 more', middle: 'the middle one', plan: 'plan'},
    }),
  )
  const dots = [.../plot-dot" d="([^"]*)"/.exec(html)![1]!.matchAll(/M([\d.]+) ([\d.]+)a/g)]
  const at = dots.map(([, x, y]) => [Number(x) + 3, Number(y)])
  expect(at).toHaveLength(4)
  expect(at[0]![0]).toBeLessThan(at[1]![0]!)
  expect(Math.abs(at[1]![0]! - 170)).toBeLessThan(4)
  expect(at[2]![0]).toBe(at[3]![0])
  expect(at[2]![1]).not.toBe(at[3]![1])
})
