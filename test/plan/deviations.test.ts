import {expect, test} from 'vitest'
import {spread} from '../../plugins/plan/deviations.ts'

// Worked by hand: of -1, 1, 2, 3, 10 the middle one is 2, the middle size 2.
test('spread tells the middle, the typical and the furthest difference', () => {
  expect(spread([3, -1, 10, 1, 2])).toEqual({median: 2, typical: 2, furthest: 10, above: 4, below: 1})
})
