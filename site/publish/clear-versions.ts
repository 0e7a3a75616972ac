import {readdir, readlink, rm} from 'node:fs/promises'
import {basename, dirname, join} from 'node:path'
import {storeOf, writerOf} from './site-folder.ts'

/**
 * Remove the versions of `site` that it does not show and that nobody is writing: those of builds that were
 * killed, and those that a newer one replaced. Links left behind by a killed swap go with them.
 */
export async function clearVersions(site: string): Promise<void> {
  const shown = basename(await readlink(site).catch(() => ''))
  const store = storeOf(site)
  for (const name of await readdir(store).catch(() => [])) {
    const writer = writerOf(name, site)
    if (writer === undefined || name === shown || (writer !== process.pid && isRunning(writer))) continue
    await rm(join(store, name), {recursive: true, force: true})
  }
  for (const name of await readdir(dirname(site))) {
    const isLeftover = name.startsWith(`${basename(site)}.`) && /\.[0-9a-f]{8}$/.test(name)
    const target = isLeftover ? await readlink(join(dirname(site), name)).catch(() => undefined) : undefined
    if (target !== undefined && !isRunning(writerOf(basename(target), site))) {
      await rm(join(dirname(site), name), {force: true})
    }
  }
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
