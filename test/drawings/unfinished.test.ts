import {describe, expect, test} from 'vitest'
import {readBuild} from '../../plugins/build-file/read.ts'
import {draw, viewNames} from '../../plugins/drawings/draw.ts'
import {figureDrawing} from '../../plugins/drawings/hero/figure.ts'
import {extent} from '../../plugins/drawings/kit/extent.ts'
import {templateDxf, templates} from '../../plugins/drawings/templates/sheets.ts'
import {planBuild} from '../../plugins/plan/plan.ts'
import fc from '../support/properties.ts'
import {randomBuild} from './support/random-build.ts'

const read = (frontMatter: string) => {
  const {build} = readBuild(`---\n${frontMatter}\n---\n`, {slug: 'chance', journal: {}})
  return {build, plan: planBuild(build, {journal: {}, pieces: []})}
}

/** Leave out lines of a front matter but its first, each with what is indented below it. */
function without(frontMatter: string, missing: readonly number[]): string {
  let out = Number.POSITIVE_INFINITY
  const isKept = (line: string, at: number) => {
    const indent = line.search(/\S/)
    if (indent > out) return false
    out = at > 0 && missing.includes(at) ? indent : Number.POSITIVE_INFINITY
    return out === Number.POSITIVE_INFINITY
  }
  return frontMatter.split('\n').filter(isKept).join('\n')
}

const namesOf = (frontMatter: string) => draw(read(frontMatter).plan, viewNames).map(({name}) => name)

describe('a build that fills up as work goes on', () => {
  test('has no drawing from a title alone', () => {
    expect(namesOf('title: A')).toEqual([])
    expect(figureDrawing(read('title: A').plan, {})).toBeUndefined()
    expect(templateDxf(read('title: A').plan, read('title: A').build)).toBeUndefined()
  })

  test('is drawn as a neck that goes on while no box is given', () => {
    expect(namesOf('title: A\nscale: 24 1/4\nstrings: 3')).toEqual(['top', 'side', 'head', 'section'])
  })

  test('is drawn whole from four lines', () => {
    const four = 'title: A\nbox: 10 1/8 x 7 x 2\nscale: 24 1/4\nstrings: [D3 .030w, A3 .020w, D4 .013]'
    expect(namesOf(four)).toEqual([...viewNames])
    expect(templates(read(four).plan).map(({name}) => name)).toEqual(['neck', 'head', 'box top'])
  })

  test('never draws a place that is no number, whatever is missing', () => {
    fc.assert(
      fc.property(randomBuild, fc.array(fc.nat(30), {maxLength: 8}), (frontMatter, missing) => {
        const {plan} = read(without(frontMatter, missing))
        const shapes = [...draw(plan, viewNames), ...templates(plan)].flatMap((one) => one.shapes)
        expect(shapes.filter((shape) => !Object.values(extent([shape])).every(Number.isFinite))).toEqual([])
      }),
      {numRuns: 100, seed: 3},
    )
  })
})
