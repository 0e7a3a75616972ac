import {basename} from 'node:path'
import type {BuildFile} from './list-builds.ts'
import {listFolder} from './list-folder.ts'

/**
 * List the files of builds' folders, each folder once. A build that is a file of its own shares the journal's
 * folder, less the folders that belong to other builds.
 */
export function folderLists(found: readonly BuildFile[]): (build: BuildFile) => Promise<string[]> {
  const owned = new Set(found.filter(isFolder).map(({folder}) => basename(folder)))
  const lists = new Map<string, Promise<string[]>>()
  return (build) => {
    const there = lists.get(build.folder)
    if (there) return there
    const list = listFolder(build.folder, isFolder(build) ? undefined : owned)
    lists.set(build.folder, list)
    return list
  }
}

const isFolder = ({file}: BuildFile) => file.endsWith('/index.md')
