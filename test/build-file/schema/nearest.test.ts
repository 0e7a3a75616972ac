import distance from 'damerau-levenshtein'
import {expect, test} from 'vitest'
import {nearest} from '../../../plugins/build-file/schema/nearest.ts'
import fc from '../../support/properties.ts'

/** The same by distances alone, each in full (damerau-levenshtein). */
function byDistance(word: string, candidates: readonly string[]): string | undefined {
  const said = word.toLowerCase()
  const most = said.length <= 4 ? 1 : Math.max(2, Math.floor(said.length / 3))
  return candidates
    .map((candidate) => ({candidate, steps: distance(said, candidate.toLowerCase()).steps}))
    .filter(({steps}) => steps <= most)
    .sort((a, b) => a.steps - b.steps)[0]?.candidate
}

const word = fc.string({
  unit: fc.constantFrom('a', 'b', 'c', 'B', '-', '\u00e9', '\u01e9', '😀'),
  maxLength: 9,
})

test('the nearest of names is that of least distance, the first of several', () => {
  fc.assert(
    fc.property(word, fc.array(word, {maxLength: 12}), (said, candidates) => {
      expect(nearest(said, candidates)).toBe(byDistance(said, candidates))
    }),
    {numRuns: 2000},
  )
})
