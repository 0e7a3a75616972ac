import {describe, expect, test} from 'vitest'
import {placeOf} from '../../plugins/build-file/schema/path.ts'
import type {Place} from '../../plugins/build-file/schema/problem.ts'
import {rules} from '../../plugins/checks/all.ts'
import {findings} from '../../plugins/checks/checks.ts'
import {changed} from '../support/changed.ts'
import {fileOf, type KnownExample, knowExample} from '../support/example.ts'

const isGrave = ({severity}: {severity: string}) => severity !== 'remark'

describe.each(rules)('$name', ({name, severity, what, why, mend, passes, fails, unshown}) => {
  test('says what it finds, why, and how to mend it, in whole sentences', () => {
    for (const sentence of [what, why, mend]) expect(sentence).toMatch(/^\p{Lu}.*\.$/su)
  })

  // A rule of a journal is shown by a whole one: see the tests of the site.
  if (
    unshown ||
    !passes ||
    !fails ||
    (typeof passes === 'object' && 'journal' in passes) ||
    (typeof fails === 'object' && 'journal' in fails)
  ) {
    test('says why no file shows it, or is shown by a journal', () => {
      if (!unshown) expect([passes, fails]).toMatchObject([{journal: {}}, {journal: {}}])
    })
    return
  }

  test('is silent where it passes, and so is every other above a remark', async () => {
    const {problems} = await knowExample(fileOf(passes), passes)
    expect(problems.filter((one) => one.rule === name || isGrave(one))).toEqual([])
  })

  test('is reported where it fails, at a value of the file, and what it proposes mends it', async () => {
    const file = fileOf(fails)
    const known = await knowExample(file, fails)
    const [problem] = known.problems.filter((one) => one.rule === name)
    expect(problem).toMatchObject({severity})
    const [finding] = findings(name, known.build, known.plan)
    if (finding) expect(problem).toMatchObject(placeOfFinding(finding.at, known))
    if (!problem!.expected || isNowhere(problem!)) return
    const [would] = problem!.expected
    const at = finding?.at
    const mended =
      typeof at === 'string' && !known.build.places[at]
        ? withFront(file, (front) => changed(front, {[at]: would!}))
        : replaced(file, problem!, would!)
    const after = await knowExample(mended, fails)
    expect(after.problems.filter((one) => one.rule === name)).toEqual([])
  })
})

/** The place of a value, or of the nearest key around one that is not there; never that of the title for want of both. */
function placeOfFinding(at: string | Place, {build}: KnownExample): Place {
  const place = typeof at === 'string' ? placeOf(build, at) : at
  expect(place).not.toEqual(build.keys.title)
  return place
}

const isNowhere = ({line, column, endLine, endColumn}: Place) => line === endLine && column === endColumn

function withFront(file: string, change: (front: string) => string): string {
  const [, front, rest] = /^---\n(.*?\n)(---\n.*)$/s.exec(file)!
  return `---\n${change(front!)}${rest}`
}

/** Put a text in the place of what stands there. */
function replaced(file: string, {line, column, endLine, endColumn}: Place, text: string): string {
  const lines = file.split('\n')
  const before = lines[line - 1]!.slice(0, column - 1)
  const after = lines[endLine - 1]!.slice(endColumn - 1)
  lines.splice(line - 1, endLine - line + 1, before + text + after)
  return lines.join('\n')
}

test('one slip made a thousand times is told fifty times, and how often it was made', async () => {
  const takes = Array.from({length: 1000}, (_, at) => `A${at}`).join(', ')
  const {problems} = await knowExample(fileOf(`started: 2026-03-07\ntake: [${takes}]`), {text: ''})
  const told = problems.filter(({message}) => /\bA\d+\b/.test(message))
  expect(told).toHaveLength(50)
  expect(told.at(-1)!.message).toContain('(and 950 more like this, not told)')
})
