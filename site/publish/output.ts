import {lstat, readdir, realpath} from 'node:fs/promises'
import {basename, dirname, resolve, sep} from 'node:path'
import {storeOf} from './versions.ts'

/**
 * Settle where the site goes, as an absolute path. Answers a sentence instead where writing there would put
 * somebody's other files aside: a folder above or inside the journal's own, or one that holds no site.
 */
export async function outputFolder(root: string, asked: string): Promise<{site: string} | {refused: string}> {
  const site = resolve(root, asked)
  const inside = site.startsWith(root + sep) ? site.slice(root.length + 1).split(sep)[0]! : ''
  if (site === root || (root + sep).startsWith(site.endsWith(sep) ? site : site + sep)) {
    return {refused: `${asked} holds this project; name a folder for the site alone`}
  }
  if (['builds', 'plugins', 'site', 'test', 'node_modules', '.git', '.cache', '.site'].includes(inside)) {
    return {refused: `${asked} lies in ${inside}/, which is not for the site; name another folder`}
  }
  const parent = await realpath(dirname(site)).catch(() => undefined)
  const there = await lstat(site).catch(() => undefined)
  // A link of somebody's own is followed; one that a build made leads to a version of the site.
  const target = there?.isSymbolicLink() ? await realpath(site).catch(() => undefined) : undefined
  if (target && dirname(target) !== storeOf(resolve(parent ?? root, basename(site)))) {
    return outputFolder(root, target)
  }
  if (there && !there.isSymbolicLink()) {
    if (!there.isDirectory()) return {refused: `${asked} is a file; name a folder for the site`}
    const names = await readdir(site)
    const isUsual = site === resolve(root, '_site')
    if (!isUsual && names.length > 0 && !names.includes('index.html')) {
      return {refused: `${asked} holds other things; name a new folder, or an empty one`}
    }
  }
  return {site: parent ? resolve(parent, basename(site)) : site}
}

/**
 * Settle the path that the site will lie under, with a slash at both ends; undefined for what is no path of a
 * site (a whole address, steps up, question marks).
 */
export function pathPrefix(asked: string): string | undefined {
  const inside = asked.replaceAll(/^\/|\/$/g, '')
  if (inside === '') return '/'
  return /^[A-Za-z0-9._~-]+(\/[A-Za-z0-9._~-]+)*$/.test(inside) && !/(^|\/)\.+(\/|$)/.test(inside)
    ? `/${inside}/`
    : undefined
}
