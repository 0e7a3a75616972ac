import {randomBytes} from 'node:crypto'
import {mkdir} from 'node:fs/promises'
import {basename, dirname, join} from 'node:path'

/** The folder, beside a site, that holds the versions of it. */
export function storeOf(site: string): string {
  return join(dirname(site), '.site')
}

/** Name a version so that it tells which site it belongs to and which process writes it. */
function versionName(site: string): string {
  return `${basename(site)}-${process.pid}-${randomBytes(4).toString('hex')}`
}

/** Make an empty folder to write the next version of `site` (absolute) into; nothing points at it yet. */
export async function newVersion(site: string): Promise<string> {
  const folder = join(storeOf(site), versionName(site))
  await mkdir(folder, {recursive: true})
  return folder
}

/** The process that writes a version, by its name; undefined for a name that is no version of `site`. */
export function writerOf(name: string, site: string): number | undefined {
  const start = `${basename(site)}-`
  const pid = /^(\d+)-[0-9a-f]{8}$/.exec(name.startsWith(start) ? name.slice(start.length) : '')?.[1]
  return pid === undefined ? undefined : Number(pid)
}
