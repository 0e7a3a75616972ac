import {spawnSync} from 'node:child_process'
import {cpSync, rmSync} from 'node:fs'
import {join} from 'node:path'
import {fileURLToPath} from 'node:url'

// What `npm pack` puts into the package: the program as plain JavaScript with its types, and what the site is made of.

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
cpSync(join(root, 'site/styles'), join(to, 'site/styles'), {recursive: true})
