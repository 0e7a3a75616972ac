import type {IncomingMessage} from 'node:http'
import {expect, test} from 'vitest'
import {waitingPage, waitOrTell} from '../../site/serve/waiting-page.ts'

const around = {title: 'Shed book', prefix: '/', isWriting: true, assets: {style: '/assets/style.css'}}
const asking = (accept: string, method = 'GET') => ({method, headers: {accept}}) as unknown as IncomingMessage
const html = asking('text/html,application/xhtml+xml,*/*;q=0.8')

test('whoever opens a page that takes longer is told so, and everything else waits for it', async () => {
  const told: string[] = []
  const never = new Promise<void>(() => {})
  expect(await waitOrTell(Promise.resolve(), html, async () => void told.push('at once'))).toBe(true)
  expect(await waitOrTell(never, html, async () => void told.push('later'))).toBe(false)
  expect(told).toEqual(['later'])
  for (const other of [asking('*/*'), asking('image/avif,*/*'), asking('text/html', 'HEAD')]) {
    let isThere = false
    const waits = waitOrTell(never, other, async () => void told.push('no page')).then(() => {
      isThere = true
    })
    await Promise.race([waits, new Promise((resolve) => setTimeout(resolve, 10))])
    expect([isThere, told.length]).toEqual([false, 1])
  }
})

test('it says how far the work is, leads to what can be seen already, and looks again by itself', () => {
  const titles = [{slug: 'oar-box', title: 'Oar <b>box</b>'}]
  const page = waitingPage({line: 'Making 12 of 1000, about 5 min more', titles}, around)
  expect(page).toContain('<p>Making 12 of 1000, about 5 min more.</p>')
  expect(page).toContain('<a href="/builds/oar-box/">Oar &#x3C;b>box&#x3C;/b></a>')
  expect(page).toContain('<link rel="stylesheet" href="/assets/style.css">')
  expect(waitingPage({line: '', titles: []}, around)).not.toContain('of any build')
})
