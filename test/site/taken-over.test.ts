import {spawnSync} from 'node:child_process'
import {
  appendFileSync,
  existsSync,
  readdirSync,
  readFileSync,
  realpathSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs'
import {join} from 'node:path'
import {afterAll, beforeAll, describe, expect, test} from 'vitest'
import {programVersion} from '../../site/kit/journal-cache.ts'
import {recallStanding} from '../../site/publish/standing.ts'
import {compiled} from '../support/commands.ts'
import {filesOf} from '../support/site-files.ts'
import {fourLines, tempJournal} from '../support/temp-journal.ts'

import '../support/slow.ts'

// What did not change is taken over from the last site, unread: a second name for the same bytes. Whatever was built
// before, the site is the one that would be made of nothing.

const journal = tempJournal({
  'builds/journal.yaml': 'title: The loft\n',
  // Done with, so that no pictures of its steps are drawn.
  'builds/needle-box.md': fourLines('Needle box', 'status: sold\n'),
  'builds/oar-box.md': fourLines('Oar box', 'based-on: needle-box\n'),
})
const site = join(journal.root, '_site')
const page = (slug: string) => join(site, `builds/${slug}/index.html`)
const isNoSpare = (name: string) => !name.endsWith('.spare')
const inode = (file: string) => statSync(file).ino

function build(): Record<string, string> {
  const {status, stderr} = journal.run('build')
  expect(status, stderr).toBe(0)
  return filesOf(site)
}

/** Build with nothing to take over and nothing kept. */
function anew(): Record<string, string> {
  const fresh = tempJournal()
  for (const [name, content] of Object.entries(filesOf(join(journal.root, 'builds'))))
    fresh.write(`builds/${name}`, content)
  expect(fresh.run('build').status).toBe(0)
  const files = filesOf(join(fresh.root, '_site'))
  fresh.remove()
  return files
}

let first: Record<string, string> = {}
beforeAll(() => {
  first = build()
})
afterAll(() => journal.remove())

describe('a build after another', () => {
  test('takes over what did not change, and is the same as one made of nothing', () => {
    const before = [page('needle-box'), join(site, 'woods/index.html')].map(inode)
    expect(build()).toEqual(first)
    expect([page('needle-box'), join(site, 'woods/index.html')].map(inode)).toEqual(before)
    journal.write('builds/oar-box.md', fourLines('Oar box', 'based-on: needle-box\nsummary: Red oak\n'))
    const changed = build()
    expect(inode(page('needle-box'))).toBe(before[0])
    expect(changed).toEqual(anew())
    expect(changed).not.toEqual(first)
  })

  test('makes anew what somebody changed or took away in the last site', () => {
    const last = filesOf(site)
    appendFileSync(page('needle-box'), 'A line of nobody’s.')
    writeFileSync(join(site, 'woods/index.html'), 'x'.repeat(statSync(join(site, 'woods/index.html')).size))
    rmSync(join(site, 'builds/oar-box/plan.json'))
    expect(build()).toEqual(last)
  })

  test('does without a last site, a cache, or a true word of either', async () => {
    const last = filesOf(site)
    const lists = join(journal.root, '.cache/standing')
    const [name] = readdirSync(lists)
    // As this very program, which is not compiled, would have written it.
    const own = `"program":"${await programVersion()}"`
    const right = readFileSync(join(lists, name!), 'utf8').replace(/"program":"[^"]*"/, own)
    writeFileSync(join(lists, name!), right)
    const recalled = async () =>
      Object.keys((await recallStanding(journal.root, site, realpathSync(site))).files)
    expect((await recalled()).length).toBeGreaterThan(10)
    for (const content of ['{', 'null', right.slice(0, -9), right.replace('"/', '"/../../climbed/')]) {
      writeFileSync(join(lists, name!), content)
      expect(await recalled()).toEqual([])
    }
    rmSync(join(journal.root, '.site'), {recursive: true})
    expect(build()).toEqual(last)
    rmSync(join(journal.root, '.cache'), {recursive: true})
    expect(build()).toEqual(last)
    expect(existsSync(join(journal.root, 'climbed'))).toBe(false)
  })

  test('begins with nothing where nothing stands, whatever was noted in such a nothing before', async () => {
    const recalled = () => recallStanding(journal.root, '/nowhere', '/nowhere')
    ;(await recalled()).files['/'] = ['key', 1, 1]
    expect((await recalled()).files).toEqual({})
  })

  test('that the disk refuses leaves the last site and nothing else, and says why', () => {
    const last = filesOf(site)
    journal.write('builds/oar-box.md', fourLines('Oar box', 'based-on: needle-box\nsummary: Pine\n'))
    // No file may grow beyond 50 kB, which a page does.
    const limited = ['-c', 'trap "" XFSZ; ulimit -f 100; exec "$0" "$@"', process.execPath]
    const words = [...limited, ...compiled('build')]
    const {status, stderr} = spawnSync('sh', words, {cwd: journal.root, encoding: 'utf8'})
    expect(status).toBe(1)
    expect(stderr).toMatch(/^Nothing was written: _site is larger than may be written here\. The last good/)
    expect(filesOf(site)).toEqual(last)
    // The site, and the version before it that the next is made of.
    expect(readdirSync(join(journal.root, '.site')).filter(isNoSpare)).toHaveLength(1)
  })
})
