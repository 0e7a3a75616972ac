import {randomBytes} from 'node:crypto'
import {lstat, readdir, rename, rmdir, symlink} from 'node:fs/promises'
import {dirname, join, relative} from 'node:path'

/**
 * Make `site` (absolute) show the finished `version` in one step: a new link is renamed over the old one, so
 * that whoever reads `site` meets either the old site whole or the new one whole, also if this process is
 * killed. A folder that stands where the link belongs is moved aside once; its new place is the answer.
 */
export async function swapSite(site: string, version: string): Promise<string | undefined> {
  const link = `${site}.${randomBytes(4).toString('hex')}`
  await symlink(relative(dirname(site), version), link, 'junction')
  const moved = await moveFolderAside(site)
  await rename(link, site)
  return moved
}

async function moveFolderAside(site: string): Promise<string | undefined> {
  const there = await lstat(site).catch(() => undefined)
  if (!there || there.isSymbolicLink()) return undefined
  if (there.isDirectory() && (await readdir(site)).length === 0) {
    await rmdir(site)
    return undefined
  }
  const aside = join(
    dirname(site),
    `${site.slice(dirname(site).length + 1)}.before-${randomBytes(4).toString('hex')}`,
  )
  await rename(site, aside)
  return aside
}
