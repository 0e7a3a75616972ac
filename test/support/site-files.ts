import {readdirSync, readFileSync, statSync} from 'node:fs'
import {join} from 'node:path'

/** Read every file of a folder, by its path from there, sorted; links are followed. */
export function filesOf(folder: string): Record<string, string> {
  const names = (readdirSync(folder, {recursive: true}) as string[]).sort()
  const files = names.filter((name) => statSync(join(folder, name)).isFile())
  return Object.fromEntries(files.map((name) => [name, readFileSync(join(folder, name), 'latin1')]))
}
