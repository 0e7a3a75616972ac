import {rmdirSync, rmSync} from 'node:fs'
import {readdir, rename, rm} from 'node:fs/promises'
import {basename, dirname, join} from 'node:path'
import {fileOf} from '../kit/page.ts'
import {lookInto} from './look-into.ts'
import {type Spare, type Standing, stands} from './standing.ts'
import {beginVersion, mark, storeOf, writerOf} from './versions.ts'

/*
 * A version that a newer one replaced is not removed: the next is made of it. Most of it is a second name for what stands
 * in the last one, so little is to be linked or removed, where both cost more than all else.
 */

const ending = '.spare'

/** Where the version lies that the next one of `site` (absolute) after `last` can be made of, if there is one. */
export const spareOf = (site: string, {spare}: Standing): string | undefined =>
  spare && join(storeOf(site), spare.name + ending)

/** Say what is to be known of the version before, `last`, to make the next of it once `now` stands. */
export function spareAfter(last: Standing, now: Standing): Spare | undefined {
  // What is taken over keeps its entry.
  const differs = Object.keys(now.files).filter((address) => now.files[address] !== last.files[address])
  for (const address of Object.keys(last.files)) if (!Object.hasOwn(now.files, address)) differs.push(address)
  // A disk that keeps no second names has copies, which are other files.
  return differs.length > Object.keys(last.files).length / 2
    ? undefined
    : {name: basename(last.folder), differs}
}

/** Keep a version (absolute) that `site` does not show any more for the next one, and none beside it. */
export async function keepSpare(site: string, version: string): Promise<void> {
  const store = storeOf(site)
  const name = basename(version) + ending
  const isOther = (each: string) =>
    each !== name && each.endsWith(ending) && writerOf(each.slice(0, -ending.length), site) !== undefined
  try {
    await beginVersion(version)
    await rename(version, join(store, name))
  } catch {}
  // Where they cannot be taken away, they stay.
  for (const other of (await readdir(store).catch(() => [])).filter(isOther))
    await rm(join(store, other), {recursive: true, force: true}).catch(() => {})
}

/**
 * Find what stands in the folder (absolute) of the next version as it does in the last one, which it is made of, and
 * clear away whatever else is there. An empty folder holds nothing.
 */
export function takeUp(folder: string, last: Standing): Standing {
  const {standing, strays} = lookInto({...last, folder}, new Set(last.spare?.differs))
  for (const stray of strays) if (stray !== mark) clearAway(folder, stray)
  const files: Standing['files'] = {}
  for (const address of standing) files[address] = last.files[address]!
  return {folder, files}
}

/**
 * Make room for a file of the next version. What has its name may be a second name of a file of the last version, so
 * nobody writes into it; and a file and a folder cannot have one name.
 */
export function makeRoom({folder, files}: Standing, address: string): void {
  const steps = address.split('/')
  const above = steps.slice(2).map((_, at) => steps.slice(0, at + 2).join('/'))
  for (const one of [...above.filter((place) => Object.hasOwn(files, place)), address]) {
    rmSync(join(folder, fileOf(one)), {recursive: true, force: true})
    delete files[one]
  }
}

/** Take away what the next version no longer has. */
export function clearOthers(standing: Standing, wanted: ReadonlySet<string>): void {
  const {folder, files} = standing
  for (const address of Object.keys(files).filter((one) => !wanted.has(one))) {
    const [key] = files[address]!
    // By now it may be another file, on a disk that knows no capitals.
    if (stands(standing, {address, key})) clearAway(folder, fileOf(address))
    delete files[address]
  }
}

/** Remove what lies in a folder at a path, and the folders in it that hold nothing then. */
function clearAway(folder: string, inside: string): void {
  rmSync(join(folder, inside), {recursive: true, force: true})
  try {
    for (let at = dirname(inside); at !== '.'; at = dirname(at)) rmdirSync(join(folder, at))
  } catch {}
}
