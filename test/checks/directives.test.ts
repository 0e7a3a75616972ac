import {describe, expect, it} from 'vitest'
import {readBuild} from '../../plugins/build-file/read.ts'
import {checks} from '../../plugins/checks/checks.ts'
import {planBuild} from '../../plugins/plan/plan.ts'
import {readBody} from '../../plugins/syntax/body.ts'

const file = (body: string) => `---\ntitle: Needle box\nscale: 24\nstatus: strung up\n---\n\n${body}\n`

function problems(body: string) {
  const {build} = readBuild(file(body), {slug: 'needle-box', body: readBody})
  return checks(build, planBuild(build, {journal: {}, pieces: []}))
}

describe('the rules of directives and values', () => {
  it.each([
    ['::layout', '::layuot', 'unknown-directive'],
    ['::drawing{view=top}', '::drawing{view=tpo}', 'unknown-directive'],
    ['::leave-out{layout}', '::leave-out{layuot}', 'unknown-directive'],
    [':value[scale.length]', ':value[scale.lenght]', 'unknown-value'],
  ])('%s is sound, and %s brings one problem, mended by what it proposes', (sound, wrong, rule) => {
    expect(problems(sound)).toEqual([])
    const [problem, ...others] = problems(wrong)
    expect(problem).toMatchObject({
      rule,
      severity: 'warning',
      line: 7,
      column: 1,
      endColumn: wrong.length + 1,
    })
    expect(others).toEqual([])
    expect(problems(problem?.expected?.[0] ?? '')).toEqual([])
  })

  it.each([
    ['::layout', '::layout\n\n::layout', 'directive-twice', 9],
    [
      '::drawing{view=top}\n\n::drawing{view=side}',
      '::drawing{view=top}\n\n::drawing{view=top}',
      'directive-twice',
      9,
    ],
    ['::leave-out{layout}', '::leave-out{layout cautions}', 'cautions-left-out', 7],
    [':value[scale.length]', ':value[box.volume]', 'open-value', 7],
  ])('%j is sound, and %j is not', (sound, wrong, rule, line) => {
    expect(problems(sound)).toEqual([])
    expect(problems(wrong)).toMatchObject([{rule, severity: 'warning', line}])
  })

  it('names the key that an open value waits for', () => {
    expect(problems(':value[box.volume]')[0]?.message).toContain('box.length')
  })
})
