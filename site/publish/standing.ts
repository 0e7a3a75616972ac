import {
  constants,
  copyFileSync,
  existsSync,
  linkSync,
  mkdirSync,
  renameSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs'
import {mkdir, readFile, rename, rm, rmdir} from 'node:fs/promises'
import {dirname, join} from 'node:path'
import {kindOf} from '../journal/at-once.ts'
import {keyOf, sealLength, writeWhole} from '../kit/cache.ts'
import {programVersion} from '../kit/journal-cache.ts'
import {fileOf, type Known} from '../kit/page.ts'
import {isOwnAddress} from '../steps/kept-shapes.ts'

/** What stands in a folder that was written before: of each file, by its address, its key, its size and its time. */
export interface Standing {
  /** Absolute. */
  folder: string
  files: Record<string, Written>
  /** What whoever made it notes of that, once it is whole. */
  made?: string | undefined
  spare?: Spare | undefined
}

/** The version before, as far as the next one can be made of it. */
export interface Spare {
  /** Its folder's. */
  name: string
  /** Addresses of what it has otherwise, or alone, or not at all. */
  differs: readonly string[]
}

type Written = [key: string, bytes: number, atMs: number]

/** Of a file that may be anything. */
export const unknown: Written = ['', 0, 0]

/** Whoever writes notes it in the list that was recalled, so each has one of its own. */
const nothingStands = (): Standing => ({folder: '/', files: {}})

const listsOf = (root: string) => join(root, '.cache/standing')
const listName = (place: string) => `${keyOf(place)}.json`

/**
 * Recall what this program wrote for a place (absolute) of the journal at `root`; `folder` is where it must lie now.
 * Another program may make other pages of the same things.
 */
export async function recallStanding(root: string, place: string, folder: string): Promise<Standing> {
  try {
    const sealed = await readFile(join(listsOf(root), listName(place)), 'utf8')
    const text = sealed.slice(sealLength)
    const kept: unknown = JSON.parse(text)
    const {program} = kept as {program: unknown}
    const isSame = isStanding(kept) && kept.folder === folder && program === (await programVersion())
    if (!isSame) return nothingStands()
    const {files, made, spare} = kept
    return sealed.startsWith(keyOf(text)) ? {folder, files, made, spare} : {folder, files}
  } catch {
    return nothingStands()
  }
}

/** Note what was written for a place; where that cannot be noted, it is written anew the next time. */
export async function rememberStanding(root: string, place: string, standing: Standing): Promise<void> {
  const content = listOf(await programVersion(), standing)
  await writeWhole(listsOf(root), listName(place), content).catch(() => {})
}

/** Seal a list: where it was cut or changed, what it notes besides files is not taken. */
function listOf(program: string, standing: Standing): string {
  const text = JSON.stringify({program, ...standing})
  return keyOf(text) + text
}

/** Where the site of whoever wrote last waits for the next time, so that it need not be written anew. */
const waiting = (root: string) => join(root, '.cache/start')

/**
 * Put the site of whoever wrote last at the journal at `root` into an empty folder (absolute). What somebody else changed
 * in it counts as another.
 */
export async function resumeStanding(root: string, folder: string): Promise<Standing> {
  const last = await recallStanding(root, waiting(root), waiting(root))
  try {
    if (Object.keys(last.files).length > 0) {
      await rmdir(folder)
      await rename(waiting(root), folder)
    }
  } catch {
    await mkdir(folder, {recursive: true})
  }
  // What another version of the program left goes meanwhile, and not when somebody waits for the end.
  rm(waiting(root), {recursive: true, force: true}).catch(() => {})
  const there: Standing = {folder, files: last.files, made: last.made}
  for (const [address, [key]] of Object.entries(last.files)) {
    if (stands(there, {address, key})) continue
    there.files[address] = unknown
    there.made = undefined
  }
  return there
}

/** Let a site wait for the next time; at once, for a process that ends. Where it cannot, it is taken away. */
export function leaveStanding(root: string, {folder, files, made}: Standing, program: string): void {
  // The journal may have been moved away meanwhile.
  if (!existsSync(folder)) return
  try {
    rmSync(waiting(root), {recursive: true, force: true})
    const list = join(listsOf(root), listName(waiting(root)))
    mkdirSync(dirname(list), {recursive: true})
    writeFileSync(list, listOf(program, {folder: waiting(root), files, made}))
    renameSync(folder, waiting(root))
  } catch {
    rmSync(folder, {recursive: true, force: true})
  }
}

const isStanding = (value: unknown): value is Standing => {
  const {folder, files, made, spare} = (value ?? {}) as Partial<Standing>
  return (
    typeof folder === 'string' &&
    (made === undefined || typeof made === 'string') &&
    (spare === undefined || (/^[^/\\]+$/.test(spare.name) && Array.isArray(spare.differs))) &&
    typeof files === 'object' &&
    files !== null &&
    Object.entries(files).every(([address, written]) => isOwnAddress(address) && Array.isArray(written))
  )
}

/** Tell whether a file stands as it was written: with this key, and not changed since by anybody else. */
export function stands(standing: Standing, known: Known): boolean {
  const {folder, files} = standing
  const {address} = known
  return isNoted(standing, known) && isAsWritten(join(folder, fileOf(address)), files[address]!)
}

/** Tell whether what was written at an address has a key, without looking at it. */
export const isNoted = ({files}: Standing, {address, key}: Known): boolean =>
  Object.hasOwn(files, address) && files[address]?.[0] === key

/** Tell whether a file has the size and the time that it was written with. */
export function isAsWritten(path: string, [, bytes, atMs]: Written): boolean {
  // Where its folder is a file now, nothing is there.
  const there = kindOf(path)
  return typeof there !== 'string' && there.isFile() && there.size === bytes && there.mtimeMs === atMs
}

/** Note a file that was just written, or taken over. */
export function note(standing: Standing, {address, key}: Known): void {
  const there = statSync(join(standing.folder, fileOf(address)), {throwIfNoEntry: false})
  if (there) standing.files[address] = [key, there.size, there.mtimeMs]
}

/**
 * Let files that stand in one folder stand in another too, unread: by a second name for the same bytes, or where the disk
 * has no such thing, by a copy. Nobody writes into such a file: the site that it came from would change with it.
 * Answers those that are not there, or were changed.
 */
export function takeOver<K extends Known>(from: Standing, to: Standing, known: readonly K[]): K[] {
  return known.filter((one) => {
    if (!stands(from, one)) return true
    const {address} = one
    try {
      const isLinked = linkOrCopy(join(from.folder, fileOf(address)), join(to.folder, fileOf(address)))
      if (isLinked) to.files[address] = from.files[address]!
      else note(to, one)
      return false
    } catch {
      return true
    }
  })
}

/** Answers whether it is a link. */
function linkOrCopy(from: string, to: string): boolean {
  try {
    linkSync(from, to)
    return true
  } catch (error) {
    const {code = ''} = error as NodeJS.ErrnoException
    if (code === 'ENOENT' && mkdirSync(dirname(to), {recursive: true}) !== undefined)
      return linkOrCopy(from, to)
    // A file that is gone, or a disk that is full, is no reason to copy.
    if (['ENOENT', 'ENOSPC', 'EDQUOT', 'EEXIST'].includes(code)) throw error
    copyFileSync(from, to, constants.COPYFILE_EXCL | constants.COPYFILE_FICLONE)
    return false
  }
}
