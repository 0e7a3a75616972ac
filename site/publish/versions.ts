import {randomBytes} from 'node:crypto'
import {rmSync} from 'node:fs'
import {lstat, mkdir, readdir, readlink, rename, rm, rmdir, symlink, writeFile} from 'node:fs/promises'
import {basename, dirname, join, relative} from 'node:path'

/** The folder, beside a site, that holds the versions of it. */
export function storeOf(site: string): string {
  return join(dirname(site), '.site')
}

/** Name a version so that it tells which site it belongs to and which process writes it. */
function versionName(site: string): string {
  return `${basename(site)}-${process.pid}-${randomBytes(4).toString('hex')}`
}

/**
 * Make a folder to write the next version of `site` (absolute) into; nothing points at it yet. It is empty, or what lies
 * at `spare`, if it is still there and can be moved: of two who want it one gets it.
 */
export async function newVersion(site: string, spare?: string): Promise<string> {
  const folder = join(storeOf(site), versionName(site))
  await mkdir(storeOf(site), {recursive: true})
  if (spare === undefined || !(await isMoved(spare, folder))) await mkdir(folder)
  return folder
}

const isMoved = (from: string, to: string): Promise<boolean> =>
  rename(from, to).then(
    () => true,
    () => false,
  )

/** Lies in a version that is not finished. */
export const mark = '.unfinished'

/** Mark a version (absolute) that is being written, so that one that somebody takes away meanwhile is not shown in part. */
export async function beginVersion(version: string): Promise<void> {
  await writeFile(join(version, mark), '')
}

/** Take the mark off a version that is written whole. */
export async function finishVersion(version: string): Promise<void> {
  await rm(join(version, mark)).catch(() => {
    throw new Error('the folder that it was being written to was moved or taken away')
  })
}

/** The process that writes a version, by its name; undefined for a name that is no version of `site`. */
export function writerOf(name: string, site: string): number | undefined {
  const start = `${basename(site)}-`
  const pid = /^(\d+)-[0-9a-f]{8}$/.exec(name.startsWith(start) ? name.slice(start.length) : '')?.[1]
  return pid === undefined ? undefined : Number(pid)
}

/**
 * Make `site` (absolute) show the finished `version` in one step: a new link is renamed over the old one, so
 * that whoever reads `site` meets either the old site whole or the new one whole, also if this process is
 * killed. A folder that stands where the link belongs is moved aside once; its new place is the answer.
 */
export async function swapSite(site: string, version: string): Promise<string | undefined> {
  const link = `${site}.${randomBytes(4).toString('hex')}`
  await symlink(relative(dirname(site), version), link, 'junction')
  const moved = await moveFolderAside(site)
  try {
    await rename(link, site)
  } catch (error) {
    await rm(link, {force: true})
    if (moved) await rename(moved, site).catch(() => {})
    throw error
  }
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

/**
 * Remove the versions of `site` that it does not show and that nobody is writing: those of builds that were
 * killed, and those that a newer one replaced. Links left behind by a killed swap go with them.
 */
export async function clearVersions(site: string): Promise<void> {
  const store = storeOf(site)
  for (const name of await readdir(store).catch(() => [])) {
    const writer = writerOf(name, site)
    if (writer === undefined || (writer !== process.pid && isRunning(writer))) continue
    // Looked at now and not before: whoever wrote this version may have shown it a moment ago, and can no more.
    if (name === basename(await readlink(site).catch(() => ''))) continue
    await takeAway(join(store, name))
  }
  for (const name of await readdir(dirname(site))) {
    const isLeftover = name.startsWith(`${basename(site)}.`) && /\.[0-9a-f]{8}$/.test(name)
    const target = isLeftover ? await readlink(join(dirname(site), name)).catch(() => undefined) : undefined
    if (target !== undefined && !isRunning(writerOf(basename(target), site))) {
      await rm(join(dirname(site), name), {force: true}).catch(() => {})
    }
  }
}

/** Where it cannot be, it stays: the site that is shown is another. */
async function takeAway(version: string): Promise<void> {
  try {
    await rm(join(version, mark), {force: true})
    // In one go: what waits for each file takes several times as long.
    rmSync(version, {recursive: true, force: true})
  } catch {}
}

function isRunning(pid: number | undefined): boolean {
  if (pid === undefined) return false
  try {
    process.kill(pid, 0)
    return true
  } catch (error) {
    return error instanceof Error && 'code' in error && error.code === 'EPERM'
  }
}
