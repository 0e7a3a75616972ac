import {lstatSync} from 'node:fs'
import {readdir, realpath} from 'node:fs/promises'
import {dirname, join, sep} from 'node:path'
import {breathe} from '../kit/breathe.ts'
import {kindOf, namesIn, realPathOf} from './at-once.ts'
import {settingsBeside, settingsFiles} from './settings.ts'

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

/** A file that looks like a build, or like the journal's settings, and is none, with what would make it one. */
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
  const others: NoBuild[] = settingsBeside(home).map((file) => ({
    file,
    message: 'is not read: it belongs into builds/',
  }))
  for (const name of (await readdir(home).catch(cannotBeRead)).sort()) {
    await breathe()
    const found = candidate(home, name)
    if (!found) continue
    const file = `builds/${'inside' in found ? found.inside : name}`
    if ('why' in found) {
      others.push({file, message: `is not read: ${found.why}`})
      continue
    }
    const path = realPathOf(join(home, found.inside))
    // One that was taken away just now is as if it had not been there.
    if (path === undefined) continue
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

function candidate(home: string, name: string): Candidate | undefined {
  if (name.startsWith('.') || name.toLowerCase() === 'readme.md') return undefined
  const isNamed = name.endsWith('.md')
  const kind = kindOf(join(home, name))
  // One that is no link was taken away just now.
  if (typeof kind === 'string')
    return isNamed && (kind !== 'ENOENT' || isLink(join(home, name)))
      ? {why: `it is a link that leads nowhere (${kind})`}
      : undefined
  const settings = settingsFiles.find((each) => each === name.toLowerCase().replace(/\.yml$/, '.yaml'))
  if (kind.isFile() && settings && name !== settings) return {why: `its name must be ${settings}`}
  if (kind.isFile() && otherMarkdown.test(name)) return {why: 'its ending must be .md, in small letters'}
  if (kind.isFile() && isNamed) return {slug: name.slice(0, -3), inside: name}
  if (!kind.isDirectory()) return isNamed ? {why: 'it is no plain file'} : undefined
  if (isNamed) return {why: 'it is a folder; a build is a file'}
  const index = kindOf(join(home, name, 'index.md'))
  if (index === 'ENOENT' && !isLink(join(home, name, 'index.md')))
    return holdsMarkdown(join(home, name))
      ? {why: 'a build in a folder of its own is called index.md, in small letters'}
      : undefined
  if (typeof index === 'string') return {why: `its folder or its index.md cannot be read (${index})`}
  return index.isFile() ? {slug: name, inside: `${name}/index.md`} : {why: 'its index.md is no plain file'}
}

const otherMarkdown = /\.(?:M[dD]|mD|markdown|mdown|mkd)$/

/** Whether a folder without index.md holds what may be meant for one. */
const holdsMarkdown = (folder: string): boolean =>
  namesIn(folder).some((name) => /^[^.].*\.(?:md|markdown)$/i.test(name))

function isLink(path: string): boolean {
  try {
    return lstatSync(path).isSymbolicLink()
  } catch {
    return false
  }
}

function slugOf(name: string): string {
  const slug = name
    .normalize('NFD')
    .replaceAll(/\p{M}/gu, '')
    .toLowerCase()
    .replaceAll(/[^a-z0-9]+/g, '-')
    .replaceAll(/^-+|-+$/g, '')
  return `${slug || 'needle-box'}.md`
}
