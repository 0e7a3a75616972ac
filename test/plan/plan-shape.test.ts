import {readdirSync, readFileSync} from 'node:fs'
import {Ajv} from 'ajv'
import {describe, expect, test} from 'vitest'
import {readBuild} from '../../plugins/build-file/read.ts'
import {type Plan, planBuild} from '../../plugins/plan/plan.ts'
import {printedPlan} from '../../plugins/words/printed-plan.ts'
import {planSchema} from '../../site/commands/generated.ts'
import {randomBuild} from '../drawings/support/random-build.ts'
import fc from '../support/properties.ts'
import {soundBuilds} from '../support/sound-builds.ts'

// The schema comes from the plan's TypeScript interfaces, closed all the way down: no field that they do not name, none
// missing that they promise, no text for a number, and no number that JSON cannot write.
const validator = (type: 'Plan' | 'PrintedPlan') =>
  new Ajv({allErrors: true}).compile(planSchema(type) as Record<string, unknown>)
const shapes = {computed: validator('Plan'), printed: validator('PrintedPlan')}
const planOf = (text: string) => planBuild(readBuild(text, {slug: 'shape'}).build, {journal: {}, pieces: []})

function expectShape(plan: Plan) {
  const printed = printedPlan(plan)
  for (const [value, accepts] of [
    [JSON.parse(JSON.stringify(plan)), shapes.computed],
    [printed, shapes.printed],
  ] as const) {
    accepts(value)
    expect(accepts.errors?.map(({instancePath, message}) => `${instancePath} ${message}`) ?? []).toEqual([])
  }
  expect(JSON.parse(JSON.stringify(plan))).toEqual(plan)
  expect(JSON.parse(JSON.stringify(printed))).toStrictEqual(printed)
}

const textsIn = (folder: string) =>
  readdirSync(folder, {recursive: true})
    .map(String)
    .filter((name) => name.endsWith('.md') && !name.endsWith('output.md'))
    .sort()
    .map((name): [string, string] => [`${folder}/${name}`, readFileSync(`${folder}/${name}`, 'utf8')])

describe('the plan has its shape', () => {
  const four = 'title: Needle box\nbox: 10 1/8 x 7 x 2\nscale: 24 1/4\nstrings: [D3 .030w, A3 .020w, D4 .013]'
  const written = {
    ...soundBuilds,
    'four lines': four,
    'a title': 'title: A',
    'nothing that can be read': 'title: A\nscale: 24 inn',
  }
  test.each(Object.entries(written))('%s', (_, text) => expectShape(planOf(`---\n${text}\n---\n`)))
  test.each(textsIn('builds'))('%s', (_, text) => expectShape(planOf(text)))
  test.each(textsIn('test/journals'))('%s', (_, text) => expectShape(planOf(text)))
  test.each(textsIn('test/fixtures'))('%s', (_, text) => expectShape(planOf(text)))
  test('any build', () =>
    fc.assert(
      fc.property(randomBuild, (text) => expectShape(planOf(`---\n${text}\n---\n`))),
      {numRuns: 100},
    ))
})
