import {mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, symlinkSync, writeFileSync} from 'node:fs'
import {tmpdir} from 'node:os'
import {join} from 'node:path'
import {afterAll, beforeAll, describe, expect, test} from 'vitest'
import {listen} from '../../site/serve/listen.ts'
import {newBuildWriter} from '../../site/serve/write-new-build.ts'
import {newBuildPath} from '../../site/try/new-build-path.ts'

// What writes into the journal, asked as a page of the journal asks, and as others might.

const root = mkdtempSync(join(tmpdir(), 'write-'))
const builds = join(root, 'builds')
const text = '---\ntitle: Needle box\n---\n'
let server: {port: number; close: () => void}
let at = ''
let token = ''

beforeAll(async () => {
  mkdirSync(builds)
  writeFileSync(join(builds, 'there.md'), 'mine')
  mkdirSync(join(builds, 'folder'))
  symlinkSync('/nowhere/at/all', join(builds, 'hanging.md'))
  const write = newBuildWriter(root)
  server = await listen((request, response) => void write(request, response), 8600)
  at = `http://localhost:${server.port}${newBuildPath}`
  token = await (await fetch(at)).text()
})
afterAll(() => {
  server?.close()
  rmSync(root, {recursive: true, force: true})
})

const own = () => ({
  'Content-Type': 'application/json',
  'X-Token': token,
  Origin: `http://localhost:${server.port}`,
})
const post = async (sent: unknown, headers: Record<string, string> = own()) => {
  const body = typeof sent === 'string' ? sent : JSON.stringify(sent)
  const answer = await fetch(at, {method: 'POST', headers, body})
  return {status: answer.status, ...((await answer.json()) as {says: string})}
}

test('a page of the journal writes a new build', async () => {
  expect(await post({slug: 'needle-box', text})).toEqual({
    status: 201,
    says: 'builds/needle-box.md is written. Its page is at /builds/needle-box/.',
  })
  expect(readFileSync(join(builds, 'needle-box.md'), 'utf8')).toBe(text)
})

describe('what is there stays as it is', () => {
  test.each(['there', 'folder', 'hanging', 'needle-box'])('%s', async (slug) => {
    const before = readdirSync(builds)
    expect(await post({slug, text: '---\ntitle: Other\n---\n'})).toMatchObject({status: 409})
    expect(readdirSync(builds)).toEqual(before)
    expect(readFileSync(join(builds, 'there.md'), 'utf8')).toBe('mine')
  })
})

describe('nothing is written', () => {
  const others = (change: Record<string, string | undefined>) =>
    Object.fromEntries(
      Object.entries({...own(), ...change}).filter(([, value]) => value !== undefined),
    ) as Record<string, string>
  test.each([
    ['for a page from elsewhere', {Origin: 'https://example.org'}, 403],
    ['for a page of another port', {Origin: 'http://localhost:1'}, 403],
    ['for a page that hides where it is from', {Origin: 'null'}, 403],
    ['where nobody says who asks', {Origin: undefined}, 403],
    ['for what a browser calls another site', {'Sec-Fetch-Site': 'cross-site'}, 403],
    ['for another port of this machine', {'Sec-Fetch-Site': 'same-site'}, 403],
    ['without the token', {'X-Token': undefined}, 403],
    ['with another token', {'X-Token': '0'.repeat(48)}, 403],
    ['for a form, which needs no leave to be sent', {'Content-Type': 'text/plain'}, 415],
  ] as const)('%s', async (_, change, status) => {
    const before = readdirSync(builds)
    expect(await post({slug: 'not-this', text}, others(change))).toMatchObject({status})
    expect(readdirSync(builds)).toEqual(before)
  })

  test('under another name than the machine’s own', async () => {
    // A name that leads here from outside: fetch sets Host itself, so it is asked by hand.
    const {request} = await import('node:http')
    const status = await new Promise((resolve) => {
      const headers = {...own(), Host: 'example.org', Origin: 'http://example.org'}
      const asking = request({port: server.port, path: newBuildPath, method: 'POST', headers}, (answer) =>
        resolve(answer.statusCode),
      )
      asking.end(JSON.stringify({slug: 'not-this', text}))
    })
    expect(status).toBe(421)
  })

  test.each([
    {slug: '../outside', text},
    {slug: 'a/b', text},
    {slug: '..', text},
    {slug: '', text},
    {slug: 'Capital', text},
    {slug: 'readme', text},
    {slug: 'x'.repeat(121), text},
    {slug: ['a'], text},
    {slug: 'a\u0000b', text},
    {slug: 'no-front', text: 'words'},
    {slug: 'no-text'},
    {slug: 'large', text: `---\n${'# x\n'.repeat(70_000)}---\n`},
    'no JSON',
    'null',
    '[]',
  ])('where what is sent is no build: %#', async (sent) => {
    const before = readdirSync(builds)
    expect(await post(sent)).toMatchObject({status: 400})
    expect(readdirSync(builds)).toEqual(before)
  })

  test('by another way of asking', async () => {
    expect((await fetch(at, {method: 'PUT', headers: own(), body: '{}'})).status).toBe(405)
  })
})

test('the token is told to no page from elsewhere', async () => {
  for (const headers of [{'Sec-Fetch-Site': 'cross-site'}, {Origin: 'https://example.org'}]) {
    const answer = await fetch(at, {headers})
    expect([answer.status, (await answer.text()).includes(token)]).toEqual([403, false])
  }
  const open = await fetch(at)
  expect(open.headers.get('access-control-allow-origin')).toBe(null)
})
