import {describe, expect, test} from 'vitest'
import {readBuild} from '../../../plugins/build-file/read.ts'
import {leavesOf} from '../../../plugins/build-file/schema/path.ts'
import {addingKey} from '../../../plugins/build-file/writing/add-key.ts'
import {applied} from '../../../plugins/build-file/yaml/apply-edits.ts'
import {manyBuilds} from '../../support/slip-healing.ts'

const fileOf = (...lines: string[]) => ['---', 'title: A', ...lines, '---', ''].join('\n')

function added(text: string, path: string, value: string): string | undefined {
  const edit = addingKey(readBuild(text, {slug: 'a'}).build, path, value)
  return edit && applied(text, [edit])
}

describe('a value that the file has no key for', () => {
  test.each([
    ['is a line of its own', [], 'neck.thickness', '7/8', ['neck: {thickness: 7/8}'], 'before'],
    [
      'is a pair within braces',
      ['neck: {width: 1 5/8}'],
      'neck.thickness',
      '7/8',
      ['neck: {thickness: 7/8, width: 1 5/8}'],
    ],
    [
      'is a line among lines',
      ['neck:', '  # as found', '  width: 2  # wide'],
      'neck.thickness',
      '7/8',
      ['neck:', '  # as found', '  thickness: 7/8', '  width: 2  # wide'],
    ],
    [
      'stands beside what a short form says',
      ['neck: 1 5/8 x 3/4  # planed'],
      'neck.wood',
      'beech',
      ['neck: {width: 1 5/8, thickness: 3/4, wood: beech}  # planed'],
    ],
    [
      'stands beside a lone value below',
      ['box: {top: 1/8, depth: 2}'],
      'box.top.held',
      'glued',
      ['box: {top: {thickness: 1/8, held: glued}, depth: 2}'],
    ],
    [
      'goes deeper than what is there',
      ['box: {depth: 2}'],
      'box.top.held',
      'glued',
      ['box: {top: {held: glued}, depth: 2}'],
    ],
  ])('%s', (_, lines, path, value, then, where = 'behind') => {
    const wanted = where === 'before' ? fileOf().replace('title', `${then[0]}\ntitle`) : fileOf(...then)
    expect(added(fileOf(...lines), path, value)).toBe(wanted)
  })
  test.each([
    ['in a list', ['strings: [D3 .030w]'], 'strings.1.core'],
    ['that no schema has', [], 'neck.colour'],
    ['that is there', ['neck: {thickness: 3/4}'], 'neck.thickness'],
    ['below a word', ['fingerboard: none'], 'fingerboard.thickness'],
  ])('is not added %s', (_, lines, path) => expect(added(fileOf(...lines), path, '7/8')).toBeUndefined())
})

test('in builds of every kind all else is read as before', () => {
  const tries = [
    ['neck.thickness', '7/8 in'],
    ['head.angle', '12'],
    ['box.top.held', 'glued'],
    ['action.relief', '0'],
    ['bridge.foot', '1/2 in'],
  ] as const
  const meant = (text: string) =>
    new Map(
      leavesOf(readBuild(text, {slug: 'a'}).build.values).map(
        ([path, {text: said}]) => [path, said] as const,
      ),
    )
  for (const text of manyBuilds())
    for (const [path, value] of tries) {
      const then = added(text, path, value)
      if (then === undefined) continue
      const [was, is] = [meant(text), meant(then)]
      expect(is.get(path)).toBe(value)
      is.delete(path)
      expect([...is].sort()).toEqual([...was].sort())
    }
})
