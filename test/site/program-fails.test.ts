import {readFileSync} from 'node:fs'
import {join} from 'node:path'
import {afterAll, beforeAll, describe, expect, test, vi} from 'vitest'
import {filesOf} from '../support/site-files.ts'
import {fourLines, tempJournal} from '../support/temp-journal.ts'
import '../support/slow.ts'

// A fault of this program on one build: its page says so and keeps its prose, the command line names its file and
// leaves with 1, and every other page is as it would be. Each part that may fail is made to, by a word of the file.

const prose = 'Planed by lamplight.\n'
const journal = tempJournal({
  'builds/sound.md': fourLines('Sound') + prose,
  'builds/prose-fails.md': `${fourLines('Prose fails', 'price: 40\n')}${prose}Here the prose fails.\n`,
  'builds/yaml-fails.md': fourLines('Yaml fails') + prose,
  'builds/yaml-fails-draft.md': fourLines('Yaml fails, a draft', 'publish: false\n') + prose,
  'builds/files-fail.md': `${fourLines('Files fail')}${prose}![a](fails.jpg)\n`,
  'builds/plan-fails.md': fourLines('Plan fails') + prose,
  'builds/check-fails.md': fourLines('Check fails') + prose,
  'builds/page-fails.md': fourLines('Page fails', 'based-on: sound\n') + prose,
  'builds/file-fails.md': fourLines('File fails') + prose,
})
const failing = ['prose', 'yaml', 'plan', 'check', 'page', 'file'].map((what) => `${what}-fails`)
const alone = tempJournal({'builds/sound.md': fourLines('Sound') + prose})

/** Make a part of the program fail where a text that it is given has a word. */
function failsOn<A extends unknown[], R>(part: (...input: A) => R, word: string): (...input: A) => R {
  return (...input) => {
    if (JSON.stringify(input).includes(word)) throw new Error('broken on purpose')
    return part(...input)
  }
}

let told = ''
let code: typeof process.exitCode
let site: Record<string, string> = {}
const page = (slug: string) => readFileSync(join(journal.root, `_site/builds/${slug}/index.html`), 'utf8')
const mocked = [
  '../../plugins/syntax/body.ts',
  '../../plugins/build-file/yaml/yaml-tree.ts',
  '../../plugins/plan/action/bridge.ts',
  '../../plugins/checks/checks.ts',
  '../../plugins/plan/changes.ts',
  '../../plugins/drawings/templates/sheets.ts',
  '../../site/journal/surroundings.ts',
]

beforeAll(async () => {
  vi.resetModules()
  vi.doMock(import('../../plugins/syntax/body.ts'), async (original) => {
    const real = await original()
    return {...real, readBody: failsOn(real.readBody, 'Here the prose fails')}
  })
  vi.doMock(import('../../plugins/build-file/yaml/yaml-tree.ts'), async (original) => {
    const real = await original()
    return {...real, yamlTree: failsOn(real.yamlTree, 'Yaml fails')}
  })
  vi.doMock(import('../../site/journal/surroundings.ts'), async (original) => {
    const real = await original()
    return {...real, relevant: failsOn(real.relevant, 'Files fail')}
  })
  vi.doMock(import('../../plugins/plan/action/bridge.ts'), async (original) => {
    const real = await original()
    return {...real, planBridge: failsOn(real.planBridge, 'Plan fails')}
  })
  vi.doMock(import('../../plugins/checks/checks.ts'), async (original) => {
    const real = await original()
    return {...real, checks: failsOn(real.checks, 'Check fails')}
  })
  vi.doMock(import('../../plugins/plan/changes.ts'), async (original) => {
    const real = await original()
    return {...real, changesFrom: failsOn(real.changesFrom, 'Page fails')}
  })
  vi.doMock(import('../../plugins/drawings/templates/sheets.ts'), async (original) => {
    const real = await original()
    return {...real, templateDxf: failsOn(real.templateDxf, 'File fails')}
  })
  const lines: unknown[] = []
  vi.spyOn(console, 'error').mockImplementation((line) => void lines.push(line))
  vi.spyOn(console, 'log').mockImplementation((line) => void lines.push(line))
  vi.spyOn(process, 'cwd').mockReturnValue(journal.root)
  const {argv, exitCode} = process
  process.argv = argv.slice(0, 2)
  try {
    await import('../../site/commands/build.ts')
    code = process.exitCode
  } finally {
    process.argv = argv
    process.exitCode = exitCode
    vi.restoreAllMocks()
    for (const file of mocked) vi.doUnmock(file)
    vi.resetModules()
  }
  told = lines.join('\n')
  site = filesOf(join(journal.root, '_site'))
})
afterAll(() => {
  journal.remove()
  alone.remove()
})

describe('the command line', () => {
  test('leaves with 1', () => expect([code, told]).toEqual([1, told]))
  test.each([
    ['prose-fails', /fails to read the file/],
    ['yaml-fails', /fails to read the file/],
    ['yaml-fails-draft', /fails to read the file/],
    ['files-fail', /fails to look at the files of the file/],
    ['plan-fails', /fails to plan the file/],
    ['check-fails', /fails to check the file/],
    ['page-fails', /fails to show the file/],
    ['file-fails', /fails to write template\.dxf from the file/],
  ])('names %s', (slug, says) => {
    const [, lines = ''] = told.split(`builds/${slug}.md\n`)
    expect(lines.split('\n\n')[0]).toMatch(says)
    expect(lines.split('\n\n')[0]).toMatch(/^ {2}1:1 fault .*broken on purpose program-fails$/m)
  })
})

describe('its page', () => {
  test.each(failing)('%s says so and keeps its prose', (slug) => {
    expect(page(slug)).toMatch(/this program fails to/i)
    expect(page(slug)).toContain('Planed by lamplight.')
  })
  test('keeps the dimensions that can be read', () => expect(page('prose-fails')).toContain('24 1/4'))
  test('keeps what is computed where a check fails', () => {
    expect(page('check-fails')).toContain('id="cut-list"')
  })
  test('leads to all other files where one cannot be written', () => {
    expect(page('file-fails')).toContain('This program fails to write template.dxf')
    expect(page('file-fails')).toContain('/builds/file-fails/template.svg')
    expect(site).not.toHaveProperty(['builds/file-fails/template.dxf'])
  })
  test('is not published where it may be a draft', () => {
    expect(Object.keys(site).filter((name) => name.includes('draft'))).toEqual([])
    expect(Object.values(site).join('')).not.toMatch(/yaml-fails-draft/)
  })
})

test('the other builds are as they would be alone', () => {
  alone.run('build')
  const before = filesOf(join(alone.root, '_site'))
  const own = Object.keys(before).filter(
    (name) => name.startsWith('builds/sound/') && !/index|care|bench/.test(name),
  )
  expect(own.length).toBeGreaterThan(4)
  for (const name of own) expect(site[name]).toBe(before[name])
  expect(page('sound')).not.toMatch(/program fails/i)
  for (const name of ['index.html', 'side-by-side/index.html', 'feed.xml', 'sitemap.xml', 'search.json'])
    if (name in before) expect(site).toHaveProperty([name])
})
