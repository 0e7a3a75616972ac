import {readFile} from 'node:fs/promises'

/** Read a file as UTF-8, or nothing where it is not there; bytes that are no UTF-8 show as U+FFFD. */
export async function readText(path: string): Promise<string | undefined> {
  try {
    return await readFile(path, 'utf8')
  } catch (error) {
    if (['ENOENT', 'ENOTDIR', 'EISDIR'].includes((error as NodeJS.ErrnoException).code ?? ''))
      return undefined
    throw error
  }
}
