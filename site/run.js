import {join} from 'node:path'
import {pathToFileURL} from 'node:url'
import {program} from './program.js'

// Run a command of the project: `node site/run.js build`.
const [name = ''] = process.argv.splice(2, 1)
await import(pathToFileURL(join(program, 'commands', `${name}.js`)).href)
