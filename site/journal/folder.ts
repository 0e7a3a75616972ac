import {basename, join, sep} from 'node:path'
import {isPicture} from '../../plugins/checks/own-files.ts'
import {breathe} from '../kit/breathe.ts'
import {kindOf, namesIn, realPathOf} from './at-once.ts'
import type {BuildFile} from './list-builds.ts'

/**
 * List the files of builds' folders, each folder once. A build that is a file of its own shares the journal's
 * folder, less the folders that belong to other builds.
 */
export function folderLists(found: readonly BuildFile[]): (build: BuildFile) => Promise<string[]> {
  const owned = new Set(found.filter(hasOwnFolder).map(({folder}) => basename(folder)))
  const lists = new Map<string, Promise<string[]>>()
  return (build) => {
    const there = lists.get(build.folder)
    if (there) return there
    const list = listFolder(build.folder, hasOwnFolder(build) ? undefined : owned)
    lists.set(build.folder, list)
    return list
  }
}

/** Tell whether a build lies in a folder that no other build has. */
export const hasOwnFolder = ({file}: Pick<BuildFile, 'file'>): boolean => file.endsWith('/index.md')

/** How many wait for one another’s files at a time. */
export const together = {concurrency: 8}

/** Enough for any build's photographs; a folder with more is listed as far as this. */
const mostFiles = 5000

/**
 * List the files below `folder` (absolute, resolved), relative to it with `/` between, sorted. A link counts
 * where it ends inside the folder; hidden files and folders named in `leaveOut` do not count.
 */
async function listFolder(folder: string, leaveOut: ReadonlySet<string> = new Set()): Promise<string[]> {
  const files: string[] = []
  const seen = new Set([folder])
  const walk = async (at: string) => {
    for (const name of namesIn(join(folder, at))) {
      const inside = at ? `${at}/${name}` : name
      if (name.startsWith('.') || leaveOut.has(inside) || files.length >= mostFiles) continue
      await breathe()
      const path = realPathOf(join(folder, inside))
      if (!path?.startsWith(folder + sep)) continue
      const kind = kindOf(path)
      if (typeof kind === 'string') continue
      // A pipe or a folder where a picture belongs is told as what it is, not as missing.
      if (!kind.isDirectory() || isPicture(name)) files.push(inside)
      if (kind.isDirectory() && !seen.has(path)) {
        seen.add(path)
        await walk(inside)
      }
    }
  }
  await walk('')
  return files
}
