import {describe, expect, it} from 'vitest'
import {inOrder, readBuild} from '../../plugins/build-file/read.ts'
import {checks} from '../../plugins/checks/checks.ts'
import {planBuild} from '../../plugins/plan/plan.ts'
import {settle} from '../../plugins/plan/settle.ts'
import {renderPageBody} from '../../plugins/rehype/render-page-body.ts'
import {readBody} from '../../plugins/syntax/body.ts'

function render(body: string) {
  const text = `---\ntitle: Needle box\n---\n\n${body}\n`
  const read = readBuild(text, {slug: 'needle-box', body: readBody})
  const build = settle(read.build)
  const plan = planBuild(build, {journal: {}, pieces: []})
  const problems = inOrder([...read.problems, ...checks(build, plan)])
  const input = {text, path: 'needle-box.md', published: [], pathPrefix: '/'}
  return {problems, ...renderPageBody({...input, build, plan, problems})}
}

describe('prose that is nested without end', () => {
  it.each([
    ['quotations', '>'.repeat(20_000)],
    ['lists', '- '.repeat(20_000)],
    ['lists by their indent', Array.from({length: 600}, (_, at) => `${'  '.repeat(at)}- a`).join('\n')],
    ['stresses', `${'**a '.repeat(20_000)}${'b** '.repeat(20_000)}`],
    ['pictures', `${'!['.repeat(20_000)}a${'](b)'.repeat(20_000)}`],
    ['elements', '<div>'.repeat(20_000)],
    ['elements in a line', `Words ${'<b>'.repeat(20_000)}`],
    ['elements over many lines', '<div>\n\n'.repeat(5000)],
  ])('in %s is an error at its line, and the page says so', (_, body) => {
    const {problems, html} = render(`Words.\n\n${body}`)
    expect(problems).toMatchObject([{rule: 'nested-too-deep', severity: 'error'}])
    expect(problems[0]?.line).toBeGreaterThanOrEqual(7)
    expect(html).toContain('nested too deep')
  })

  it.each([
    ['quotations', '>'.repeat(150)],
    ['stresses', '*a* _b_ **c** '.repeat(160)],
    ['elements', `${'<div>'.repeat(250)}x${'</div>'.repeat(250)}`],
    ['elements that close', '<kbd>a</kbd> <br> '.repeat(400)],
    ['paragraphs with stresses', '*a* **b**\n\n'.repeat(400)],
    ['a long table', `| a | b |\n|---|---|\n${'| 1 | 2 |\n'.repeat(400)}`],
  ])('but not without measure is read: %s', (_, body) => expect(render(body).problems).toEqual([]))
})
