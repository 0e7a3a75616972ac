import {lstat, readdir, realpath, stat} from 'node:fs/promises'
import {dirname, join, sep} from 'node:path'

/** A build file found in the journal; `path` and `folder` are absolute, symbolic links resolved. */
export interface BuildFile {
  slug: string
  /** As people name it, from the journal's root: `builds/needle-box.md`. */
  file: string
  path: string
  /** The folder that its pictures and recordings must stay in. */
  folder: string
  /** The other file of a build that is there twice. */
  twice?: string
}

/** A Markdown file that looks like a build and is none, with what would make it one. */
export interface NoBuild {
  file: string
  message: string
}

const slugPattern = /^[a-z0-9-]+$/

/**
 * List the builds of the journal at `root`, sorted by slug: exactly `builds/<slug>.md` and
 * `builds/<slug>/index.md`. Links that lead out of the journal are not followed.
 */
export async function listBuilds(
  root: string,
  folder = join(root, 'builds'),
): Promise<{builds: BuildFile[]; others: NoBuild[]}> {
  const home = await realpath(folder).catch(cannotBeRead)
  const builds = new Map<string, BuildFile>()
  const others: NoBuild[] = []
  for (const name of (await readdir(home).catch(cannotBeRead)).sort()) {
    const found = await candidate(home, name)
    if (!found) continue
    const file = `builds/${'inside' in found ? found.inside : name}`
    if ('why' in found) {
      others.push({file, message: `is not read: ${found.why}`})
      continue
    }
    const path = await realpath(join(home, found.inside))
    if (!path.startsWith(home + sep)) {
      others.push({
        file,
        message: 'is not read: it is a link that leads out of the journal; copy the file here',
      })
    } else if (!slugPattern.test(found.slug)) {
      others.push({
        file,
        message: `is not read: a build is named in small letters, digits and hyphens, such as ${slugOf(found.slug)}`,
      })
    } else {
      const twice = builds.get(found.slug)
      if (twice) twice.twice = file
      else builds.set(found.slug, {slug: found.slug, file, path, folder: dirname(path)})
    }
  }
  return {builds: [...builds.values()].sort((a, b) => (a.slug < b.slug ? -1 : 1)), others}
}

/** Without builds there is no journal: a site made of nothing would take the place of a good one. */
function cannotBeRead({code}: NodeJS.ErrnoException): never {
  throw new Error(
    code === 'ENOENT'
      ? 'there is no folder builds/ here; run this where the journal lies, or make the folder'
      : `the folder builds/ cannot be read (${code})`,
  )
}

type Candidate = {slug: string; inside: string} | {why: string}

async function candidate(home: string, name: string): Promise<Candidate | undefined> {
  if (name.startsWith('.') || name.toLowerCase() === 'readme.md') return undefined
  const isNamed = name.endsWith('.md')
  const kind = await stat(join(home, name)).catch((error: NodeJS.ErrnoException) => error.code ?? '')
  if (typeof kind === 'string')
    return isNamed ? {why: `it is a link that leads nowhere (${kind})`} : undefined
  if (kind.isFile() && otherMarkdown.test(name)) return {why: 'its ending must be .md, in small letters'}
  if (kind.isFile() && isNamed) return {slug: name.slice(0, -3), inside: name}
  if (!kind.isDirectory()) return isNamed ? {why: 'it is no plain file'} : undefined
  if (isNamed) return {why: 'it is a folder; a build is a file'}
  const index = await stat(join(home, name, 'index.md')).catch(
    (error: NodeJS.ErrnoException) => error.code ?? '',
  )
  if (index === 'ENOENT' && !(await isLink(join(home, name, 'index.md'))))
    return (await holdsMarkdown(join(home, name)))
      ? {why: 'a build in a folder of its own is called index.md, in small letters'}
      : undefined
  if (typeof index === 'string') return {why: `its folder or its index.md cannot be read (${index})`}
  return index.isFile() ? {slug: name, inside: `${name}/index.md`} : {why: 'its index.md is no plain file'}
}

const otherMarkdown = /\.(?:M[dD]|mD|markdown|mdown|mkd)$/

/** Whether a folder without index.md holds what may be meant for one. */
const holdsMarkdown = async (folder: string): Promise<boolean> =>
  (await readdir(folder).catch(() => [])).some((name) => /^[^.].*\.(?:md|markdown)$/i.test(name))

const isLink = async (path: string): Promise<boolean> =>
  (await lstat(path).catch(() => undefined))?.isSymbolicLink() ?? false

function slugOf(name: string): string {
  const slug = name
    .normalize('NFD')
    .replaceAll(/\p{M}/gu, '')
    .toLowerCase()
    .replaceAll(/[^a-z0-9]+/g, '-')
    .replaceAll(/^-+|-+$/g, '')
  return `${slug || 'needle-box'}.md`
}
