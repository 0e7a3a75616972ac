import {EventEmitter, once} from 'node:events'
import {mkdirSync, mkdtempSync, realpathSync, rmSync, symlinkSync, writeFileSync} from 'node:fs'
import {get, type IncomingMessage, type ServerResponse} from 'node:http'
import {tmpdir} from 'node:os'
import {join} from 'node:path'
import {afterAll, beforeAll, describe, expect, test} from 'vitest'
import {byteRange, fileFor} from '../../site/serve/answer.ts'
import {Changes} from '../../site/serve/changes.ts'
import {listen} from '../../site/serve/listen.ts'
import '../support/slow.ts'

// Source of the forms and of what each means: RFC 9110, section 14.1.2, whose examples are of 10,000 bytes.
describe('byteRange', () => {
  test.each([
    [undefined, undefined],
    ['bytes=0-499', [0, 499]],
    ['bytes=500-999', [500, 999]],
    ['bytes=-500', [9500, 9999]],
    ['bytes=9500-', [9500, 9999]],
    ['bytes=0-0', [0, 0]],
    ['bytes=9999-20000', [9999, 9999]],
    ['bytes=-20000', [0, 9999]],
    ['bytes=10000-', 'none'],
    ['bytes=5-4', 'none'],
    ['bytes=-0', 'none'],
    ['bytes=0-0,-1', undefined],
    ['bytes=-', undefined],
    ['lines=1-2', undefined],
  ] as const)('%s', (header, range) => {
    expect(byteRange(header, 10_000)).toEqual(range)
  })
})

// No clock is asked, so that one that is turned loads no page anew without end.
describe('Changes', () => {
  const told = (changes: Changes, address: string, state: string) => {
    const written: string[] = []
    const response = Object.assign(new EventEmitter(), {
      writeHead: () => response,
      write: (text: string) => written.push(text),
    })
    changes.wait(response as unknown as ServerResponse, address, state)
    return () => written.filter((text) => text.startsWith('data:')).length
  }
  test('tells a page once that it shows what was', () => {
    const changes = new Changes()
    const before = changes.state()
    const [own, other] = [told(changes, '/a/', before), told(changes, '/b/', before)]
    changes.announce(['/a/'])
    expect([own(), other()]).toEqual([1, 0])
    expect(told(changes, '/a/', before)()).toBe(1)
    expect(told(changes, '/b/', before)()).toBe(0)
    expect(told(changes, '/a/', changes.state())()).toBe(0)
  })
  test('tells a page of a server that has ended, and none that does not say what it shows', () => {
    const changes = new Changes()
    changes.announce(['/a/'])
    expect(told(changes, '/b/', new Changes().state())()).toBe(1)
    expect(told(changes, '/a/', '')()).toBe(0)
  })
})

describe('listen', () => {
  let own: Awaited<ReturnType<typeof listen>>
  beforeAll(async () => {
    own = await listen((_, response) => void response.end(), 8400)
  })
  afterAll(() => own.close())

  test.each([
    ['localhost', 200],
    ['LOCALHOST', 200],
    ['127.0.0.1', 200],
    ['[::1]', 200],
    ['localhost.elsewhere.example', 421],
    ['elsewhere.example', 421],
    ['192.168.0.7', 421],
  ])('a request to %s gets %s', async (name, status) => {
    const asked = get({host: '127.0.0.1', port: own.port, headers: {host: `${name}:${own.port}`}})
    const [answer] = (await once(asked, 'response')) as [IncomingMessage]
    answer.resume()
    expect(answer.statusCode).toBe(status)
  })
})

describe('fileFor', () => {
  let folder = ''
  beforeAll(() => {
    folder = join(realpathSync(mkdtempSync(join(tmpdir(), 'served-'))), 'site')
    mkdirSync(join(folder, 'a b'), {recursive: true})
    writeFileSync(join(folder, 'a b/index.html'), 'x')
    writeFileSync(join(folder, '../secret'), 'x')
    symlinkSync('../secret', join(folder, 'link'))
  })
  afterAll(() => rmSync(join(folder, '..'), {recursive: true}))

  test('finds a folder’s page by its address, encoded or under a prefix', async () => {
    expect(await fileFor(folder, '/', '/a%20b/')).toMatchObject({file: join(folder, 'a b/index.html')})
    expect(await fileFor(folder, '/x/', '/x/a%20b/')).toMatchObject({file: join(folder, 'a b/index.html')})
    expect(await fileFor(folder, '/x/', '/a%20b/')).toBeUndefined()
  })
  test('sends on to the address with a slash at its end', async () => {
    expect(await fileFor(folder, '/', '/a%20b')).toEqual({to: '/a%20b/'})
    expect(await fileFor(folder, '/x/', '/x')).toEqual({to: '/x/'})
  })
  test.each([
    '/../secret',
    '/%2e%2e/secret',
    '/..%2fsecret',
    '/link',
    '/%',
    '/a%00',
    '//secret',
    '/..\\secret',
  ])('%s finds nothing', async (path) => {
    expect(await fileFor(folder, '/', path)).toBeUndefined()
  })
})
