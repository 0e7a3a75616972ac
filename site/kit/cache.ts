import {createHash, randomBytes} from 'node:crypto'
import {existsSync, readFileSync} from 'node:fs'
import {mkdir, readdir, rename, rm, writeFile} from 'node:fs/promises'
import {dirname, join, parse} from 'node:path'
import {breathe} from './breathe.ts'

/** What was made before, by the key of all that it was made from. */
export interface Cache {
  /** Take a value that JSON can hold, or make it and keep it; one that is no T is as if it were not there. */
  value: <T>(key: string, make: () => Promise<T>, isRight: (value: unknown) => value is T) => Promise<T>
  /** The same for a value that one build asks for again and again: the last few are in memory too. */
  large: <T>(key: string, make: () => Promise<T>, isRight: (value: unknown) => value is T) => Promise<T>
  /** Take a value where it is there. */
  kept: <T>(key: string, isRight: (value: unknown) => value is T) => Promise<T | undefined>
  /** Keep a value in the place of what is kept under its key. */
  replace: (key: string, value: unknown) => Promise<void>
  /** Take bytes, or make and keep them, on disk alone. */
  bytes: (key: string, make: () => Promise<Uint8Array>) => Promise<Uint8Array>
  /** Let keys stay on disk: what they stand for has become part of something else that is kept. */
  still: (keys: Iterable<string>) => void
  /**
   * Let go of the values that nobody asked for since the last call; on disk, where they are more than twice as many
   * as those that somebody did ask for.
   */
  tidy: () => Promise<void>
}

/**
 * Open a cache in `folder` (absolute), under the `version` of the program that makes what it keeps, so
 * that another version finds nothing. A file that cannot be read or written is as if it were not there.
 */
export function openCache(folder: string, version: string): Cache {
  const home = join(folder, version)
  const lately = new Map<string, unknown>()
  const asked = new Set<string>()
  const within = new Set<string>()
  // Bytes are asked for once and then stand in the site: they stay as long as this process does.
  const askedBytes = new Set<string>()
  const once = onceAtATime()
  const take: Cache['value'] = (key, make, isRight) => {
    asked.add(key)
    return once(`${key}.json`, async (name) => {
      await breathe()
      const there = asJson(readKept(home, name))
      if (isRight(there)) return there
      const value = await make()
      await keep(home, name, Buffer.from(JSON.stringify(value)))
      return value
    })
  }
  return {
    value: take,
    async large(key, make, isRight) {
      const value = lately.has(key) ? (lately.get(key) as never) : await take(key, make, isRight)
      asked.add(key)
      // Those that were asked for last come last.
      lately.delete(key)
      lately.set(key, value)
      for (const old of [...lately.keys()].slice(0, -mostLately)) lately.delete(old)
      return value
    },
    async kept(key, isRight) {
      asked.add(key)
      await breathe()
      const there = asJson(readKept(home, `${key}.json`))
      return isRight(there) ? there : undefined
    },
    async replace(key, value) {
      asked.add(key)
      await keep(home, `${key}.json`, Buffer.from(JSON.stringify(value)))
    },
    async bytes(key, make) {
      askedBytes.add(key)
      return once(`${key}.bytes`, async (name) => {
        const there = readKept(home, name)
        if (there) return there
        const bytes = await make()
        await keep(home, name, bytes)
        return bytes
      })
    },
    still(keys) {
      for (const key of keys) within.add(key)
    },
    async tidy() {
      await letGo(folder, version, new Set([...asked, ...askedBytes, ...within]))
      asked.clear()
      within.clear()
    },
  }
}

/** Let two who ask for one thing at once share it. */
function onceAtATime(): <T>(name: string, make: (name: string) => Promise<T>) => Promise<T> {
  const making = new Map<string, Promise<unknown>>()
  return async <T>(name: string, make: (name: string) => Promise<T>): Promise<T> => {
    if (!/^[0-9a-f]+\.(json|bytes)$/.test(name)) throw new Error(`${name} is no key of the cache`)
    const begun =
      (making.get(name) as Promise<T> | undefined) ?? make(name).finally(() => making.delete(name))
    making.set(name, begun)
    return begun
  }
}

/** Take away what other versions kept, and, where it is more than twice as much as was asked for, what nobody asked for. */
async function letGo(folder: string, version: string, asked: ReadonlySet<string>): Promise<void> {
  const home = join(folder, version)
  const others = (await readdir(folder).catch(() => [])).filter((name) => name !== version)
  const old = (await readdir(home).catch(() => [])).filter((name) => !asked.has(parse(name).name))
  const gone = [
    ...others.map((name) => join(folder, name)),
    ...(old.length > 2 * asked.size ? old.map((name) => join(home, name)) : []),
  ]
  for (const path of gone) await rm(path, {recursive: true, force: true}).catch(() => {})
}

/** As many as a build or a few are made from. */
const mostLately = 48

/** Stands before what is kept, so that a file that was cut, changed or put in the place of another is found out. */
const sealOf = (name: string, content: Uint8Array): string => keyOf(name, content)

/** As many signs has a key. */
export const sealLength = 24

function readKept(home: string, name: string): Buffer | undefined {
  try {
    const whole = readFileSync(join(home, name))
    const content = whole.subarray(sealLength)
    return whole.toString('latin1', 0, sealLength) === sealOf(name, content) ? content : undefined
  } catch {
    return undefined
  }
}

async function keep(home: string, name: string, content: Uint8Array): Promise<void> {
  // A journal that was moved away is not begun anew where it was.
  if (!existsSync(join(home, '../..'))) return
  await writeWhole(home, name, Buffer.concat([Buffer.from(sealOf(name, content)), content])).catch(() => {})
}

function asJson(bytes: Buffer | undefined): unknown {
  try {
    return bytes && JSON.parse(bytes.toString('utf8'))
  } catch {
    return undefined
  }
}

/** Write a file so that whoever reads it meets the old content or the new one. */
export async function writeWhole(folder: string, name: string, content: string | Uint8Array): Promise<void> {
  const beside = join(folder, `${name}.${randomBytes(6).toString('hex')}`)
  try {
    await writeInto(beside, content)
    await rename(beside, join(folder, name))
  } catch (error) {
    await rm(beside, {force: true})
    throw error
  }
}

/** Write a file, and make the folders that it lies in where they are missing: most are there. */
export async function writeInto(file: string, content: string | Uint8Array): Promise<void> {
  try {
    await writeFile(file, content)
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code !== 'ENOENT') throw error
    await mkdir(dirname(file), {recursive: true})
    await writeFile(file, content)
  }
}

/** Make a key of texts or bytes: the same key, the same texts. */
export function keyOf(...texts: readonly (string | Uint8Array)[]): string {
  const hash = createHash('sha256')
  for (const text of texts) hash.update(text).update('\0')
  return hash.digest('hex').slice(0, 24)
}

/** The same cache, and the keys of all that is asked of it from now on. */
export function noting(cache: Cache): {cache: Cache; keys: Set<string>} {
  const keys = new Set<string>()
  const noted: Cache = {
    ...cache,
    value: (key, make, isRight) => cache.value(keyTaken(key), make, isRight),
    large: (key, make, isRight) => cache.large(keyTaken(key), make, isRight),
    bytes: (key, make) => cache.bytes(keyTaken(key), make),
  }
  const keyTaken = (key: string) => {
    keys.add(key)
    return key
  }
  return {cache: noted, keys}
}
