import {expect, test} from 'vitest'
import {madePages} from '../support/made-pages.ts'
import {fourLines, tempJournal} from '../support/temp-journal.ts'
import '../support/slow.ts'

test('money is published where it is asked for alone, but the price of what is for sale', async () => {
  const sold = 'status: sold\ncost: [{item: a box, each: 1910.37}]\n'
  const stock = 'stock: [{id: S1, wood: white ash, cost: 1987.53, length: 40, width: 3, thickness: 1}]\n'
  const offered = sold.replace('sold', 'strung up') + stock
  const journal = tempJournal({
    'builds/journal.yaml': 'currency: EUR\nask: loft@example.org\nrate: 2011.5\n',
    'builds/rack.yaml': '- {id: TN, item: tuners, count: 12, cost: 1982.19}\n',
    'builds/kept.md': `${fourLines('Kept', `price: 1123.45\nstarted: 2026-03-01\ntake: [TN]\n${sold}`)}\n## 2026-03-01 Neck (3 h)\n`,
    'builds/offered.md': fourLines('Offered', `price: 321.09\nfor-sale: true\nbased-on: kept\n${offered}`),
  })
  const files = await madePages(journal)
  const holding = (text: string) =>
    Object.entries(files).flatMap(([name, one]) => (isRead(name) && one.includes(text) ? [name] : []))
  // Prices, what is left of one, what was paid for a box, for wood and for tuners, and three hours at the rate.
  for (const kept of ['1123.45', '6733.49', '12767.99', '1910.37', '1987.53', '1982.19', '2011.5', '6034.5'])
    expect(holding(kept)).toEqual([])
  expect(holding('321.09')).toEqual([
    'builds/offered/build.md',
    'builds/offered/index.html',
    'builds/offered/plan.json',
    'search.json',
  ])
  expect(files['builds/offered/index.html']).toContain('321.09 EUR; <a href="mailto:loft@example.org">')
  expect(files['builds/offered/build.md']).toContain('{id: S1, wood: white ash, length: 40')
  // A price hides nothing else: the copy still leads to what it was copied from.
  expect(files['builds/offered/changes/index.html']).toContain('href="/builds/kept/"')
  // The maker's own eyes see all of it, and so does the site where it is asked for.
  const {cost} = JSON.parse(journal.run('plan', 'builds/kept.md').stdout)
  expect(cost).toMatchObject({price: 1123.45, left: -6733.49, hours: 3, work: 6034.5, margin: -12767.99})
  journal.write('builds/journal.yaml', 'currency: EUR\nrate: 2011.5\nshow-money: true\n')
  expect((await madePages(journal))['builds/kept/index.html']).toMatch(
    /3 h at 2011\.50 EUR: 6034\.50 EUR.*Short of its cost.*12767\.99 EUR/s,
  )
  journal.remove()
})

/** Coordinates of drawings may look like money. */
const isRead = (name: string) => /\.(?:html|json|md|xml)$/.test(name)
