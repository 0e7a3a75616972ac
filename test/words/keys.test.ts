import {expect, test} from 'vitest'
import type {Kind} from '../../plugins/build-file/schema/kinds.ts'
import {buildSchema} from '../../plugins/build-file/schema/schema.ts'
import {keyInWords} from '../../plugins/words/keys.ts'

/** List the paths of all values that a kind is made of; of a list its second item, of strings D4. */
function pathsOf(kind: Kind, path = ''): string[] {
  const below = (step: string) => (path ? `${path}.${step}` : step)
  if (kind.is === 'record')
    return Object.entries(kind.fields).flatMap(([key, field]) => pathsOf(field, below(key)))
  if (kind.is === 'list') return pathsOf(kind.item, below(path === 'strings' ? 'D4' : '2'))
  if (kind.is === 'either') return [...pathsOf(kind.first, path), ...pathsOf(kind.second, path)]
  return [path]
}

test('every key of a build has words, and no two have the same', () => {
  const paths = [...new Set(pathsOf(buildSchema))]
  const words = paths.map(keyInWords)
  expect(words.filter((one) => /[.*]|-(?!string)|^\s|\s$|undefined/.test(one))).toEqual([])
  expect(words.filter((one, at) => words.indexOf(one) !== at)).toEqual([])
})

test.each([
  ['neck.width.nut', 'width of the neck at the nut'],
  ['neck.laminations.2.thickness', 'layer 2 thickness'],
  ['strings.F#3.gauge', 'F#3 gauge'],
  ['strings.D4-2.tension', 'pull of D4-2'],
  ['box.holes.1.along', 'sound hole 1 from the box’s edge'],
  ['screws.2.off.1', 'screw 2 place 1 off the centre line'],
  ['lines.6 1/2', 'line 6 1/2'],
  ['finish.1', 'finish 1'],
  ['constructor', 'constructor'],
])('%s is %s', (path, words) => {
  expect(keyInWords(path)).toBe(words)
})
