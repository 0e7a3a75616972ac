import {
  appendFileSync,
  mkdirSync,
  mkdtempSync,
  realpathSync,
  renameSync,
  rmSync,
  writeFileSync,
} from 'node:fs'
import {tmpdir} from 'node:os'
import {join} from 'node:path'
import {setTimeout as pause} from 'node:timers/promises'
import {afterAll, beforeAll, expect, test} from 'vitest'
import {watchFolder} from '../../site/serve/watch-folder.ts'

import '../support/slow.ts'

const folder = realpathSync(mkdtempSync(join(tmpdir(), 'watched-')))
const at = (path: string) => join(folder, path)
let told: string[] = []
let watch: Awaited<ReturnType<typeof watchFolder>>

beforeAll(async () => {
  mkdirSync(at('pin-box'))
  for (const path of ['needle-box.md', 'pin-box/index.md', '.hidden']) writeFileSync(at(path), 'A line.\n')
  watch = await watchFolder(folder, (paths) => void told.push(...paths))
})
afterAll(() => {
  watch.end()
  rmSync(folder, {recursive: true})
})

/** What is told of something that is done, once all of `paths` are. */
async function toldOf(act: () => void, ...paths: string[]): Promise<string[]> {
  told = []
  act()
  while (!paths.every((path) => told.includes(path))) await pause(10)
  return [...new Set(told)].sort()
}

test('a save is told by the path of its file', async () => {
  expect(await toldOf(() => appendFileSync(at('needle-box.md'), 'More.\n'), 'needle-box.md')).toEqual([
    'needle-box.md',
  ])
})
test.each(['index.md~', '.index.md.1', '../index.md~'])(
  'a save by way of %s is told, and the next',
  async (other) => {
    for (const line of ['Another line.\n', 'And another line.\n']) {
      const save = () => {
        writeFileSync(at(`pin-box/${other}`), line)
        renameSync(at(`pin-box/${other}`), at('pin-box/index.md'))
      }
      expect(await toldOf(save, 'pin-box/index.md')).toContain('pin-box/index.md')
    }
  },
)
test('what is hidden, and what came and went, is not told', async () => {
  const save = () => {
    writeFileSync(at('.needle-box.md.swp'), 'Something.')
    appendFileSync(at('.hidden'), 'More.\n')
    writeFileSync(at('4913'), '')
    rmSync(at('4913'))
    appendFileSync(at('needle-box.md'), 'More.\n')
  }
  expect(await toldOf(save, 'needle-box.md')).toEqual(['needle-box.md'])
})
test('new files and folders are told, and those that are gone', async () => {
  const make = () => {
    mkdirSync(at('rope-box'))
    writeFileSync(at('rope-box/index.md'), 'A line.\n')
  }
  expect(await toldOf(make, 'rope-box/index.md')).toEqual(['rope-box', 'rope-box/index.md'])
  expect(await toldOf(() => rmSync(at('rope-box'), {recursive: true}), 'rope-box/index.md')).toEqual([
    'rope-box',
    'rope-box/index.md',
  ])
})
test('what lies there can be named once all of it was looked at since the last save', async () => {
  await toldOf(() => appendFileSync(at('needle-box.md'), 'More.\n'), 'needle-box.md')
  expect(watch.seen()).toBeUndefined()
  while (!watch.seen()) await pause(50)
  expect(watch.seen()?.builds.lines.has('needle-box.md')).toBe(true)
})
