import {createHash, randomBytes} from 'node:crypto'
import {mkdir, readdir, readFile, rename, rm, writeFile} from 'node:fs/promises'
import {join, parse} from 'node:path'

/** What was made before, by the key of all that it was made from. */
export interface Cache {
  /** Take a value that JSON can hold, or make it and keep it; one that is no T is as if it were not there. */
  value: <T>(key: string, make: () => Promise<T>, isRight: (value: unknown) => value is T) => Promise<T>
  /** Take bytes, or make and keep them, on disk alone. */
  bytes: (key: string, make: () => Promise<Uint8Array>) => Promise<Uint8Array>
  /**
   * Let go of the values that nobody asked for since the last call; on disk, where they are more than twice as many
   * as those that somebody did ask for.
   */
  tidy: () => Promise<void>
}

/**
 * Open a cache in memory and in `folder` (absolute), under the `version` of the program that makes what it keeps, so
 * that another version finds nothing. A file that cannot be read or written is as if it were not there.
 */
export function openCache(folder: string, version: string): Cache {
  const home = join(folder, version)
  const values = new Map<string, unknown>()
  // What is being made, so that two who ask for one thing at once share it.
  const making = new Map<string, Promise<unknown>>()
  const asked = new Set<string>()
  // Bytes are asked for once and then stand in the site: they stay as long as this process does.
  const askedBytes = new Set<string>()
  const once = async <T>(name: string, make: (name: string) => Promise<T>): Promise<T> => {
    if (!/^[0-9a-f]+\.(json|bytes)$/.test(name)) throw new Error(`${name} is no key of the cache`)
    const begun =
      (making.get(name) as Promise<T> | undefined) ?? make(name).finally(() => making.delete(name))
    making.set(name, begun)
    return begun
  }
  const keep = (name: string, content: string | Uint8Array) => writeWhole(home, name, content).catch(() => {})
  return {
    async value<T>(key: string, make: () => Promise<T>, isRight: (value: unknown) => value is T) {
      asked.add(key)
      if (values.has(key)) return values.get(key) as T
      return once(`${key}.json`, async (name) => {
        const there = await readJson(join(home, name))
        const value = isRight(there) ? there : await make()
        values.set(key, value)
        if (value !== there) await keep(name, JSON.stringify(value))
        return value
      })
    },
    async bytes(key, make) {
      askedBytes.add(key)
      return once(`${key}.bytes`, async (name) => {
        const there = await readFile(join(home, name)).catch(() => undefined)
        if (there?.length) return there
        const bytes = await make()
        await keep(name, bytes)
        return bytes
      })
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

async function readJson(file: string): Promise<unknown> {
  try {
    return JSON.parse(await readFile(file, 'utf8'))
  } catch {
    return undefined
  }
}

async function writeWhole(folder: string, name: string, content: string | Uint8Array): Promise<void> {
  await mkdir(folder, {recursive: true})
  const beside = join(folder, `${name}.${randomBytes(6).toString('hex')}`)
  try {
    await writeFile(beside, content)
    await rename(beside, join(folder, name))
  } catch (error) {
    await rm(beside, {force: true})
    throw error
  }
}

/** Make a key of texts or bytes: the same key, the same texts. */
export function keyOf(...texts: readonly (string | Uint8Array)[]): string {
  const hash = createHash('sha256')
  for (const text of texts) hash.update(text).update('\0')
  return hash.digest('hex').slice(0, 24)
}
