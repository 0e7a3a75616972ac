import {describe, expect, test} from 'vitest'
import {drawing} from '../../plugins/sections/drawing.ts'
import {planOf} from '../support/plan-of.ts'

const four = 'title: A\nbox: 10 1/8 x 7 x 2\nscale: 24 1/4\nstrings: [D3 .030w, A3 .020w, D4 .013]'

const input = (frontMatter: string, view?: string) => ({
  ...planOf(frontMatter),
  attributes: view === undefined ? {} : {view},
})

const namesOf = (frontMatter: string, view?: string) =>
  drawing.content(input(frontMatter, view)).map((node) => JSON.stringify(node).match(/"drawing-(\w+)"/)![1])

describe('the drawing section', () => {
  test('shows front and side where no view is named', () => {
    expect(namesOf(four)).toEqual(['whole', 'top'])
  })

  test.each(['top', 'side', 'head', 'section', 'inside'])('shows the view named: %s', (view) => {
    expect(namesOf(four, view)).toEqual([view])
  })

  test('names the keys that would bring a drawing', () => {
    expect(drawing.needs(input(four))).toEqual([])
    expect(drawing.needs(input('title: A'))).toEqual(['scale.length'])
    expect(drawing.needs(input('title: A', 'inside'))).toEqual(['box.length', 'box.width', 'box.depth'])
  })

  test('says what the figures are in', () => {
    const captions = (frontMatter: string) => JSON.stringify(drawing.content(input(frontMatter)))
    expect(captions(four)).toContain('figures in inches')
    expect(captions('title: A\nunits: mm\nbox: 257 x 178 x 51\nscale: 616\nstrings: 3')).toContain(
      'figures in millimetres',
    )
  })
})
