import {execFileSync} from 'node:child_process'
import {mkdirSync, mkdtempSync, realpathSync, rmSync, symlinkSync, truncateSync, writeFileSync} from 'node:fs'
import {tmpdir} from 'node:os'
import {join} from 'node:path'
import {afterAll, beforeAll, describe, expect, test} from 'vitest'
import {listBuilds} from '../../site/journal/list-builds.ts'
import {readJournalFolder} from '../../site/journal/read-journal.ts'
import {readSettings} from '../../site/journal/settings.ts'
import {uncachedSteps} from '../../site/steps/run-steps.ts'
import {fourLines} from '../support/temp-journal.ts'
import '../support/slow.ts'

// What a disk may hold where a text belongs: each is named, nothing waits or follows it out, and the rest is read.

const root = realpathSync(mkdtempSync(join(tmpdir(), 'unread-')))
const builds = join(root, 'builds')
let journal: Awaited<ReturnType<typeof readJournalFolder>>

beforeAll(async () => {
  mkdirSync(builds)
  mkdirSync(join(root, 'secret'))
  writeFileSync(
    join(root, 'secret/rack.yaml'),
    '- {id: secret, length: 10, width: 2, thickness: 1, wood: oak}',
  )
  writeFileSync(join(root, 'secret/diary.md'), fourLines('Diary'))
  const put = (name: string, text: string | Buffer) => writeFileSync(join(builds, name), text)
  put('needle-box.md', fourLines('Needle box'))
  put('latin.md', Buffer.from(fourLines('Caf\u00e9'), 'latin1'))
  put('wide.md', Buffer.from(`\ufeff${fourLines('Wide')}`, 'utf16le'))
  put('huge.md', '')
  truncateSync(join(builds, 'huge.md'), 700e6)
  execFileSync('mkfifo', [join(builds, 'pipe.md'), join(builds, 'journal.yaml')])
  symlinkSync('/dev/zero', join(builds, 'zero.md'))
  symlinkSync('nowhere.md', join(builds, 'dangling.md'))
  symlinkSync('loop.md', join(builds, 'loop.md'))
  symlinkSync('../secret/diary.md', join(builds, 'diary.md'))
  symlinkSync('../secret/rack.yaml', join(builds, 'rack.yaml'))
  mkdirSync(join(builds, 'folder.md'))
  mkdirSync(join(builds, 'deep/index.md'), {recursive: true})
  put('Rack.yml', '- {id: A1, wood: oak}\n')
  put('CAPITALS.MD', fourLines('Capitals'))
  put('\u00fcber.md', fourLines('Over'))
  mkdirSync(join(builds, 'loose'))
  put('loose/box.md', fourLines('Loose'))
  journal = await readJournalFolder(root, uncachedSteps())
})
afterAll(() => rmSync(root, {recursive: true}))

describe('where a build belongs', () => {
  test.each([
    ['builds/pipe.md', /no plain file/],
    ['builds/zero.md', /no plain file/],
    ['builds/dangling.md', /link that leads nowhere/],
    ['builds/loop.md', /link that leads nowhere/],
    ['builds/diary.md', /leads out of the journal/],
    ['builds/folder.md', /a folder/],
    ['builds/deep', /index\.md is no plain file/],
    ['builds/CAPITALS.MD', /ending must be \.md/],
    ['builds/loose', /called index\.md/],
    ['builds/Rack.yml', /its name must be rack\.yaml/],
    ['builds/\u00fcber.md', /such as uber\.md/],
  ])('%s is named', (file, says) => {
    expect(journal.others.find((one) => one.file === file)?.message).toMatch(says)
  })
  test.each([
    ['huge', 'file-unreadable', /larger than 4 MB/],
    ['latin', 'not-text', /UTF-8/],
    ['wide', 'not-text', /UTF-8/],
  ])('%s is an error of the file', (slug, rule, says) => {
    const problems = journal.builds.find((one) => one.slug === slug)!.problems
    expect(problems).toMatchObject([{rule, severity: 'error', message: expect.stringMatching(says)}])
  })
  test('the sound one is read', () => {
    expect(journal.builds.find(({slug}) => slug === 'needle-box')!.plan.scale).toBeDefined()
  })
})

describe('where settings and rack belong', () => {
  test('those beside the folder of builds are named', async () => {
    const home = mkdtempSync(join(tmpdir(), 'beside-'))
    mkdirSync(join(home, 'builds'))
    writeFileSync(join(home, 'journal.yaml'), 'title: Shed book\n')
    expect((await listBuilds(home)).others).toMatchObject([
      {file: 'journal.yaml', message: expect.stringMatching(/into builds/)},
    ])
    writeFileSync(join(home, 'builds/journal.yaml'), 'title: Shed book\n')
    expect((await listBuilds(home)).others).toEqual([])
    rmSync(home, {recursive: true})
  })
  test('a pipe and a link that leads out are named, and nothing of them is read', () => {
    expect(journal.rack).toEqual([])
    expect(journal.problems.map(({file, problems}) => [file, problems.map(({message}) => message)])).toEqual([
      ['builds/journal.yaml', [expect.stringContaining('no plain file')]],
      ['builds/rack.yaml', [expect.stringContaining('leads out')]],
    ])
  })
  test.each([
    'javascript:taken()',
    'ftp://elsewhere.example',
    'journal',
    'https://a "b"',
    'data:text/html,x',
  ])('%s as the address of the site is not used, and named', async (site) => {
    const folder = mkdtempSync(join(tmpdir(), 'site-'))
    writeFileSync(join(folder, 'journal.yaml'), `title: The loft\nsite: '${site}'\n`)
    const {settings, problems} = await readSettings(folder)
    expect(settings).not.toHaveProperty('site')
    expect(settings.title?.value).toBe('The loft')
    expect(problems).toMatchObject([{problems: [{rule: 'site-address', line: 2, column: 7}]}])
    rmSync(folder, {recursive: true})
  })
})

test('without a folder of builds there is no journal', async () => {
  await expect(readJournalFolder(join(root, 'secret'), uncachedSteps())).rejects.toThrow('no folder builds/')
})
