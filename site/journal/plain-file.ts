import {constants} from 'node:fs'
import {type FileHandle, open, realpath} from 'node:fs/promises'
import {sep} from 'node:path'

/** `no file` is a folder, a pipe or a device; `leads out` a link that ends outside the folder around it. */
export type FileFault = 'missing' | 'unreadable' | 'no file' | 'leads out' | 'too large'

/**
 * Read a plain file of at most `mostBytes`, and nothing else: no pipe that never ends, no device, and where `within`
 * (absolute, resolved) is given, no link that leads out of it.
 */
export const readPlainFile = (path: string, mostBytes: number, within?: string) =>
  withPlainFile(path, {mostBytes, within}, async (file) => ({bytes: await file.readFile()}))

/** Look at a plain file as `readPlainFile` would read it, without reading it; `key` changes whenever it does. */
export const statPlainFile = (path: string, mostBytes: number, within?: string) =>
  withPlainFile(path, {mostBytes, within}, async (file) => {
    // The last of these no program can set back.
    const {size, ino, mtimeMs, ctimeMs} = await file.stat()
    return {key: `${size} ${ino} ${mtimeMs} ${ctimeMs}`}
  })

async function withPlainFile<T>(
  path: string,
  {mostBytes, within}: {mostBytes: number; within: string | undefined},
  use: (file: FileHandle) => Promise<T>,
): Promise<T | {trouble: FileFault}> {
  let file: FileHandle | undefined
  try {
    const real = await realpath(path)
    if (within !== undefined && !real.startsWith(within + sep)) return {trouble: 'leads out'}
    // Opened without waiting, since a pipe would wait for somebody who writes; then only a plain file is read.
    file = await open(real, constants.O_RDONLY | constants.O_NONBLOCK)
    const kind = await file.stat()
    if (!kind.isFile()) return {trouble: 'no file'}
    return kind.size > mostBytes ? {trouble: 'too large'} : await use(file)
  } catch (error) {
    const {code = ''} = error as NodeJS.ErrnoException
    const isMissing = ['ENOENT', 'ENOTDIR'].includes(code)
    return {trouble: isMissing ? 'missing' : code === 'EISDIR' ? 'no file' : 'unreadable'}
  } finally {
    await file?.close()
  }
}
