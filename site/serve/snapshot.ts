import {readdir, stat} from 'node:fs/promises'
import {join} from 'node:path'

/** Describe what lies below a folder so that any change of a file, name or link changes the description. */
export async function snapshot(folder: string): Promise<string> {
  const entries = await readdir(folder, {recursive: true, withFileTypes: true}).catch(() => [])
  const lines = await Promise.all(
    entries.map(async (entry) => {
      const path = join(entry.parentPath, entry.name)
      const kind = await stat(path).catch(() => undefined)
      return kind ? `${path} ${kind.ino} ${kind.size} ${kind.mtimeMs} ${kind.ctimeMs}` : path
    }),
  )
  return lines.sort().join('\n')
}
