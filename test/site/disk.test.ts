import {
  appendFileSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  realpathSync,
  rmSync,
  statSync,
  utimesSync,
  writeFileSync,
} from 'node:fs'
import {tmpdir} from 'node:os'
import {basename, join} from 'node:path'
import {afterAll, beforeEach, describe, expect, test} from 'vitest'
import {emptyJournal} from '../../site/commands/empty-journal.ts'
import {statPlainFile} from '../../site/journal/plain-file.ts'
import {openCache} from '../../site/kit/cache.ts'
import {diskTrouble} from '../../site/kit/disk-trouble.ts'
import {atHand, SiteWriter} from '../../site/publish/site-writer.ts'
import {keepSpare, spareAfter, spareOf, takeUp} from '../../site/publish/spare.ts'
import {type Standing, stands, takeOver} from '../../site/publish/standing.ts'
import {beginVersion, clearVersions, finishVersion, newVersion} from '../../site/publish/versions.ts'
import {filesOf} from '../support/site-files.ts'

// What a disk may do to a site while it is written, kept and taken over: refuse, forget, hold two names of one file or
// none, and tell times that are not so.

const home = realpathSync(mkdtempSync(join(tmpdir(), 'disk-')))
afterAll(() => rmSync(home, {recursive: true}))

const around = {prefix: '/', isWriting: false, title: 'The loft', assets: {}} as never
const file = (address: string, key: string) => ({address, key, bytes: () => `${key} of ${address}`})
let count = 0
let standing: Standing
beforeEach(() => {
  standing = {folder: join(home, `site-${count++}`), files: {}}
  mkdirSync(standing.folder)
})
async function write(to: Standing, ...files: ReturnType<typeof file>[]): Promise<void> {
  const writer = new SiteWriter(around, to)
  await writer.write([atHand({pages: [], files})])
  await writer.end()
}
const text = (of: Standing, address: string) => readFileSync(join(of.folder, address), 'utf8')

describe('a file that the disk refuses', () => {
  test('is written again, also where it is to be as it was before', async () => {
    await write(standing, file('/a.txt', 'one'))
    mkdirSync(join(standing.folder, 'b.txt'))
    await expect(write(standing, file('/a.txt', 'two'), file('/b.txt', 'two'))).rejects.toThrow('EISDIR')
    await write(standing, file('/a.txt', 'one'))
    expect(text(standing, '/a.txt')).toBe('one of /a.txt')
  })
  test('is told in words', () => {
    const error = (more: object) => Object.assign(new Error('Something else'), more)
    const told = (more: object) => diskTrouble(error(more), '/home/loft', '_site')
    const full = 'the disk of _site is full; make room, and try again'
    expect(told({code: 'ENOSPC'})).toBe(full)
    expect(told({originalError: error({code: 'ENOSPC'})})).toBe(full)
    const closed = {code: 'EROFS', path: '/home/loft/.site/x'}
    expect(told(closed)).toBe('.site/x lies on a disk that can only be read')
    const linked = {code: 'EPERM', syscall: 'symlink', dest: '/home/loft/_site.x'}
    expect(told(linked)).toMatch(/^the disk of _site keeps no links/)
    expect(told({})).toBe('Something else')
  })
})

describe('a second name for a file of the last site', () => {
  const known = {address: '/a.txt', key: 'one'}
  test('lets nobody’s words into a later site', async () => {
    await write(standing, file('/a.txt', 'one'))
    const next = {folder: `${standing.folder}-next`, files: {}}
    mkdirSync(next.folder)
    expect(takeOver(standing, next, [known])).toEqual([])
    expect(stands(next, known)).toBe(true)
    appendFileSync(join(standing.folder, 'a.txt'), 'A line of nobody’s.')
    expect(stands(next, known)).toBe(false)
    const last = {folder: `${standing.folder}-last`, files: {}}
    mkdirSync(last.folder)
    expect(takeOver(next, last, [known])).toEqual([known])
    await write(last, file('/a.txt', 'one'))
    expect(text(last, '/a.txt')).toBe('one of /a.txt')
  })

  const other = '/dev/shm'
  const isOther = existsSync(other) && statSync(other).dev !== statSync(home).dev
  test.runIf(isOther)('is a copy of its own where the disk is another', async () => {
    await write(standing, file('/deep/a.txt', 'one'))
    const next = {folder: mkdtempSync(join(other, 'disk-')), files: {}}
    const deep = {address: '/deep/a.txt', key: 'one'}
    expect(takeOver(standing, next, [deep])).toEqual([])
    appendFileSync(join(standing.folder, 'deep/a.txt'), 'A line of nobody’s.')
    expect(text(next, '/deep/a.txt')).toBe('one of /deep/a.txt')
    expect(stands(next, deep)).toBe(true)
    rmSync(next.folder, {recursive: true})
  })
})

describe('the version before the last', () => {
  const site = join(home, 'spared/_site')
  const nameOf = ({folder}: Standing) => basename(folder)
  beforeEach(() => rmSync(join(site, '..'), {recursive: true, force: true}))
  type Files = Record<string, string>
  /** Write the next version; the one before `last` then waits for the one after it. */
  async function next(last: Standing, files: Files): Promise<Standing> {
    const version = await newVersion(site, spareOf(site, last))
    await beginVersion(version)
    const to = takeUp(version, last)
    const writer = new SiteWriter(around, to, last)
    await writer.write([atHand({pages: [], files: Object.entries(files).map((one) => file(...one))})])
    await writer.end()
    await finishVersion(version)
    return {...to, spare: spareAfter(last, to)}
  }
  const nothing = {folder: '/', files: {}}
  const written = (files: Files) =>
    Object.fromEntries(Object.entries(files).map(([name, key]) => [name.slice(1), `${key} of ${name}`]))
  const one = {
    '/a/a.txt': 'one',
    '/b/b.txt': 'one',
    '/c': 'one',
    '/d.txt': 'one',
    '/e.txt': 'one',
    '/f': 'one',
  }

  test('becomes the next one, whatever became of it, and the last one stays as it is', async () => {
    const first = await next(nothing, one)
    const two = {...one, '/d.txt': 'two'}
    const second = await next(first, two)
    appendFileSync(join(first.folder, 'a/a.txt'), 'A line of nobody’s.')
    writeFileSync(join(first.folder, 'b/stray.txt'), 'nobody’s')
    mkdirSync(join(first.folder, 'empty'))
    await keepSpare(site, first.folder)
    const before = filesOf(second.folder)
    // What was a file becomes a folder, and the other way about.
    const {'/a/a.txt': _, '/b/b.txt': __, '/c': ___, ...kept} = two
    const three: Files = {...kept, '/e.txt': 'three', '/b': 'three', '/c/c.txt': 'three'}
    const third = await next(second, three)
    expect(readdirSync(join(site, '../.site')).sort()).toEqual([second, third].map(nameOf).sort())
    expect(filesOf(second.folder)).toEqual(before)
    expect(filesOf(third.folder)).toEqual(written(three))
    expect(readdirSync(third.folder).sort()).toEqual(['b', 'c', 'd.txt', 'e.txt', 'f'])
  })

  test('is made into one next version alone, and the next of the same begins with nothing', async () => {
    const first = await next(nothing, one)
    const second = await next(first, {...one, '/d.txt': 'two'})
    await keepSpare(site, first.folder)
    const [third, beside] = [await next(second, one), await next(second, one)]
    for (const {folder} of [third, beside]) expect(filesOf(folder)).toEqual(written(one))
    await keepSpare(site, third.folder)
    await keepSpare(site, second.folder)
    expect(readdirSync(join(site, '../.site')).sort()).toEqual(
      [nameOf(beside), `${nameOf(second)}.spare`].sort(),
    )
  })

  test('is not kept where most is other than it was', async () => {
    const first = await next(nothing, one)
    const second = await next(first, Object.fromEntries(Object.keys(one).map((name) => [name, 'two'])))
    expect(second.spare).toBeUndefined()
  })
})

describe('a version that is being written', () => {
  const site = join(home, '_site')
  test('and is taken away meanwhile is not shown in part', async () => {
    const version = await newVersion(site)
    await beginVersion(version)
    rmSync(version, {recursive: true})
    mkdirSync(version)
    writeFileSync(join(version, 'index.html'), 'a part')
    await expect(finishVersion(version)).rejects.toThrow('taken away')
    await clearVersions(site)
    expect(readdirSync(join(home, '.site'))).toEqual([])
  })
  test('is whole when it is finished', async () => {
    const version = await newVersion(site)
    await beginVersion(version)
    writeFileSync(join(version, 'index.html'), 'all')
    await finishVersion(version)
    expect(readdirSync(version)).toEqual(['index.html'])
  })
})

test('what is kept is not taken where it was cut, changed, emptied or stands under another name', async () => {
  const folder = join(home, 'kept')
  const isRight = (value: unknown): value is {of: string} => typeof value === 'object' && value !== null
  const ask = async (key: string) => {
    const cache = openCache(folder, 'v')
    const value = await cache.value(key, async () => ({of: key}), isRight)
    const bytes = await cache.bytes(key, async () => Buffer.from(`bytes of ${key}`))
    return [value.of, String(bytes)]
  }
  await ask('ab')
  const path = (name: string) => join(folder, 'v', name)
  for (const ending of ['json', 'bytes']) {
    const whole = readFileSync(path(`ab.${ending}`), 'latin1')
    const harmed = [
      '',
      '\0',
      '{"of":"ab"}',
      whole.slice(0, -1),
      `${whole} `,
      whole.replace(/a(?=b\W*$)/, 'c'),
    ]
    for (const content of harmed) {
      expect(content).not.toBe(whole)
      writeFileSync(path(`ab.${ending}`), content, 'latin1')
      expect(await ask('ab')).toEqual(['ab', 'bytes of ab'])
    }
    writeFileSync(path(`cd.${ending}`), whole, 'latin1')
  }
  expect(await ask('cd')).toEqual(['cd', 'bytes of cd'])
})

test('a file counts as another when its time and size are those of the one before', async () => {
  const path = join(home, 'song.mp3')
  writeFileSync(path, 'one')
  utimesSync(path, 1, 1)
  const before = await statPlainFile(path, 10)
  await new Promise((resolve) => setTimeout(resolve, 20))
  writeFileSync(path, 'two')
  utimesSync(path, 1, 1)
  expect(await statPlainFile(path, 10)).not.toEqual(before)
})

test('a journal that cannot be begun anew leaves all where it was', async () => {
  const root = join(home, 'loft')
  mkdirSync(join(root, 'builds'), {recursive: true})
  writeFileSync(join(root, 'builds/needle-box.md'), 'x')
  await expect(emptyJournal(root, 'nowhere/builds-before')).rejects.toThrow('ENOENT')
  expect(readdirSync(root)).toEqual(['builds'])
  await emptyJournal(root, 'builds-before')
  expect(readdirSync(root).sort()).toEqual(['builds', 'builds-before'])
  expect(readdirSync(join(root, 'builds-before'))).toEqual(['needle-box.md'])
})
