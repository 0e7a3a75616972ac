import {spawn as startProcess} from 'node:child_process'
import {once} from 'node:events'
import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readlinkSync,
  realpathSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs'
import {tmpdir} from 'node:os'
import {join} from 'node:path'
import {afterEach, beforeEach, describe, expect, test} from 'vitest'
import {clearVersions, newVersion, swapSite, writerOf} from '../../site/publish/versions.ts'
import {filesOf} from '../support/site-files.ts'
import {fourLines, tempJournal} from '../support/temp-journal.ts'
import '../support/slow.ts'

describe('swapping versions of a site', () => {
  let home = ''
  let site = ''
  beforeEach(() => {
    home = realpathSync(mkdtempSync(join(tmpdir(), 'swap-')))
    site = join(home, '_site')
  })
  afterEach(() => rmSync(home, {recursive: true}))

  async function publish(text: string): Promise<string> {
    const version = await newVersion(site)
    writeFileSync(join(version, 'index.html'), text)
    await swapSite(site, version)
    return version
  }

  test('shows the new version and keeps nothing of the old one', async () => {
    await publish('one')
    const second = await publish('two')
    await clearVersions(site)
    expect(filesOf(site)).toEqual({'index.html': 'two'})
    expect(readdirSync(join(home, '.site'))).toEqual([second.split('/').at(-1)])
    expect(readdirSync(home).sort()).toEqual(['.site', '_site'])
  })

  test('leaves the versions of other sites, of running builds, and what is no version', async () => {
    const running = `_site-${process.ppid}-0123abcd`
    for (const name of [running, '_site-999999999-0123abcd', `other-${process.pid}-0123abcd`, 'mine'])
      mkdirSync(join(home, '.site', name), {recursive: true})
    await publish('one')
    await clearVersions(site)
    const shown = readlinkSync(site).split('/').at(-1)
    expect(readdirSync(join(home, '.site')).sort()).toEqual(
      [shown, running, `other-${process.pid}-0123abcd`, 'mine'].sort(),
    )
  })

  test('keeps the version that another build shows while this one clears', async () => {
    for (let at = 0; at < 300; at++)
      mkdirSync(join(home, '.site', `_site-999999999-${String(at).padStart(8, '0')}`), {recursive: true})
    await publish('one')
    // The other build shows its version and ends while this one is at work on what is left of killed ones.
    const other = startProcess(process.execPath, ['-e', 'setInterval(() => {}, 1000)'])
    const newer = join(home, '.site', `_site-${other.pid}-0123abcd`)
    mkdirSync(newer)
    writeFileSync(join(newer, 'index.html'), 'two')
    const clearing = clearVersions(site)
    await swapSite(site, newer)
    const ended = once(other, 'exit')
    other.kill('SIGKILL')
    await ended
    await clearing
    expect(filesOf(site)).toEqual({'index.html': 'two'})
    await clearVersions(site)
    expect(filesOf(site)).toEqual({'index.html': 'two'})
  })

  test('clears the link that a killed swap left', async () => {
    await publish('one')
    symlinkSync('.site/_site-999999999-0123abcd', `${site}.0123abcd`)
    await clearVersions(site)
    expect(readdirSync(home).sort()).toEqual(['.site', '_site'])
  })

  test('a version tells which process writes it', () => {
    expect(writerOf('_site-123-0123abcd', site)).toBe(123)
    expect(writerOf('start-123-0123abcd', site)).toBeUndefined()
    expect(writerOf('_site-x-0123abcd', site)).toBeUndefined()
  })
})

const isNoSpare = (name: string) => !name.endsWith('.spare')

/** Done with, so that no pictures of its steps are drawn. */
const box = (title: string) => fourLines(title, 'status: sold\n')

describe('a build that is killed', () => {
  const journal = tempJournal(
    Object.fromEntries(Array.from({length: 2}, (_, at) => [`builds/box-${at}.md`, box(`Box ${at}`)])),
  )
  const site = join(journal.root, '_site')
  afterEach(() => journal.remove())

  // Moments spread over a whole build; each kill is followed by a look at what a reader of the site meets.
  test('leaves a whole site, whenever it is killed', async () => {
    expect(journal.run('build').status).toBe(0)
    const whole = new Set([JSON.stringify(filesOf(site))])
    const started = Date.now()
    journal.write('builds/box-1.md', box('Box 1, changed'))
    expect(journal.run('build').status).toBe(0)
    const tookMs = Date.now() - started
    whole.add(JSON.stringify(filesOf(site)))
    for (const part of [0.5, 0.75, 0.85, 0.95]) {
      journal.write('builds/box-1.md', box(part > 0.6 ? 'Box 1' : 'Box 1, changed'))
      const child = journal.start('build')
      const ended = once(child, 'exit')
      setTimeout(() => child.kill('SIGKILL'), tookMs * part)
      await ended
      expect(whole.has(JSON.stringify(filesOf(site)))).toBe(true)
    }
    journal.write('builds/box-1.md', box('Box 1'))
    expect(journal.run('build').status).toBe(0)
    // The site, and the version before it that the next is made of.
    expect(readdirSync(join(journal.root, '.site')).filter(isNoSpare)).toHaveLength(1)
    expect(existsSync(join(site, 'index.html'))).toBe(true)
  })
})

test('two builds at once leave one whole site', async () => {
  const journal = tempJournal({'builds/needle-box.md': box('Needle box')})
  const both = [journal.start('build'), journal.start('build')]
  const codes = await Promise.all(
    both.map(async (child: ReturnType<typeof startProcess>) => (await once(child, 'exit'))[0] as number),
  )
  expect(codes).toEqual([0, 0])
  expect(filesOf(join(journal.root, '_site'))['builds/needle-box/index.html']).toContain('Needle box')
  journal.remove()
})
