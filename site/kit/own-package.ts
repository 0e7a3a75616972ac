import {readFileSync} from 'node:fs'
import {createRequire} from 'node:module'
import {dirname} from 'node:path'

const file = createRequire(import.meta.url).resolve('nut-to-bridge/package.json')

/** Where this program is installed, and what its package says of itself. */
export const ownPackage = {
  folder: dirname(file),
  text: readFileSync(file, 'utf8'),
}

/** The version of this program, such as 0.2.0. */
export const ownVersion: string = (JSON.parse(ownPackage.text) as {version: string}).version
