import {createHash} from 'node:crypto'
import {mkdir, readdir, readFile, rename, rm, writeFile} from 'node:fs/promises'
import {join, parse} from 'node:path'
import {fileURLToPath} from 'node:url'

/** What was made before, by the key of all that it was made from. */
export interface Cache {
  /** Take a value that JSON can hold, or make it and keep it. */
  value: <T>(key: string, make: () => Promise<T>) => Promise<T>
  /** Take bytes, or make and keep them, on disk alone. */
  bytes: (key: string, make: () => Promise<Uint8Array>) => Promise<Uint8Array>
  /**
   * Let go of the values that nobody asked for since the last call; on disk, where they are more than twice as many
   * as those that somebody did ask for.
   */
  tidy: () => Promise<void>
}

/** Open the cache of the journal at `root`; it lies in `.cache/` there, under the version of the program. */
export const cacheOf = async (root: string): Promise<Cache> =>
  openCache(join(root, '.cache/site'), await programVersion())

/**
 * Open a cache in memory and in `folder` (absolute), under the `version` of the program that makes what it keeps, so
 * that another version finds nothing. A file that cannot be read or written is as if it were not there.
 */
export function openCache(folder: string, version: string): Cache {
  const home = join(folder, version)
  const values = new Map<string, unknown>()
  const asked = new Set<string>()
  // Bytes are asked for once and then stand in the site: they stay as long as this process does.
  const askedBytes = new Set<string>()
  const keep = (name: string, content: string | Uint8Array) => writeWhole(home, name, content).catch(() => {})
  return {
    async value<T>(key: string, make: () => Promise<T>) {
      asked.add(key)
      const there = values.has(key) ? (values.get(key) as T) : await readJson<T>(join(home, `${key}.json`))
      const value = there ?? (await make())
      values.set(key, value)
      if (there === undefined) await keep(`${key}.json`, JSON.stringify(value))
      return value
    },
    async bytes(key, make) {
      askedBytes.add(key)
      const there = await readFile(join(home, `${key}.bytes`)).catch(() => undefined)
      const bytes = there ?? (await make())
      if (!there) await keep(`${key}.bytes`, bytes)
      return bytes
    },
    async tidy() {
      const others = (await readdir(folder).catch(() => [])).filter((name) => name !== version)
      const isAsked = (key: string) => asked.has(key) || askedBytes.has(key)
      const old = (await readdir(home).catch(() => [])).filter((name) => !isAsked(parse(name).name))
      const gone = [
        ...others.map((name) => join(folder, name)),
        ...(old.length > 2 * (asked.size + askedBytes.size) ? old.map((name) => join(home, name)) : []),
      ]
      for (const path of gone) await rm(path, {recursive: true, force: true}).catch(() => {})
      for (const key of values.keys()) if (!asked.has(key)) values.delete(key)
      asked.clear()
    },
  }
}

async function readJson<T>(file: string): Promise<T | undefined> {
  try {
    return JSON.parse(await readFile(file, 'utf8')) as T
  } catch {
    return undefined
  }
}

async function writeWhole(folder: string, name: string, content: string | Uint8Array): Promise<void> {
  await mkdir(folder, {recursive: true})
  const beside = join(folder, `${name}.${process.pid}`)
  await writeFile(beside, content)
  await rename(beside, join(folder, name))
}

/** Make a key of texts: the same key, the same texts. */
export function keyOf(...texts: readonly string[]): string {
  const hash = createHash('sha256')
  for (const text of texts) hash.update(text).update('\0')
  return hash.digest('hex').slice(0, 24)
}

const program = fileURLToPath(new URL('..', import.meta.url))

/** Name the program by all that its results come from: its own files and the versions of the libraries. */
async function programVersion(): Promise<string> {
  const inside = await Promise.all(
    ['plugins', 'site'].map(async (room) =>
      (await readdir(join(program, room), {recursive: true})).map((name) => join(room, name)),
    ),
  )
  const files = ['package-lock.json', ...inside.flat().filter((name) => /\.(ts|css)$/.test(name))].sort()
  const texts = await Promise.all(files.map((name) => readFile(join(program, name), 'utf8').catch(() => '')))
  return keyOf(...files, ...texts)
}
