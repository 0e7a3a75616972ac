import {join} from 'node:path'
import {expect, test} from 'vitest'
import {filesOf} from '../support/site-files.ts'
import {fourLines, tempJournal} from '../support/temp-journal.ts'
import '../support/slow.ts'

test('a price is published where an instrument is for sale, and what it leaves for the work never', () => {
  const sold = 'status: sold\ncost: [{item: a box, each: 10}]\n'
  const journal = tempJournal({
    'builds/journal.yaml': 'currency: EUR\nask: loft@example.org\n',
    'builds/kept.md': fourLines('Kept', `price: 123.45\n${sold}`),
    'builds/offered.md': fourLines(
      'Offered',
      `price: 321.09\nfor-sale: true\n${sold.replace('sold', 'strung up')}`,
    ),
  })
  expect(journal.run('build')).toMatchObject({status: 0})
  const files = filesOf(join(journal.root, '_site'))
  const holding = (text: string) => Object.keys(files).filter((name) => files[name]!.includes(text))
  for (const price of ['123.45', '113.45', '311.09']) expect(holding(price)).toEqual([])
  expect(holding('321.09')).toEqual([
    'builds/offered/build.md',
    'builds/offered/index.html',
    'builds/offered/plan.json',
    'search.json',
  ])
  expect(files['builds/offered/index.html']).toContain('321.09 EUR; <a href="mailto:loft@example.org">')
  // The maker's own eyes see all of it.
  const {cost} = JSON.parse(journal.run('plan', 'builds/kept.md').stdout)
  expect(cost).toMatchObject({price: 123.45, left: 113.45})
  journal.remove()
})
