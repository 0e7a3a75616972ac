import {readdirSync, statSync} from 'node:fs'
import {join} from 'node:path'
import {fileOf} from '../kit/page.ts'
import type {Standing} from './standing.ts'

/** What lies in a folder that was written before. */
interface Inside {
  /** Addresses of the files that stand as they were written. */
  standing: string[]
  /** Whatever else is there, and folders that hold nothing: their paths in the folder. */
  strays: string[]
}

/** Look at all that lies in a folder that was written before, without reading it. */
export function lookInto({folder, files}: Standing): Inside {
  const written = new Map(Object.entries(files).map(([address, one]) => [fileOf(address), {address, one}]))
  const inside: Inside = {standing: [], strays: []}
  const look = (at: string) => {
    const entries = readdirSync(join(folder, at), {withFileTypes: true})
    if (at && entries.length === 0) inside.strays.push(at)
    for (const entry of entries) {
      const path = at ? `${at}/${entry.name}` : entry.name
      if (entry.isDirectory()) {
        look(path)
        continue
      }
      const known = written.get(path)
      const isAsWritten = known && entry.isFile() && isSame(join(folder, path), known.one)
      if (isAsWritten) inside.standing.push(known.address)
      else inside.strays.push(path)
    }
  }
  look('')
  return inside
}

function isSame(path: string, [, bytes, atMs]: Standing['files'][string]): boolean {
  const {size, mtimeMs} = statSync(path)
  return size === bytes && mtimeMs === atMs
}
