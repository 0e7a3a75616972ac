import {lstat, readdir, readlink, realpath} from 'node:fs/promises'
import {basename, dirname, join, resolve, sep} from 'node:path'
import {storeOf} from './versions.ts'

/**
 * Settle where the site goes, as an absolute path, links on the way to it resolved. Answers a sentence instead where
 * writing there would put somebody's other files aside: a folder above or inside the journal's own, one that holds
 * no site, a link that no build made, or what is no place for files.
 */
export async function outputFolder(root: string, asked: string): Promise<{site: string} | {refused: string}> {
  const site = await resolved(resolve(root, asked))
  const inside = site.startsWith(root + sep) ? site.slice(root.length + 1).split(sep)[0]! : ''
  if (site === root || (root + sep).startsWith(site.endsWith(sep) ? site : site + sep)) {
    return {refused: `${asked} holds this project; name a folder for the site alone`}
  }
  if (['builds', 'plugins', 'site', 'test', 'node_modules', '.git', '.cache', '.site'].includes(inside)) {
    return {refused: `${asked} lies in ${inside}/, which is not for the site; name another folder`}
  }
  if (/^\/(dev|proc|sys)(\/|$)/.test(site)) return {refused: `${asked} is no place for files; name a folder`}
  const there = await lstat(site).catch(() => undefined)
  if (there?.isSymbolicLink()) {
    const leads = resolve(dirname(site), await readlink(site))
    if (dirname(leads) === storeOf(site)) return {site}
    return {refused: `${asked} is a link that leads elsewhere; name the folder itself`}
  }
  if (!there) return {site}
  if (!there.isDirectory()) return {refused: `${asked} is a file; name a folder for the site`}
  const names = await readdir(site)
  const isUsual = site === resolve(root, '_site')
  return isUsual || names.length === 0 || names.includes('index.html')
    ? {site}
    : {refused: `${asked} holds other things; name a new folder, or an empty one`}
}

/** Resolve the links of the folders that lead to a place; the place itself may be one, or not be there yet. */
async function resolved(path: string): Promise<string> {
  const above = dirname(path)
  if (above === path) return path
  const real = await realpath(above).catch(() => resolved(above))
  return join(real, basename(path))
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
