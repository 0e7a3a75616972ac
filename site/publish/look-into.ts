import {readdirSync} from 'node:fs'
import {join} from 'node:path'
import {isAsWritten, type Standing} from './standing.ts'

/** What lies in a folder that was written before. */
interface Inside {
  /** Addresses of the files that stand as they were written. */
  standing: string[]
  /** Whatever else is there, and folders that hold nothing: their paths in the folder. */
  strays: string[]
}

/** Look at all that lies in a folder that was written before, without reading it; what is `other` counts as not written. */
export function lookInto({folder, files}: Standing, other?: ReadonlySet<string>): Inside {
  const inside: Inside = {standing: [], strays: []}
  const look = (at: string) => {
    const entries = readdirSync(at ? join(folder, at) : folder, {withFileTypes: true})
    if (at && entries.length === 0) inside.strays.push(at)
    for (const entry of entries) {
      const path = at ? `${at}/${entry.name}` : entry.name
      if (entry.isDirectory()) {
        look(path)
        continue
      }
      const address = [`/${path}`, `/${path.replace(/index\.html$/, '')}`].find((one) =>
        Object.hasOwn(files, one),
      )
      const isKnown = address !== undefined && !other?.has(address) && entry.isFile()
      if (isKnown && isAsWritten(`${folder}/${path}`, files[address]!)) inside.standing.push(address)
      else inside.strays.push(path)
    }
  }
  look('')
  return inside
}
