import {afterAll, expect, test} from 'vitest'
import type {Example} from '../../plugins/build-file/rules/rule-text.ts'
import {rules} from '../../plugins/checks/all.ts'
import {commandHere} from '../support/command-here.ts'
import {tempJournal} from '../support/temp-journal.ts'

import '../support/slow.ts'

const ofJournals = rules.filter(({passes}) => filesOf(passes))
const journals = {
  passes: tempJournal(Object.assign({}, ...ofJournals.map(({passes}) => filesOf(passes)))),
  fails: tempJournal(Object.assign({}, ...ofJournals.map(({fails}) => filesOf(fails)))),
}
afterAll(() => {
  for (const journal of Object.values(journals)) journal.remove()
})

function filesOf(example: Example | undefined): Readonly<Record<string, string>> | undefined {
  return typeof example === 'object' && 'journal' in example ? example.journal : undefined
}

test('the rules of a journal are silent where they pass, and reported where they fail', async () => {
  const [passed, failed] = [
    await commandHere('check', [], journals.passes.root),
    await commandHere('check', [], journals.fails.root),
  ]
  expect(passed).toMatchObject({status: 0})
  expect(ofJournals.length).toBeGreaterThan(0)
  for (const {name, severity} of ofJournals) {
    expect(passed.stdout + passed.stderr).not.toContain(name)
    expect(failed.stdout + failed.stderr).toMatch(new RegExp(`${severity} .*${name}`))
  }
})
