import {
  copyFileSync,
  linkSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  realpathSync,
  renameSync,
  rmSync,
  statSync,
  symlinkSync,
  unlinkSync,
  utimesSync,
  writeFileSync,
} from 'node:fs'
import {tmpdir} from 'node:os'
import {join} from 'node:path'
import {setTimeout as pause} from 'node:timers/promises'
import sharp from 'sharp'
import {afterAll, beforeAll, beforeEach, describe, expect, test} from 'vitest'
import type {Build} from '../../plugins/build-file/schema/build.ts'
import {lookAtFiles} from '../../site/journal/look-at-files.ts'
import {type Cache, keyOf, openCache} from '../../site/kit/cache.ts'
import {cachedSteps} from '../../site/steps/cached-steps.ts'
import {uncachedSteps} from '../../site/steps/run-steps.ts'
import {fourLines} from '../support/temp-journal.ts'

import '../support/slow.ts'

// A picture that was looked at is read again when it may be another, and only then: a journal has gigabytes of them.

const home = realpathSync(mkdtempSync(join(tmpdir(), 'looked-at-')))
afterAll(() => rmSync(home, {recursive: true}))

/** Each test has a place of its own, with a build's folder and what is kept of it. */
const places = Array.from({length: 7}, (_, at) => join(home, String(at)))
let place = ''
const folder = () => join(place, 'tea-tin')
const kept = () => join(place, 'kept')
const at = (name: string) => join(folder(), name)

/** A time that any disk can tell, s. */
const longAgo = 1e9

/** Pictures that differ in their colour alone: each is as many bytes. */
const [red, green, blue] = (await Promise.all(
  ['#a00', '#0a0', '#00a'].map((background) =>
    sharp({create: {width: 40, height: 30, channels: 3, background}})
      .png({compressionLevel: 0})
      .toBuffer(),
  ),
)) as [Buffer, Buffer, Buffer]

const names = ['plain', 'set-back', 'moved-over', 'restored', 'touched', 'led-elsewhere', 'half'].map(
  (name) => `${name}.png`,
)
let build: Build
let cache: Cache
let [read, opened] = [0, 0]

beforeAll(async () => {
  expect(new Set([red.length, green.length, blue.length]).size).toBe(1)
  const prose = names.map((name) => `![${name}](${name})`).join('\n\n')
  const text = `${fourLines('Tea tin')}\n${prose}\n`
  build = (await uncachedSteps().read({slug: 'tea-tin', text, journal: {}})).build
  for (const each of places) {
    place = each
    mkdirSync(folder(), {recursive: true})
    for (const name of names.slice(0, 5)) {
      writeFileSync(at(name), red)
      utimesSync(at(name), longAgo, longAgo)
    }
    writeFileSync(at('one'), red)
    writeFileSync(at('two'), green)
    symlinkSync('one', at('led-elsewhere.png'))
    writeFileSync(at('half.png'), red.subarray(0, red.length / 2))
    copyFileSync(at('restored.png'), join(place, 'before.png'))
  }
  await settled()
  place = ''
})

beforeEach(() => {
  place = places[places.indexOf(place) + 1]!
  cache = openCache(kept(), 'v1')
})

/** Wait until no clock can take the last change for the one before it. */
async function settled(): Promise<void> {
  const ms = Math.max(...readdirSync(folder()).map((name) => statSync(at(name)).ctimeMs))
  await pause(Math.max(0, ms + 2100 - Date.now()))
}

/** Look at all of them; `read` counts those that were read whole, `opened` those that were decoded. */
async function look() {
  read = 0
  opened = 0
  const own = uncachedSteps()
  const decoding = {
    ...own,
    look: (input: Parameters<typeof own.look>[0]) => {
      opened++
      return own.look(input)
    },
  }
  const steps = cachedSteps(cache, async () => decoding)
  const counting = {
    ...steps,
    look: (input: Parameters<typeof own.look>[0]) => {
      read++
      return steps.look(input)
    },
  }
  return lookAtFiles(build, folder(), names, counting)
}

/** The same as somebody sees them who keeps nothing. */
const anew = () => lookAtFiles(build, folder(), names, uncachedSteps())

describe('a picture', () => {
  test('that lies there as it did is not read again, also by another process, but by another program', async () => {
    const first = await look()
    expect(first).toEqual(await anew())
    expect(read).toBe(names.length)
    expect(first.troubles).toEqual([{file: 'half.png', is: 'breaks off'}])
    for (const [version, times] of [
      ['v1', 0],
      ['v2', names.length],
      ['v2', 0],
    ] as const) {
      cache = openCache(kept(), version)
      expect(await look()).toEqual(first)
      expect(read).toBe(times)
    }
  })

  test('that may be another is read at once, whatever its size and its time are', async () => {
    await look()
    writeFileSync(at('set-back.png'), green)
    utimesSync(at('set-back.png'), longAgo, longAgo)
    writeFileSync(join(place, 'other.png'), green)
    utimesSync(join(place, 'other.png'), longAgo, longAgo)
    renameSync(join(place, 'other.png'), at('moved-over.png'))
    writeFileSync(at('restored.png'), green)
    copyFileSync(join(place, 'before.png'), at('restored.png'))
    utimesSync(at('restored.png'), longAgo, longAgo)
    utimesSync(at('touched.png'), 1, 1)
    unlinkSync(at('led-elsewhere.png'))
    symlinkSync('two', at('led-elsewhere.png'))
    writeFileSync(at('half.png'), red)
    const now = await look()
    expect(now).toEqual(await anew())
    expect(read).toBe(names.length - 1)
    // Now their times tell nothing of what was done: it was done long enough ago.
    await settled()
    expect(await look()).toEqual(now)
    // The link leads to a file that was not changed.
    expect(read).toBe(names.length - 2)
    await look()
    expect(read).toBe(0)
    const hashes = names.map((name) => now.pictures.get(name)?.hash)
    expect(hashes).toEqual([red, green, green, red, red, green, red].map((bytes) => keyOf(bytes)))
  })

  test('is read for as long as it was changed just now: another change might look the same', async () => {
    await look()
    for (const bytes of [green, blue, red]) {
      writeFileSync(at('plain.png'), bytes)
      expect((await look()).pictures.get('plain.png')?.hash).toBe(keyOf(bytes))
      expect(read).toBe(1)
    }
    await look()
    expect(read).toBe(1)
    await settled()
    for (const times of [1, 0]) {
      await look()
      expect([read, opened]).toEqual([times, 0])
    }
  })

  test('of a day that is still to come is read each time', async () => {
    const later = new Date(Date.now() + 1e6)
    utimesSync(at('plain.png'), later, later)
    for (const times of [names.length, 1, 1]) {
      await look()
      expect(read).toBe(times)
    }
  })

  test('that is gone, or cannot be shown any more, is not taken from what is kept', async () => {
    await look()
    unlinkSync(at('plain.png'))
    unlinkSync(at('touched.png'))
    mkdirSync(at('touched.png'))
    unlinkSync(at('led-elsewhere.png'))
    linkSync(at('two'), join(place, 'outside'))
    symlinkSync('../outside', at('led-elsewhere.png'))
    const now = await look()
    expect(now).toEqual(await anew())
    expect(now.troubles).toEqual([
      {file: 'plain.png', is: 'unreadable'},
      {file: 'touched.png', is: 'no file'},
      {file: 'led-elsewhere.png', is: 'unreadable'},
      {file: 'half.png', is: 'breaks off'},
    ])
  })
})

describe('what is kept of pictures', () => {
  test('does no harm where it was cut, or is another thing', async () => {
    const right = await look()
    const own = join(kept(), 'v1')
    const all = new Map(readdirSync(own).map((name) => [name, readFileSync(join(own, name))]))
    const wrong = ['', '{}', 'null', '[]', '{"hash": "../climbed", "width": 40, "height": 30}']
    for (const content of [...wrong, 'cut'])
      for (const isEach of [false, true]) {
        for (const [name, whole] of all) {
          const isHarmed = isEach || whole.includes('breaks off')
          const harmed = content === 'cut' ? whole.subarray(0, -1) : keyOf(name, content) + content
          writeFileSync(join(own, name), isHarmed ? harmed : whole)
        }
        cache = openCache(kept(), 'v1')
        expect(await look()).toEqual(right)
      }
  })

  test('stays for as long as the picture is looked at, by what is in it too', async () => {
    await look()
    cache = openCache(kept(), 'v1')
    for (let at = 0; at < 99; at++)
      await openCache(kept(), 'v1').value(
        keyOf(String(at)),
        async () => 1,
        (value) => value === 1,
      )
    await look()
    await cache.tidy()
    // As a check-out by version control does: the same bytes, in a file of another day.
    for (const name of names.slice(0, 5)) writeFileSync(at(name), red)
    await look()
    expect([read, opened]).toEqual([5, 0])
    expect(readdirSync(join(kept(), 'v1')).length).toBeLessThan(30)
  })
})
