import {
  existsSync,
  lstatSync,
  mkdirSync,
  readFileSync,
  readlinkSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs'
import {join} from 'node:path'
import {afterAll, describe, expect, test} from 'vitest'
import {outputFolder, pathPrefix} from '../../site/publish/output.ts'
import {filesOf} from '../support/site-files.ts'
import {fourLines, tempJournal} from '../support/temp-journal.ts'
import '../support/slow.ts'

const journal = tempJournal({
  'builds/needle-box.md': fourLines('Needle box'),
  'builds/tea-tin/index.md': fourLines('Tea tin', 'based-on: needle-box\nstarted: 2026-02-01\n'),
  'builds/night-ferry.md': fourLines('Night ferry', 'publish: false\nbased-on: needle-box\n'),
})
const site = join(journal.root, '_site')
afterAll(() => journal.remove())

describe('npm run build', () => {
  test('writes the site as a link to a whole folder', () => {
    expect(journal.run('build')).toMatchObject({status: 0})
    expect(lstatSync(site).isSymbolicLink()).toBe(true)
    expect(Object.keys(filesOf(site))).toEqual(
      expect.arrayContaining([
        '404.html',
        'builds/needle-box/build.md',
        'builds/needle-box/care/index.html',
        'builds/needle-box/index.html',
        'builds/needle-box/plan.json',
        'feed.xml',
        'index.html',
        'rules/index.html',
        'sitemap.xml',
        'woods/index.html',
      ]),
    )
  })

  test('writes a draft nowhere and names it on no page', () => {
    for (const [name, content] of Object.entries(filesOf(site))) {
      expect(name).not.toContain('night-ferry')
      expect(content.toLowerCase()).not.toMatch(/night[- ]ferry/)
    }
  })

  test('writes the plan in the bytes that the plan command prints', () => {
    const printed = journal.run('plan', 'builds/needle-box.md').stdout
    expect(readFileSync(join(site, 'builds/needle-box/plan.json'), 'utf8')).toBe(printed)
  })

  test('writes the front matter as it was written', () => {
    const written = readFileSync(join(site, 'builds/needle-box/build.md'), 'utf8')
    expect(written).toBe(fourLines('Needle box'))
  })

  test('the same files give the same bytes, kept or made anew, anywhere', () => {
    const kept = filesOf(site)
    const other = tempJournal(
      Object.fromEntries(
        ['needle-box.md', 'tea-tin/index.md', 'night-ferry.md'].map((name) => [
          `builds/${name}`,
          readFileSync(join(journal.root, 'builds', name), 'utf8'),
        ]),
      ),
    )
    expect(other.run('build').status).toBe(0)
    expect(filesOf(join(other.root, '_site'))).toEqual(kept)
    expect(journal.run('build').status).toBe(0)
    expect(filesOf(site)).toEqual(kept)
    other.remove()
  })

  test('an error in a published build lists all problems, and the last good site stays', () => {
    const before = filesOf(site)
    const version = readlinkSync(site)
    journal.write('builds/broken.md', '---\ntitle: Broken\nscale: 24 inn\nbox: 10 by 7\n---\n')
    journal.write('builds/tea-tin/index.md', fourLines('Tea tin', 'started: someday\n'))
    const {status, stderr} = journal.run('build')
    expect(status).toBe(1)
    expect(stderr).toMatch(/builds\/broken\.md\n {2}3:8 error/)
    expect(stderr).toMatch(/ {2}4:6 error/)
    expect(stderr).toMatch(/builds\/tea-tin\/index\.md\n {2}6:10 error/)
    expect(stderr).not.toMatch(/\n {4}at /)
    expect(readlinkSync(site)).toBe(version)
    expect(filesOf(site)).toEqual(before)
  })

  test('an error in a draft stops nothing, and is told', () => {
    journal.write('builds/broken.md', '---\ntitle: Broken\npublish: false\nscale: 24 inn\n---\n')
    journal.write('builds/tea-tin/index.md', fourLines('Tea tin'))
    const {status, stderr} = journal.run('build')
    expect(status).toBe(0)
    expect(stderr).toMatch(/builds\/broken\.md\n {2}4:8 error/)
  })
})

describe('--path-prefix and --output', () => {
  test.each([
    ['/', '/'],
    ['x', '/x/'],
    ['/a/b/', '/a/b/'],
    ['//elsewhere.example/', undefined],
    ['../up', undefined],
    ['/a/../b', undefined],
    ['/x?y', undefined],
    ['https://a.example/', undefined],
  ])('%s as a prefix is %s', (asked, prefix) => {
    expect(pathPrefix(asked)).toBe(prefix)
  })

  test('a folder of other things, of this project or around it is left alone', async () => {
    mkdirSync(join(journal.root, 'mine'))
    writeFileSync(join(journal.root, 'mine/notes.txt'), 'keep')
    for (const asked of ['mine', 'mine/notes.txt', '.', '..', 'builds/site', '.git'])
      expect(await outputFolder(journal.root, asked)).toHaveProperty('refused')
    expect(journal.run('build', '--output=mine')).toMatchObject({status: 2})
    expect(readFileSync(join(journal.root, 'mine/notes.txt'), 'utf8')).toBe('keep')
  })

  // A journal that somebody else gave may hold a link to any folder of the reader's.
  test('a link that no build made is refused, as is a way through one into the journal, and a device', async () => {
    mkdirSync(join(journal.root, 'elsewhere'))
    symlinkSync('elsewhere', join(journal.root, 'linked'))
    symlinkSync('builds', join(journal.root, 'round'))
    for (const asked of ['linked', 'round', 'round/site', '/dev/null', '/dev/shm/site', '/proc/self/fd/9'])
      expect(await outputFolder(journal.root, asked)).toHaveProperty('refused')
    expect(await outputFolder(journal.root, 'linked/site')).toEqual({
      site: join(journal.root, 'elsewhere/site'),
    })
    expect(await outputFolder(journal.root, '_site')).toEqual({site})
  })

  test('a site that is a real folder is moved aside once; every link from the root lies under the prefix', () => {
    mkdirSync(join(journal.root, 'real'))
    writeFileSync(join(journal.root, 'real/index.html'), 'an older site')
    expect(journal.run('build', '--path-prefix=/x/', '--output=real').stdout).toMatch(
      /is now at real\.before-/,
    )
    expect(existsSync(join(journal.root, 'real/rules/index.html'))).toBe(true)
    const pages = Object.entries(filesOf(join(journal.root, 'real'))).filter(([name]) =>
      name.endsWith('.html'),
    )
    expect(pages.length).toBeGreaterThan(5)
    for (const [, html] of pages)
      for (const [, address] of html.matchAll(/\s(?:href|src)="(\/[^"]*)"/g))
        expect(address).toMatch(/^\/x\//)
  })
})

test('wrong words bring one screen of help, and exit code 2', () => {
  const {status, stderr} = journal.run('build', '--fast')
  expect(status).toBe(2)
  expect(stderr).toContain('npm run build')
  expect(stderr.split('\n').length).toBeLessThan(24)
  expect(journal.run('start', 'now').status).toBe(2)
})
