import {readdir, realpath, stat} from 'node:fs/promises'
import {basename, dirname, join, resolve, sep} from 'node:path'
import {nearest} from '../../plugins/build-file/schema/nearest.ts'
import type {BuildFile} from './list-builds.ts'

/** Where a file that a person named was found, or the nearest one that is there. */
export type Found = {build: BuildFile; journalFolder: string; isOfJournal: boolean} | {nearest?: string}

/** Say that a named file is not there, with the nearest one that is. */
export const notThere = (named: string, {nearest}: {nearest?: string}): string =>
  `${named} is not there${nearest ? `; was ${nearest} meant?` : ''}`

/**
 * Find the build file that was named, relative to `from`, as part of the journal at `root` or by itself.
 * A build by itself takes settings and rack from its own folder; `index.md` also from the folder around its own.
 */
export async function findFile(named: string, from: string, root: string): Promise<Found> {
  const path = await realpath(resolve(from, named)).catch(() => undefined)
  if (!path || !(await stat(path)).isFile()) {
    const close = await nearestFile(resolve(from, named), root)
    return close ? {nearest: close} : {}
  }
  const folder = dirname(path)
  const isIndex = basename(path) === 'index.md'
  const home = await realpath(join(root, 'builds')).catch(() => undefined)
  const isOfJournal = home !== undefined && (folder === home || (isIndex && dirname(folder) === home))
  const slug = (isIndex ? basename(folder) : basename(path).replace(/\.[^.]*$/, '')).toLowerCase()
  const ownSettings = isIndex && (await hasSettings(folder))
  return {
    build: {
      slug,
      file: isOfJournal
        ? path
            .slice(dirname(home).length + 1)
            .split(sep)
            .join('/')
        : named,
      path,
      folder,
    },
    journalFolder: isIndex && !ownSettings ? dirname(folder) : folder,
    isOfJournal,
  }
}

async function hasSettings(folder: string): Promise<boolean> {
  const names = await readdir(folder)
  return names.includes('journal.yaml') || names.includes('rack.yaml')
}

async function nearestFile(path: string, root: string): Promise<string | undefined> {
  const here: string[] = await readdir(dirname(path)).catch(() => [])
  const name = basename(path)
  const beside =
    nearest(
      name,
      here.filter((each) => each.endsWith('.md')),
    ) ?? (here.includes(`${name}.md`) ? `${name}.md` : undefined)
  if (beside) return join(dirname(path), beside)
  const builds = (await readdir(join(root, 'builds')).catch(() => [])).map((each) =>
    each.replace(/\.md$/, ''),
  )
  const slug = nearest(name.replace(/\.md$/, ''), builds)
  if (!slug) return undefined
  const isFolder = await stat(join(root, 'builds', slug)).catch(() => undefined)
  return isFolder ? `builds/${slug}/index.md` : `builds/${slug}.md`
}
