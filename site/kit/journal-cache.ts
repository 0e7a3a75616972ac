import {mkdir, readdir, readFile} from 'node:fs/promises'
import {join} from 'node:path'
import {type Cache, keyOf, openCache} from './cache.ts'
import {ownPackage} from './own-package.ts'
import {programFolder} from './program-folder.ts'

/** Open the cache of the journal at `root`; it lies in `.cache/` there, under the version of the program. */
export async function cacheOf(root: string): Promise<Cache> {
  await mkdir(join(root, '.cache'), {recursive: true}).catch(() => {})
  return openCache(join(root, '.cache/site'), await programVersion())
}

/** Where a finished program says its version, in its own folder. */
export const versionFile = 'version.txt'

/**
 * Name the program by all that its results come from: its own files and the versions of the libraries. One that is
 * finished was named when it was made.
 */
export async function programVersion(): Promise<string> {
  const made = await readFile(join(programFolder, versionFile), 'utf8').catch(() => '')
  if (/^[0-9a-f]{24}$/.test(made)) return made
  const inside = await Promise.all(
    ['plugins', 'site'].map(async (room) =>
      (await readdir(join(programFolder, room), {recursive: true})).map((name) => join(room, name)),
    ),
  )
  const files = [
    'package-lock.json',
    ...inside.flat().filter((name) => /\.(ts|js|css|svg)$/.test(name)),
  ].sort()
  const texts = await Promise.all(
    files.map((name) => readFile(join(programFolder, name), 'utf8').catch(() => '')),
  )
  return keyOf(ownPackage.text, ...files, ...texts)
}
