import {spawnSync} from 'node:child_process'
import {rmSync} from 'node:fs'
import {join} from 'node:path'
import {fileURLToPath} from 'node:url'
import {programVersion} from '../kit/journal-cache.ts'
import {writeBesideProgram} from './beside-program.ts'

// What `npm pack` puts into the package: the program as plain JavaScript with its types, its version, and the site’s assets.

const root = fileURLToPath(new URL('../..', import.meta.url))
const to = join(root, '.cache/package')
const compiler = join(root, 'node_modules/typescript/bin/tsc')

rmSync(to, {recursive: true, force: true})
const {status} = spawnSync(
  process.execPath,
  [compiler, '--project', join(root, 'site/package/tsconfig.json')],
  {
    stdio: 'inherit',
  },
)
if (status !== 0) process.exit(1)
await writeBesideProgram(to, await programVersion())
