import {chmod, lstat, mkdtemp, readdir, rename, rm, writeFile} from 'node:fs/promises'
import {join} from 'node:path'
import {newJournal} from '../../plugins/build-file/writing/new-build.ts'

/** Where the builds at hand would be moved to; undefined where there are none. */
export async function asideFor(root: string): Promise<string | undefined> {
  if (!(await isThere(join(root, 'builds')))) return undefined
  for (let count = 1; ; count += 1) {
    const name = count === 1 ? 'builds-before' : `builds-before-${count}`
    if (!(await isThere(join(root, name)))) return name
  }
}

/** Count the files and folders of the builds at hand. */
export const countOfBuilds = async (root: string): Promise<number> =>
  (await readdir(join(root, 'builds')).catch(() => [])).length

/**
 * Begin an empty journal below `root`: what stands in `builds` is moved aside as a whole, nothing is deleted, and
 * where the new one cannot be written everything is as it was.
 */
export async function emptyJournal(root: string, aside: string | undefined): Promise<void> {
  const builds = join(root, 'builds')
  const begun = await mkdtemp(join(root, 'builds-new-'))
  try {
    await writeFile(join(begun, 'journal.yaml'), newJournal())
    await chmod(begun, 0o777 & ~process.umask())
    if (aside) await rename(builds, join(root, aside))
    await rename(begun, builds).catch(async (error: Error) => {
      if (aside) await rename(join(root, aside), builds)
      throw error
    })
  } catch (error) {
    await rm(begun, {recursive: true, force: true})
    throw error
  }
}

async function isThere(path: string): Promise<boolean> {
  return lstat(path).then(
    () => true,
    () => false,
  )
}
