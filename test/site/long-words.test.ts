import {realpathSync} from 'node:fs'
import {join} from 'node:path'
import type {Browser} from 'playwright-core'
import {afterAll, beforeAll, expect, test} from 'vitest'
import {answer} from '../../site/serve/answer.ts'
import {listen} from '../../site/serve/listen.ts'
import {openBrowser} from '../support/browser.ts'
import {fourLines, tempJournal} from '../support/temp-journal.ts'
import '../support/slow.ts'

// A word that nothing breaks (an address, a name of a file) may stand anywhere and widens no page.

const word = 'Fenstersturzverkleidung'.repeat(20)
const journal = tempJournal({
  'builds/journal.yaml': `title: ${word}\nmaker: ${word}\n`,
  'builds/rack.yaml': `- {id: ${word}, wood: ${word}, length: 10, width: 2, thickness: 1, remark: ${word}}\n`,
  'builds/long.md': `${fourLines(word, `summary: ${word}\ntags: [${word}]\nextras: [${word}]\ncautions: [${word}]\nfinish: [${word}]\nparts: [{name: ${word}, wood: ${word}, length: 4, width: 1, thickness: 1/4}]\nplayed: [{remark: ${word}, scores: {${word}: 3}}]\nmeasured: {neck.${word}: 3}\n`)}# ${word}\n\n${word} \`${word}\` [${word}](${word}.md) **${word}**\n\n- ${word}\n\n> ${word}\n\n|${word}|b|\n|-|-|\n|${word}|c|\n\n![${word}](${word}.jpg)\n\n\`\`\`\n${word}\n\`\`\`\n`,
})
let browser: Browser
let server: Awaited<ReturnType<typeof listen>>

beforeAll(async () => {
  expect(journal.run('build').stderr).not.toContain('Nothing was written')
  const folder = realpathSync(join(journal.root, '_site'))
  server = await listen((request, response) => void answer({folder, prefix: '/'}, request, response), 8400)
  browser = await openBrowser()
})
afterAll(async () => {
  await browser?.close()
  server?.close()
  journal.remove()
})

test.each([360, 1200])('no page is wider than a screen of %i', async (width) => {
  const page = await browser.newPage({viewport: {width, height: 800}})
  const wide: string[] = []
  for (const address of [
    '/',
    '/builds/long/',
    '/builds/long/care/',
    '/builds/long/bench/',
    '/rack/',
    '/side-by-side/',
  ]) {
    await page.goto(`http://localhost:${server.port}${address}`)
    await page.evaluate(() => {
      for (const fold of document.querySelectorAll('details')) fold.open = true
    })
    const over = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth)
    if (over > 0) wide.push(`${address} by ${over}`)
  }
  await page.close()
  expect(wide).toEqual([])
})
