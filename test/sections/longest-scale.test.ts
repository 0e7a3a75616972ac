import {expect, test} from 'vitest'
import {layout} from '../../plugins/sections/layout.ts'
import {planOf} from '../support/plan-of.ts'

const section = (frontMatter: string) => {
  const input = {...planOf(frontMatter), attributes: {}}
  return {needs: layout.needs(input), said: JSON.stringify(layout.content(input))}
}

test('a build without a scale length is told the longest that its stick and box allow', () => {
  // 36 in less a head of 5 1/2 in and a fifth of the box, 2 in.
  const {needs, said} = section('title: Long\nbox: 10 x 7 x 2\nstrings: 3\nneck: {length: 36}')
  expect(needs).toEqual([])
  expect(said).toContain('The longest scale that this stick and this box allow is ')
  expect(said).toContain('(723.9 mm)')
})

test('without a stick there is nothing to lay out', () => {
  expect(section('title: Long\nbox: 10 x 7 x 2\nstrings: 3').needs).toEqual(['scale.length'])
})
