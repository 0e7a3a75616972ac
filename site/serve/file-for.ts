import {realpath, stat} from 'node:fs/promises'
import {join, sep} from 'node:path'

/** A file to answer with, or the address to go to instead. */
export type Found = {file: string; bytes: number; changed: number} | {to: string} | undefined

/**
 * Find what `folder` (absolute, resolved) holds for the path of a request, `prefix` taken off. A folder is
 * answered by its index.html and asked for with a slash at its end. Nothing outside the folder is found.
 */
export async function fileFor(folder: string, prefix: string, path: string): Promise<Found> {
  const inside = decoded(path)
  if (inside === undefined || /\0|\\|\/\//.test(inside)) return undefined
  if (`${inside}/` === prefix) return {to: prefix}
  if (!inside.startsWith(prefix)) return undefined
  const asked = join(folder, inside.slice(prefix.length), inside.endsWith('/') ? 'index.html' : '')
  const file = await realpath(asked).catch(() => undefined)
  if (!file || (file !== folder && !file.startsWith(folder + sep))) return undefined
  const kind = await stat(file)
  if (kind.isDirectory()) return inside.endsWith('/') ? undefined : {to: `${path}/`}
  return {file, bytes: kind.size, changed: kind.mtimeMs}
}

function decoded(path: string): string | undefined {
  try {
    return decodeURIComponent(path)
  } catch {
    return undefined
  }
}
