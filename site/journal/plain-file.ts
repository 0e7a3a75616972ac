import {closeSync, constants, fstatSync, openSync, readFileSync, realpathSync} from 'node:fs'
import {sep} from 'node:path'
import {breathe} from '../kit/breathe.ts'
import {changedMs, isSettled, stateOf} from './file-state.ts'

/** `no file` is a folder, a pipe or a device; `leads out` a link that ends outside the folder around it. */
export type FileFault = 'missing' | 'unreadable' | 'no file' | 'leads out' | 'too large'

/**
 * Read a plain file of at most `mostBytes`, and nothing else: no pipe that never ends, no device, and where `within`
 * (absolute, resolved) is given, no link that leads out of it. `key` and `state` are as `statPlainFile` has them; `state`
 * where the file had it before and after.
 */
export const readPlainFile = (path: string, mostBytes: number, within?: string) =>
  withPlainFile(path, {mostBytes, within}, (file, real) => {
    const before = lies(file, real)
    const bytes = readFileSync(file)
    const {key, state} = lies(file, real)
    return {bytes, key, state: state === before.state ? state : undefined}
  })

/**
 * Look at a plain file as `readPlainFile` would read it, without reading it; `key` changes whenever it does. `state` stands
 * for the file and for all that is in it; undefined where that cannot be told yet, since it was changed just now.
 */
export const statPlainFile = (path: string, mostBytes: number, within?: string) =>
  withPlainFile(path, {mostBytes, within}, lies)

function lies(file: number, real: string): {key: string; state: string | undefined} {
  const nowMs = Date.now()
  const kind = fstatSync(file)
  const key = stateOf(kind)
  return {key, state: isSettled(changedMs(kind), nowMs) ? `${real} ${key}` : undefined}
}

async function withPlainFile<T>(
  path: string,
  {mostBytes, within}: {mostBytes: number; within: string | undefined},
  use: (file: number, real: string) => T,
): Promise<T | {trouble: FileFault}> {
  await breathe()
  let file: number | undefined
  try {
    const real = realpathSync.native(path)
    if (within !== undefined && !real.startsWith(within + sep)) return {trouble: 'leads out'}
    // Opened without waiting, since a pipe would wait for somebody who writes; then only a plain file is read.
    file = openSync(real, constants.O_RDONLY | constants.O_NONBLOCK)
    const kind = fstatSync(file)
    if (!kind.isFile()) return {trouble: 'no file'}
    return kind.size > mostBytes ? {trouble: 'too large'} : use(file, real)
  } catch (error) {
    const {code = ''} = error as NodeJS.ErrnoException
    const isMissing = ['ENOENT', 'ENOTDIR'].includes(code)
    return {trouble: isMissing ? 'missing' : code === 'EISDIR' ? 'no file' : 'unreadable'}
  } finally {
    if (file !== undefined) closeSync(file)
  }
}
