import {expect, test} from 'vitest'
import {comparisons, habits, spread} from '../../plugins/plan/deviations.ts'
import type {Plan} from '../../plugins/plan/plan.ts'

// Worked by hand: of -1, 1, 2, 3, 10 the middle one is 2, the middle size 2.
test('spread tells the middle, the typical and the furthest difference', () => {
  expect(spread([3, -1, 10, 1, 2])).toEqual({median: 2, typical: 2, furthest: 10, above: 4, below: 1})
})

/** Builds that each measured one thing, so far off its plan. */
const builds = (differences: readonly number[], path = 'action.octave') =>
  differences.map((difference) => ({
    plan: {
      asBuilt: [{path, unit: 'mm', planned: 5, measured: 5 + difference, difference}],
    } as unknown as Plan,
  }))

// Chances by hand: of five all to one side 1/32, of six five or more 7/64, of eight seven or more 9/256.
test.each([
  ['five of five are a habit', [0.4, 0.2, 0.3, 0.5, 0.1], {off: 0.3, builds: 5, same: 5}],
  ['five of six may be chance', [0.4, 0.2, 0.3, 0.5, 0.1, -0.1], undefined],
  ['seven of eight are one', [-1, -2, -3, -4, -5, -6, -7, 1], {off: -3.5, builds: 8, same: 7}],
  ['four are too few', [1, 1, 1, 1], undefined],
])('%s', (_, differences, habit) => {
  const found = habits(comparisons(builds(differences)))
  if (habit) expect(found).toMatchObject([{path: 'action.octave', unit: 'mm', ...habit}])
  else expect(found).toEqual([])
})
