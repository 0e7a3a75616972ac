import {realpathSync, rmSync} from 'node:fs'
import {join} from 'node:path'
import sharp from 'sharp'
import {afterAll, beforeAll, expect, test} from 'vitest'
import {newVersion} from '../../site/publish/versions.ts'
import {WritingSession} from '../../site/serve/writing-session.ts'
import {changedSince, linesOf} from '../support/changed-files.ts'
import {filesOf} from '../support/site-files.ts'
import {fourLines, tempJournal} from '../support/temp-journal.ts'

import '../support/slow.ts'

// A save is followed where it can be told what it touches; what stands must be what a look at all would give.

const picture = (background: string) =>
  sharp({create: {width: 40, height: 30, channels: 3, background}})
    .png()
    .toBuffer()
const [red, blue] = await Promise.all([picture('red'), picture('blue')])
const stock = (id: string) => `stock:\n  - {id: ${id}, wood: red oak, length: 40, width: 3, thickness: 1}\n`
const journal = tempJournal({
  'builds/rack.yaml':
    '- {id: A1, wood: white ash, length: 40, width: 3 1/2, thickness: 1}\n- {id: B1, wood: sugar maple, length: 44, width: 4, thickness: 1 1/4}\n',
  'builds/needle-box.md': fourLines('Needle box', `started: 2026-01-03\n${stock('C1')}`),
  'builds/oar-box.md': fourLines('Oar box', 'based-on: needle-box\nstarted: 2026-02-03\ntake: [A1]\n'),
  'builds/pin-box/index.md': `${fourLines('Pin box')}\n![From the front](front.png)\n`,
  'builds/pin-box/front.png': red,
  'builds/reed-box.md': fourLines('Reed box', 'based-on: pin-box\n'),
  'builds/tea-tin.md': fourLines('Tea tin', 'started: 2026-03-03\ntake: [B1]\n'),
})
const builds = join(journal.root, 'builds')
const emptyFolder = async () => realpathSync(await newVersion(join(journal.root, 'start')))
let session: WritingSession
let folder: string
let lines: ReadonlyMap<string, string>

beforeAll(async () => {
  folder = await emptyFolder()
  session = new WritingSession(journal.root, {folder, files: {}})
  lines = await linesOf(builds)
  await session.refresh()
})
afterAll(() => journal.remove())

/** Have the session hear of what is other than it was, as whoever watches the folder tells it. */
async function heard(): Promise<string[]> {
  const paths = await changedSince(lines, builds)
  lines = await linesOf(builds)
  const changed: string[] = []
  await session.refresh((addresses) => void changed.push(...addresses), paths)
  return [...new Set(changed)].sort()
}

async function anew(): Promise<Record<string, string>> {
  const own = await emptyFolder()
  await new WritingSession(journal.root, {folder: own, files: {}}).refresh()
  return filesOf(own)
}

const write = journal.write
const saves: [string, () => void][] = [
  [
    'a word',
    () =>
      write('builds/tea-tin.md', `${fourLines('Tea tin', 'started: 2026-03-03\ntake: [B1]\n')}\nPlaned.\n`),
  ],
  [
    'another title of an original',
    () => write('builds/needle-box.md', fourLines('Pine box', `started: 2026-01-03\n${stock('C1')}`)),
  ],
  [
    'another length of an original',
    () =>
      write(
        'builds/needle-box.md',
        fourLines('Pine box', `started: 2026-01-03\n${stock('C1')}`).replace('24 1/4', '23'),
      ),
  ],
  [
    'an original without wood of its own',
    () =>
      write(
        'builds/pin-box/index.md',
        `${fourLines('Pin box').replace('24 1/4', '23')}\n![From the front](front.png)\n`,
      ),
  ],
  [
    'what another left over, taken',
    () => write('builds/tea-tin.md', fourLines('Tea tin', 'started: 2026-03-03\ntake: [needle-box.C1-a]\n')),
  ],
  [
    'less left over for another',
    () =>
      write(
        'builds/needle-box.md',
        fourLines('Pine box', `started: 2026-01-03\n${stock('C1')}`).replace('length: 40', 'length: 36'),
      ),
  ],
  [
    'a piece asked for that another used before',
    () =>
      write('builds/tea-tin.md', fourLines('Tea tin', 'started: 2026-03-03\ntake: [needle-box.C1-a, A1]\n')),
  ],
  [
    'wood of the rack taken before another',
    () => write('builds/needle-box.md', fourLines('Pine box', 'started: 2026-01-03\ntake: [A1]\n')),
  ],
  ['wood put back', () => write('builds/needle-box.md', fourLines('Pine box', 'started: 2026-01-03\n'))],
  [
    'wood of its own',
    () => write('builds/tea-tin.md', fourLines('Tea tin', `started: 2026-03-03\n${stock('D1')}`)),
  ],
  [
    'another day of beginning',
    () =>
      write(
        'builds/oar-box.md',
        fourLines('Oar box', 'based-on: needle-box\nstarted: 2026-01-01\ntake: [A1]\n'),
      ),
  ],
  [
    'another original',
    () =>
      write(
        'builds/oar-box.md',
        fourLines('Oar box', 'based-on: tea-tin\nstarted: 2026-01-01\ntake: [A1]\n'),
      ),
  ],
  ['one that names itself', () => write('builds/tea-tin.md', fourLines('Tea tin', 'based-on: tea-tin\n'))],
  ['a draft', () => write('builds/tea-tin.md', fourLines('Tea tin', 'publish: false\n'))],
  ['another picture', () => write('builds/pin-box/front.png', blue)],
  [
    'a picture that is named before it is there',
    () => write('builds/pin-box/index.md', `${fourLines('Pin box')}\n![From behind](back.png)\n`),
  ],
  ['that picture', () => write('builds/pin-box/back.png', red)],
  [
    'a mistake',
    () => write('builds/oar-box.md', fourLines('Oar box', 'based-on: tea-tin\n').replace('24 1/4', 'long')),
  ],
  ['its mending', () => write('builds/oar-box.md', fourLines('Oar box', 'based-on: needle-box\n'))],
  ['a new build', () => write('builds/rope-box.md', fourLines('Rope box', 'based-on: oar-box\n'))],
  [
    'two at once',
    () => {
      write('builds/oar-box.md', fourLines('Oar and rowlock', 'based-on: needle-box\n'))
      write('builds/needle-box.md', fourLines('Needle box', 'tags: [oak]\n'))
    },
  ],
  ['a build that is gone', () => rmSync(join(journal.root, 'builds/needle-box.md'))],
  [
    'the rack',
    () => write('builds/rack.yaml', '- {id: B1, wood: black cherry, length: 30, width: 4, thickness: 1}\n'),
  ],
]

test.each(saves)('%s: what stands is what a look at all gives', async (_, save) => {
  save()
  await heard()
  expect(filesOf(folder)).toEqual(await anew())
})

test('a word is followed to the page that it stands on and to the search', async () => {
  const text = fourLines('Tea tin', 'publish: false\n')
  write('builds/tea-tin.md', `${text}\nPlaned by lamplight.\n`)
  await heard()
  write('builds/tea-tin.md', `${text}\nPlaned by moonlight.\n`)
  const own = ['', 'build.md', 'care/', 'plan.json'].map((name) => `/builds/tea-tin/${name}`)
  expect(await heard()).toEqual([...own, '/search.json'])
})

test('after many saves all is read again, once the last of them is shown', async () => {
  const told: string[] = []
  const own = await emptyFolder()
  const writing = new WritingSession(
    journal.root,
    {folder: own, files: {}},
    {told: (what, done) => done === 1 && told.push(what)},
  )
  write('builds/tea-tin.md', fourLines('Tea tin'))
  await writing.refresh()
  told.length = 0
  for (let at = 0; told.length === 0; at++) {
    write('builds/tea-tin.md', `${fourLines('Tea tin')}\nShaving ${at}.\n`)
    await writing.refresh((changed) => changed.length > 0 && told.push('shown'), ['tea-tin.md'])
    if (at < 50) expect(told.splice(0)).not.toContain('Reading')
  }
  expect(told).toContain('shown')
  expect(told.indexOf('Reading')).toBeGreaterThan(told.lastIndexOf('shown'))
})
