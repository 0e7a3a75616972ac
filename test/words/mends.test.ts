import {expect, test} from 'vitest'
import {changeInWords} from '../../plugins/words/mends.ts'

test('a change shows its own lines alone, where those between stay', () => {
  const before = ['scale: 23', 'box: 9 x 6 x 2', 'frets: 18', 'nut: bone']
  const after = ['scale: {length: 23, lines: 18}', 'box: 9 x 6 x 2', 'nut: bone']
  expect(changeInWords({line: 9, before, after})).toEqual([
    '  9  - scale: 23',
    '     + scale: {length: 23, lines: 18}',
    '  11  - frets: 18',
  ])
  expect(changeInWords({line: 3, before: [], after: ['units: in']})).toEqual(['  3  + units: in'])
})
