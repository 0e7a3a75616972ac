import {mkdir, readdir, readFile, rename, rm, writeFile} from 'node:fs/promises'
import {join} from 'node:path'

/** Keeps results by their keys. */
export interface Shelf {
  take: <T>(key: string) => Promise<T | undefined>
  put: (key: string, value: unknown) => Promise<void>
  /** Let go of what was neither taken nor put since the last call, on disk once that is more than twice as much. */
  tidy: () => Promise<void>
}

/**
 * Keep results in memory and in `folder` (absolute), under the `version` of the program that makes them, so that
 * another version finds nothing. A file that cannot be read or written is as if it were not there.
 */
export function shelf(folder: string, version: string): Shelf {
  const home = join(folder, version)
  const kept = new Map<string, unknown>()
  const used = new Set<string>()
  const fileOf = (key: string) => join(home, `${key}.json`)
  return {
    async take<T>(key: string) {
      used.add(key)
      if (kept.has(key)) return kept.get(key) as T
      const value = await readJson<T>(fileOf(key))
      if (value !== undefined) kept.set(key, value)
      return value
    },
    async put(key, value) {
      used.add(key)
      kept.set(key, value)
      await writeWhole(home, fileOf(key), JSON.stringify(value)).catch(() => {})
    },
    async tidy() {
      const others = (await readdir(folder).catch(() => [])).filter((name) => name !== version)
      const old = (await readdir(home).catch(() => [])).filter((name) => !used.has(name.replace('.json', '')))
      const gone = [
        ...others.map((name) => join(folder, name)),
        ...(old.length > 2 * used.size ? old.map((name) => join(home, name)) : []),
      ]
      for (const path of gone) await rm(path, {recursive: true, force: true}).catch(() => {})
      for (const key of kept.keys()) if (!used.has(key)) kept.delete(key)
      used.clear()
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

async function writeWhole(folder: string, file: string, text: string): Promise<void> {
  await mkdir(folder, {recursive: true})
  const beside = `${file}.${process.pid}`
  await writeFile(beside, text)
  await rename(beside, file)
}
