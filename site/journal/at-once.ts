import {type Dirent, readdirSync, realpathSync, type Stats, statSync} from 'node:fs'

// Looks at the disk that wait for it: to wait for each by its own takes ten times as long.

/** Where a path leads once its links are followed; undefined where it leads nowhere. */
export function realPathOf(path: string): string | undefined {
  try {
    return realpathSync.native(path)
  } catch {
    return undefined
  }
}

/** What lies at a path, links followed, or the code of why that cannot be told. */
export function kindOf(path: string): Stats | string {
  try {
    return statSync(path)
  } catch (error) {
    return (error as NodeJS.ErrnoException).code ?? ''
  }
}

/** What lies in a folder; nothing where it cannot be read. */
export function entriesIn(folder: string): Dirent[] {
  try {
    return readdirSync(folder, {withFileTypes: true})
  } catch {
    return []
  }
}

/** The names in a folder, in order; none where it cannot be read. */
export const namesIn = (folder: string): string[] =>
  entriesIn(folder)
    .map(({name}) => name)
    .sort()
